// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.handbook.Handbook;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.PastWindows;
import sillbook.season.FiveTulips;
import sillbook.season.Outlook;
import sillbook.season.WhyLearnt;
import sillbook.season.Winter;
import sillbook.words.Explanation.Line;

class LearntWordsTest {
    private static List<Line> sum(PastWindows past) {
        Winter house = FiveTulips.sixth(FiveTulips.told());
        Journal journal = house.journal().with(List.of(new Edit.Put(past)));
        Handbook handbook = Handbook.standard();
        WhyWords words = new WhyWords(journal, handbook);
        return Outlook.of(journal, handbook, house.day("12 jan")).whys(house.id("T6")).stream()
                .filter(WhyLearnt.class::isInstance)
                .findFirst()
                .map(words::say)
                .orElseThrow()
                .sum();
    }

    private static PastWindows past(int held, int of, int reach) {
        return new PastWindows(new Id<>(7, 7), winter().season(), held, of, reach);
    }

    @Test
    void whatWasWidenedSaysByHowMuchAndWhy() {
        assertThat(sum(past(13, 22, 160)))
                .contains(new Line("widened", "the last 22 windows held the day 13 times", "x 1.5"));
        assertThat(sum(past(1, 10, 160)))
                .contains(new Line("widened", "the last 10 windows held the day once", "x 1.4"));
    }

    @Test
    void whatWasNotSaysNothingOfIt() {
        assertThat(sum(past(17, 22, 160))).extracting(Line::toString).noneMatch(line -> line.contains("widened"));
    }
}
