// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sillbook.model.Id;
import sillbook.model.KeptWindow;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.Stage;
import sillbook.season.Winter;
import sillbook.season.past.Foretelling;
import sillbook.season.past.Truth;

class TruthWordsTest {
    private static final Season WINTER = new Season(2026);
    private static final LocalDate EARLIEST = LocalDate.of(2027, 2, 3);
    private static final LocalDate LATEST = LocalDate.of(2027, 2, 12);

    private static Foretelling one(Id<Pot> pot, Stage stage, int days) {
        KeptWindow window = new KeptWindow(
                pot, stage, LocalDate.of(2027, 1, 8), EARLIEST, EARLIEST, LATEST, "begun, after-cold (handbook)");
        return new Foretelling(
                List.of(pot), WINTER, window, days < 0 ? EARLIEST.plusDays(days) : LATEST.plusDays(days));
    }

    private static Truth truth(int... days) {
        return new Truth(IntStream.of(days)
                .mapToObj(off -> one(new Id<>(1, 1), Stage.IN_BLOOM, off))
                .toList());
    }

    @Test
    void howManyHeldAndByHowMuchTheOthersMissed() {
        assertThat(TruthWords.facts(truth(0, 0, 0, 4, 6, -1)))
                .containsExactly("dates held 3 of 6 (19-81 %)", "2 late and 1 early, half of them by 4 days or more");
        assertThat(TruthWords.facts(truth(0, 0, -1)))
                .containsExactly("dates held 2 of 3 (21-94 %)", "1 early, by 1 day");
        assertThat(TruthWords.facts(truth(0, 0))).containsExactly("dates held 2 of 2 (34-100 %)");
        assertThat(TruthWords.facts(truth(9, 9)))
                .containsExactly("dates held 0 of 2 (0-66 %)", "2 late, half of them by 9 days or more");
        assertThat(TruthWords.facts(truth())).containsExactly("no kept window whose day came");
    }

    @Test
    void stagesAreToldApartWhereThereAreEnough() {
        assertThat(TruthWords.byStage(truth(0, 0, 0, 0))).isEmpty();
        List<Foretelling> both = new ArrayList<>(truth(0, 0, 0, 0, 2).all());
        IntStream.range(0, 6).forEach(i -> both.add(one(new Id<>(1, 1), Stage.AFTER_BLOOM, i / 4)));
        assertThat(TruthWords.byStage(new Truth(both))).contains("first flower 4 of 5, end of bloom 4 of 6");
    }

    @Test
    void ofManyMissedFiveAreNamed() {
        Winter house = Winter.winter().pot("T1", "Marrow Lane", "tulip");
        Id<Pot> pot = house.id("T1");
        Truth truth = new Truth(
                IntStream.range(0, 8).mapToObj(i -> one(pot, Stage.IN_BLOOM, 2)).toList());
        Explanation why = new TruthWhy(house.journal()).explain(WINTER, truth);
        assertThat(why.sum())
                .hasSize(7)
                .startsWith(new Explanation.Line("first flower", "in its window", "0 of 8"))
                .endsWith(new Explanation.Line("and", "3 more", ""))
                .contains(new Explanation.Line("T1 first flower", "3-12 Feb, came 14 Feb", "2 days late"));
        assertThat(why.total()).isEqualTo("dates held 0 of 8 (0-32 %)");
    }
}
