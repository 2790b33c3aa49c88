// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Place.Sort;
import sillbook.season.Lever;
import sillbook.season.Why;
import sillbook.season.Winter;
import sillbook.words.Explanation.Line;

class StrayedWhyTest {
    private static List<Why<?>> whys(Winter told) {
        Place cellar = told.journal().places().all().iterator().next();
        return told.on("12 jan").whys(cellar);
    }

    private static Explanation page(Winter told) {
        Journal journal = told.journal();
        return whys(told).get(0).fold(new WhyWords(journal, Handbook.standard()));
    }

    private static Winter cellar() {
        return winter().place("cellar", Sort.CELLAR);
    }

    @Test
    void eachDayOutOfTheBandIsNamed() {
        Explanation page =
                page(cellar().usually(2, 9).logged("1 jan", "10 jan", 8).logged("11 jan", "12 jan", 9.6));

        assertThat(page.title()).isEqualTo("over its band since Mon 11 Jan");
        assertThat(page.sum())
                .contains(new Line("Tue 12 Jan", "9.6 to 9.6 C, 24 h known", "mean 9.6 C"))
                .hasSize(2);
        assertThat(page.total()).isEqualTo("48 h, 9.6 C on the average");
        assertThat(page.from()).contains("▪ what is usual there, as written: 2 to 9 C");
        assertThat(page.wouldChange()).anyMatch(sentence -> sentence.contains("what is read there"));
    }

    @Test
    void ofManyDaysTheLastAreNamedAndTheBandOfAColdPlaceIsAssumed() {
        Explanation page = page(cellar().logged("1 jan", "12 jan", 1));

        assertThat(page.title()).isEqualTo("under its band since Fri 1 Jan");
        assertThat(page.sum()).first().isEqualTo(new Line("1-5 Jan", "5 days", ""));
        assertThat(page.sum()).hasSize(8);
        assertThat(page.from()).anyMatch(line -> line.startsWith("? of a place for the cold: 2 to 9 C"));
    }

    @Test
    void whatIsShownIsWorkedOutAgain() {
        Why<?> why = whys(cellar().logged("1 jan", "12 jan", 10)).get(0);

        assertThat((Object) why.recomputed()).isEqualTo(why.result());
        assertThat(why.levers()).containsExactly(Lever.READINGS);
        assertThat(why.sources()).containsExactly("common-practice");
    }

    @Test
    void inItsBandOrKnownByLowestAndHighestOnlyThereIsNothingToExplain() {
        assertThat(whys(cellar().logged("1 jan", "12 jan", 5))).isEmpty();
        assertThat(whys(cellar().read("2 jan", "9 jan", 10, 12))).isEmpty();
        assertThat(whys(cellar())).isEmpty();
    }
}
