// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static sillbook.season.Winter.winter;

import sillbook.model.Place.Sort;

/** Tulips of the winter before, each brought in for 26 days before its first flower, and in bloom for 9; and one more. */
public final class FiveTulips {
    private FiveTulips() {}

    public static Winter told() {
        return tulips(5);
    }

    static Winter tulips(int howMany) {
        Winter winter = winter().place("cellar", Sort.CELLAR)
                .place("stair window", Sort.COOL_ROOM)
                .place("kitchen sill", Sort.WARM_SILL)
                .of(2025);
        for (int i = 1; i <= howMany; i++) {
            winter = winter.pot("X" + i, "Marrow Lane", "tulip/Triumph")
                    .potted("20 sep", "cellar")
                    .moved(i + " jan", "stair window")
                    .moved(i + 5 + " jan", "kitchen sill")
                    .flowered(i + 26 > 31 ? i - 5 + " feb" : i + 26 + " jan")
                    .pastBloom(i + 4 + " feb");
        }
        return winter.of(2026);
    }

    /** The one whose days they tell: T6, in the cool room since 10 January 2027. */
    public static Winter sixth(Winter winter) {
        return winter.pot("T6", "Marrow Lane", "tulip/Triumph")
                .potted("21 sep", "cellar")
                .moved("10 jan", "stair window");
    }
}
