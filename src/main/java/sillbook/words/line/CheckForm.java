// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import sillbook.change.Check;
import sillbook.model.Findings;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.words.Entries;

/** {@code T4 roots, 6 cm}: what was seen of pots, or of bulbs that wait to be potted. */
final class CheckForm implements Form {
    @Override
    public FormHelp help() {
        return FormHelp.of(
                "check",
                "Pots, and what was seen of them: dry, moist or wet, watered, roots or no roots, the shoot as a length, "
                        + "buds, colour, mould, mice, frost, rot, yellowing, blasted, firm or soft, trouble with a few "
                        + "words; over water: water low, right or high, cloudy, roots with a length. Of dry bulbs, "
                        + "named by their variety and the word bulbs, whether they are firm or soft, and troubles.",
                "T4 roots, 6 cm",
                "T4 moist, T5 H2 dry, yesterday",
                "G1 roots 6 cm, water cloudy",
                "Marrow Lane bulbs firm");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.POTS, Slots.DRY_BULBS, Sights.SIGHT, Slots.DAY);
    }

    @Override
    public int wanting(Filled filled) {
        return (filled.has(Slots.POTS) || filled.has(Slots.DRY_BULBS) ? 0 : 1) + (filled.has(Sights.SIGHT) ? 0 : 1);
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        Sights sights = Sights.of(filled);
        if (sights.groups().isEmpty()) {
            Lines.pots(List.of(), draft);
        }
        Map<Id<Pot>, Findings> found = new LinkedHashMap<>();
        Map<Id<Purchase>, Findings> felt = new LinkedHashMap<>();
        for (Sights.Group group : sights.groups()) {
            List<UnaryOperator<Findings>> seen = group.seen().isEmpty() ? sights.beforePots() : group.seen();
            Findings findings = Sights.together(Findings.NOTHING, seen);
            Lines.of(
                    group.pots(),
                    Entries.findings(
                            findings, draft.bench().journal().settings().lengths()),
                    draft);
            group.pots().forEach(pot -> found.put(pot.id(), findings));
            SpiritGiven.offer(group.pots(), findings, draft);
            DryBulbsSeen.of(group.bulbs(), findings, felt, draft);
        }
        Lines.happened("checked", filled, draft);
        draft.change(new Check(found, felt, Optional.empty(), Slots.day(filled, draft.bench())));
    }
}
