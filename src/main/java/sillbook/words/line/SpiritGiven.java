// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import sillbook.handbook.Spirit;
import sillbook.model.Findings;
import sillbook.model.Happening.Care;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Settings.LengthUnit;
import sillbook.words.Lengths;
import sillbook.words.SpiritWords;

/** What a line says where spirit is given into the water. */
final class SpiritGiven {
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

    /** Where a check finds shoots of the right height it says that spirit could be given now. */
    static void offer(List<Pot> pots, Findings found, Draft draft) {
        boolean isTime = found.shoot()
                .filter(shoot -> shoot.centimetres() >= Spirit.SHOOT_LEAST && shoot.centimetres() <= Spirit.SHOOT_MOST)
                .isPresent();
        List<String> labels = pots.stream()
                .filter(pot -> isTime
                        && pot.way().isOverWater()
                        && isPaperwhite(pot, draft.bench().journal()))
                .filter(pot -> !isGiven(pot, draft.bench()))
                .map(Pot::label)
                .toList();
        if (!labels.isEmpty()) {
            draft.remark(
                    "spirit-now",
                    "To keep " + String.join(", ", labels) + " short spirit may be given now: " + SpiritWords.mixture()
                            + ".");
        }
    }

    private static boolean isGiven(Pot pot, Bench bench) {
        return bench.outlook().pot(pot.id()).life().cares().stream()
                .anyMatch(care -> care.value() == Care.SPIRIT_IN_WATER);
    }

    private static boolean isPaperwhite(Pot pot, Journal journal) {
        return SpiritWords.isFor(pot.plantings().stream()
                .map(planting -> journal.varieties().get(planting.variety()).kind()));
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
