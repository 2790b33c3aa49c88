// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import sillbook.handbook.Spirit;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Settings.LengthUnit;
import sillbook.words.Lengths;
import sillbook.words.SpiritWords;

/** What a line says where spirit is given into the water. */
final class SpiritGiven {
    private static final String PAPERWHITE = "paperwhite";

    private SpiritGiven() {}

    /** How it is mixed, and what to know: for whom it is published, from which shoot on. */
    static void say(List<Pot> pots, Draft draft) {
        draft.means(SpiritWords.mixture());
        Journal journal = draft.bench().journal();
        for (Pot pot : pots.stream().filter(one -> one.way().isOverWater()).toList()) {
            if (!isPaperwhite(pot, journal)) {
                draft.remark(
                        "spirit-not-known",
                        "Of " + pot.label()
                                + " nobody published that spirit does it good: it is known of paperwhites.");
            } else if (isTooYoung(pot, draft.bench())) {
                LengthUnit unit = journal.settings().lengths();
                draft.remark(
                        "spirit-too-early",
                        pot.label() + " has no shoot of " + Lengths.say(SpiritWords.SHOOT_LEAST, unit)
                                + " written down: spirit is begun with shoots of " + SpiritWords.shoots(unit) + ".");
            }
        }
    }

    private static boolean isPaperwhite(Pot pot, Journal journal) {
        return pot.plantings().stream()
                .allMatch(planting -> journal.varieties()
                        .get(planting.variety())
                        .kind()
                        .name()
                        .equals(PAPERWHITE));
    }

    private static boolean isTooYoung(Pot pot, Bench bench) {
        return bench.outlook()
                .pot(pot.id())
                .life()
                .seen()
                .shoot()
                .filter(seen -> seen.value().centimetres() >= Spirit.SHOOT_LEAST)
                .isEmpty();
    }
}
