// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import sillbook.handbook.Handbook;
import sillbook.model.Happening.End;
import sillbook.model.Journal;
import sillbook.model.Place.Sort;
import sillbook.season.Winter.Look;

/** A grower's largest season, two hundred pots after ten winters: Today is worked out at every change. */
@Tag("slow")
class LargeSeasonTest {
    private static final List<String> KINDS = List.of("tulip", "daffodil", "hyacinth", "crocus", "paperwhite");

    /** Some milliseconds on any machine; the bound leaves room for a slow and busy one. */
    private static final double MOST_MILLIS = 60;

    private static Winter grower() {
        Winter winter = winter().place("cellar", Sort.CELLAR)
                .place("fridge", Sort.FRIDGE)
                .place("stair", Sort.COOL_ROOM)
                .place("sill", Sort.WARM_SILL);
        for (int year = 2017; year <= 2026; year++) {
            season(winter.of(year), year < 2026);
        }
        return winter;
    }

    private static void season(Winter winter, boolean isOver) {
        for (int pot = 1; pot <= 200; pot++) {
            String kind = KINDS.get(pot % KINDS.size());
            winter.pot("T" + pot, kind + pot % 20, kind)
                    .potted(1 + pot % 28 + " oct", pot % 2 == 0 ? "cellar" : "fridge");
            winter.checked("3 nov")
                    .saw("1 dec", Look.noRoots())
                    .saw(1 + pot % 9 + " jan", Look.roots().shoot(pot % 9));
            if (isOver || pot % 3 == 0) {
                winter.moved("9 jan", "stair");
            }
            if (isOver) {
                winter.moved("14 jan", "sill")
                        .flowered("4 feb")
                        .pastBloom("14 feb")
                        .closed("20 feb", End.FINISHED);
            }
        }
    }

    @Test
    void todayIsWorkedOutInAFewMilliseconds() {
        Winter winter = grower();
        Journal journal = winter.journal();
        LocalDate day = winter.day("12 jan");
        double best = Double.MAX_VALUE;
        for (int round = 0; round < 30; round++) {
            long start = System.nanoTime();
            Today today = Outlook.of(journal, Handbook.standard(), day).today();
            best = Math.min(best, (System.nanoTime() - start) / 1e6);
            assertThat(today.ready()).isNotEmpty();
        }
        System.out.println("Today of 200 pots after ten winters: " + Math.round(best * 10) / 10.0 + " ms");
        assertThat(best).isLessThan(MOST_MILLIS);
    }
}
