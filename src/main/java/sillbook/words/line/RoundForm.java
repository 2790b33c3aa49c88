// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.change.Check;
import sillbook.model.Findings;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.words.Counts;
import sillbook.words.Entries;

/** {@code cellar all moist, T4 dry}: every pot of a place looked at, with what is not like the others. */
final class RoundForm implements Form {
    private static final Slot<Boolean> ALL =
            Slot.one("", Senses.flag("(?:all|others|the others|the rest|everything)(?: (?:well|fine|ok))?"));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "round",
                "A place, then all well, or all and what was seen of them; then pots with what was seen of these only.",
                "cellar all moist, T4 dry",
                "cellar all well, H4 dry, H11 H14 mould, D2 9 cm");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.PLACE, ALL, Slots.POTS, Sights.SIGHT, Slots.DAY);
    }

    @Override
    public int wanting(Filled filled) {
        return (filled.has(Slots.PLACE) ? 0 : 1) + (filled.has(ALL) ? 0 : 1);
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        if (!filled.has(ALL)) {
            draft.ask("and the others?", "And the others? Write all well, or what was seen of all, as: all moist.");
        }
        filled.get(Slots.PLACE)
                .ifPresentOrElse(
                        place -> round(place, filled, draft),
                        () -> draft.ask(
                                "which place?", "Which place's round? Write its name first, as: cellar all well."));
    }

    private static void round(Place place, Filled filled, Draft draft) {
        Sights sights = Sights.of(filled);
        Findings others = Sights.together(Findings.ALL_WELL, sights.beforePots());
        Map<Id<Pot>, Findings> found = new LinkedHashMap<>();
        draft.bench().room(place).pots().forEach(pot -> found.put(pot, others));
        draft.means("round of the " + place.name() + ", " + Counts.of(found.size(), "pot"));
        if (found.isEmpty()) {
            draft.ask("no pot there", "No pot stands in the " + place.name() + ", so there is no round.");
        }
        for (Sights.Group group : sights.groups()) {
            Findings findings = unlikeTheOthers(others, group);
            group.pots().forEach(pot -> mark(pot, findings, place, found, draft));
            Lines.of(group.pots(), said(findings, draft), draft);
        }
        long alike = found.values().stream().filter(others::equals).count();
        draft.means((sights.groups().isEmpty() ? "all " : "the other " + alike + " ") + said(others, draft));
        Lines.happened("checked", filled, draft);
        draft.change(new Check(found, Optional.of(place.id()), Slots.day(filled, draft.bench())));
    }

    /** Where the others are dry and so watered, one that is not dry is not watered either, unless it is said. */
    private static Findings unlikeTheOthers(Findings others, Sights.Group group) {
        Findings findings = Sights.together(others, group.seen());
        boolean stillDry = findings.moisture().equals(others.moisture());
        boolean said = Sights.together(Findings.NOTHING, group.seen()).watered();
        return findings.withWatered(said || (stillDry && others.watered()));
    }

    private static void mark(Pot pot, Findings findings, Place place, Map<Id<Pot>, Findings> found, Draft draft) {
        if (found.containsKey(pot.id())) {
            found.put(pot.id(), findings);
        } else {
            draft.ask(
                    "not there",
                    pot.label() + " does not stand in the " + place.name() + ". Check it in a line of its own.");
        }
    }

    private static String said(Findings findings, Draft draft) {
        return Entries.isAllWell(findings)
                ? "well"
                : Entries.findings(findings, draft.bench().journal().settings().lengths());
    }
}
