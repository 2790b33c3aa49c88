// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import static sillbook.season.Winter.winter;

import sillbook.model.Happening.End;
import sillbook.model.Journal;
import sillbook.model.Place.Sort;
import sillbook.season.Winter;

/** Three invented winters of four varieties in two places, and a fourth under way. */
final class PastWinters {
    private PastWinters() {}

    static Winter told() {
        Winter told = winter().place("garage fridge", Sort.FRIDGE)
                .place("cellar", Sort.CELLAR)
                .place("sill", Sort.WARM_SILL);
        for (int year = 2023; year < 2026; year++) {
            told.of(year);
            grown(told, "T1", "Tuesday Coat", "tulip/Double Early", "garage fridge", 5);
            grown(told, "T2", "Marrow Lane", "tulip/Triumph", "cellar", year == 2024 ? 3 : 4);
            grown(told, "T3", "Marrow Lane", "tulip/Triumph", "garage fridge", 5);
            grown(told, "D1", "Goose Errand", "daffodil/2", "cellar", year == 2023 ? 3 : 1);
        }
        told.pot("D2", "Goose Errand", "daffodil/2").potted("12 oct", "cellar").closed("1 feb", End.FAILED);
        told.of(2026).pot("H1", "Inkwell", "hyacinth").potted("5 oct", "cellar");
        return told;
    }

    static Journal journal() {
        return told().journal();
    }

    private static void grown(Winter told, String label, String variety, String kind, String place, int score) {
        told.pot(label, variety, kind)
                .potted("5 oct", place)
                .moved("20 jan", "sill")
                .flowered("10 feb")
                .outcome("14 feb", score)
                .closed("1 mar", End.FINISHED);
    }
}
