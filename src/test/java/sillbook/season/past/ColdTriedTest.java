// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static sillbook.season.Winter.winter;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.model.Happening.Care;
import sillbook.model.Place.Sort;
import sillbook.model.Pot;
import sillbook.reckon.effects.Proportion;
import sillbook.season.Winter;
import sillbook.words.ColdTriedWords;

/** Which lengths of cold worked, from the pots that were judged. */
class ColdTriedTest {
    private static Winter house() {
        return winter().of(2025).place("cellar", Sort.CELLAR).place("sill", Sort.WARM_SILL);
    }

    private static void tulip(Winter house, String label, String potted, int score) {
        house.pot(label, "Marrow Lane", "tulip")
                .potted(potted, "cellar")
                .moved("10 jan", "sill")
                .flowered("1 feb")
                .outcome("4 feb", score);
    }

    private static List<ColdTried> tried(Winter house) {
        Pot any = house.journal().pots().all().iterator().next();
        return Winters.of(house.journal(), house.day("1 jun"))
                .coldTried(any.first().variety());
    }

    @Test
    void pots_are_counted_by_their_whole_weeks_of_cold() {
        Winter house = house();
        tulip(house, "T1", "11 oct", 2);
        tulip(house, "T2", "12 oct", 4);
        tulip(house, "T3", "13 sep", 5);
        house.pot("T4", "Marrow Lane", "tulip").potted("13 sep", "cellar");

        assertThat(tried(house))
                .containsExactly(
                        new ColdTried(13, new Proportion(1, 2), 0, 0), new ColdTried(17, new Proportion(1, 1), 0, 0));
        // Wilson's interval of 1 of 2 and 1 of 1, as R 4.2 prints them: prop.test(1, 2, correct = FALSE)
        assertThat(ColdTriedWords.each(tried(house)))
                .containsExactly(
                        "13 weeks: 1 of 2 well (9-91 %), cold assumed",
                        "17 weeks: 1 of 1 well (21-100 %), cold assumed");
    }

    /** At 11 C half of a day counts: of 13 weeks in the cold six and a half are had. */
    @Test
    void what_thermometers_saw_counts_before_the_calendar() {
        Winter house = winter().of(2025)
                .place("cellar", Sort.CELLAR)
                .logged("11 oct", "9 jan", 11)
                .place("sill", Sort.WARM_SILL);
        tulip(house, "T1", "11 oct", 2);

        assertThat(tried(house)).extracting(ColdTried::weeks, ColdTried::read).containsExactly(tuple(7, 1.0));
        assertThat(ColdTriedWords.each(tried(house))).containsExactly("7 weeks: 0 of 1 well (0-79 %), cold read");
    }

    /** A bulb that is woken begins anew: what it had of cold in its first winter is not had again. */
    @Test
    void of_a_plant_that_lives_on_each_winter_has_its_own() {
        Winter house = house();
        house.pot("A1", "Marrow Lane", "amaryllis")
                .potted("11 oct", "cellar")
                .moved("10 jan", "sill")
                .flowered("1 feb")
                .outcome("4 feb", 4)
                .cared("1 mar", Care.RESTED)
                .cared("1 apr", Care.WOKEN)
                .outcome("1 may", 2);

        assertThat(tried(house)).extracting(ColdTried::weeks).containsExactly(13);
    }

    @Test
    void those_that_stayed_short_are_counted_beside() {
        assertThat(ColdTriedWords.each(List.of(new ColdTried(9, new Proportion(0, 3), 2, .42))))
                .containsExactly("9 weeks: 0 of 3 well (0-56 %), 2 short and stuck, cold 42 % read");
    }

    @Test
    void of_none_that_was_judged_or_stood_in_the_cold_nothing_is_said() {
        Winter house = house();
        house.pot("T4", "Marrow Lane", "tulip").potted("13 sep", "cellar");
        house.pot("T5", "Marrow Lane", "tulip").potted("13 sep", "sill").outcome("4 feb", 3);
        house.pot("T6", "Marrow Lane", "tulip").potted("13 sep", "cellar").outcome("4 feb", 3);

        assertThat(tried(house)).isEmpty();
        assertThat(ColdTriedWords.each(List.of())).isEmpty();
    }
}
