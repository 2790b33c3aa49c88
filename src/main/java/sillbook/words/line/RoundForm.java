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
import sillbook.model.Purchase;
import sillbook.words.Counts;
import sillbook.words.Entries;

/** {@code cellar all moist, T4 dry}: all that stands or waits at a place looked at, with what is not like the others. */
final class RoundForm implements Form {
    private static final Slot<Boolean> ALL =
            Slot.one("", Senses.flag("(?:all|others|the others|the rest|everything)(?: (?:well|fine|ok))?"));

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "round",
                "A place, then all well, or all and what was seen of them; then pots with what was seen of these only. Dry bulbs that "
                        + "wait there are firm unless something else is said of them.",
                "cellar all moist, T4 dry",
                "cellar all well, H4 dry, H11 H14 mould, D2 9 cm",
                "fridge all well, Marrow Lane bulbs soft");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(Slots.PLACE, ALL, Slots.POTS, Slots.DRY_BULBS, Sights.SIGHT, Slots.DAY);
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
        Map<Id<Purchase>, Findings> felt = new LinkedHashMap<>();
        draft.bench()
                .outlook()
                .dryAt(place.id())
                .forEach(bulbs -> felt.put(bulbs.purchase().id(), Findings.DRY_WELL));
        String bulbs = found.isEmpty() ? ", dry bulbs" : " and dry bulbs";
        String pots = found.isEmpty() && !felt.isEmpty() ? "" : ", " + Counts.of(found.size(), "pot");
        draft.means("round of the " + place.name() + pots + (felt.isEmpty() ? "" : bulbs));
        if (found.isEmpty() && felt.isEmpty()) {
            draft.ask("nothing there", "Nothing stands or waits in the " + place.name() + ", so there is no round.");
        }
        for (Sights.Group group : sights.groups()) {
            Findings findings = unlikeTheOthers(others, group);
            group.pots().forEach(pot -> mark(pot, findings, place, found, draft));
            Lines.of(group.pots(), said(findings, draft), draft);
            bulbs(group, place, felt, draft);
        }
        long alike = found.values().stream().filter(others::equals).count();
        boolean isAnyNamed =
                sights.groups().stream().anyMatch(group -> !group.pots().isEmpty());
        draft.means((isAnyNamed ? "the other " + alike + " " : "all ") + said(others, draft));
        Lines.happened("checked", filled, draft);
        draft.change(new Check(found, felt, Optional.of(place.id()), Slots.day(filled, draft.bench())));
    }

    /** Those named are not as the others, which are firm; bulbs of the variety that wait elsewhere are not meant. */
    private static void bulbs(Sights.Group group, Place place, Map<Id<Purchase>, Findings> felt, Draft draft) {
        List<Purchase> here = group.bulbs().stream()
                .filter(bulbs -> felt.containsKey(bulbs.id()))
                .toList();
        if (here.isEmpty() && !group.bulbs().isEmpty()) {
            draft.ask(
                    "not there",
                    "They do not wait in the " + place.name() + ". Write what you felt in a line of its own.");
        }
        DryBulbsSeen.of(here, Sights.together(Findings.DRY_WELL, group.seen()), felt, draft);
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
