// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import sillbook.model.Findings;
import sillbook.model.Findings.Moisture;
import sillbook.model.Findings.Trouble;
import sillbook.model.Findings.Water;
import sillbook.model.Length;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.text.Fold;
import sillbook.words.Heard;
import sillbook.words.Lengths;
import sillbook.words.Terms;

/**
 * Things seen of pots and dry bulbs, in the order of the line: each is seen of those named last before it.
 *
 * @param beforePots what stands before any is named
 */
record Sights(List<UnaryOperator<Findings>> beforePots, List<Group> groups) {
    Sights {
        beforePots = List.copyOf(beforePots);
        groups = List.copyOf(groups);
    }

    /** Pots, or dry bulbs, named together, and what was seen of each. */
    record Group(List<Pot> pots, List<Purchase> bulbs, List<UnaryOperator<Findings>> seen) {
        Group {
            pots = List.copyOf(pots);
            bulbs = List.copyOf(bulbs);
            seen = List.copyOf(seen);
        }
    }

    private static final String SHOOT = "shoot ";
    private static final String ROOTS = "roots ";
    private static final String GIVEN = "(?:watered|topped up|changed|water changed)";

    /** One thing seen: how it adds to the others. */
    static final Slot<UnaryOperator<Findings>> SIGHT = Slot.many(
            "finding",
            Senses.any(List.of(
                    seen(Senses.oneOf(Terms.MOISTURES), Sights::withMoisture),
                    seen(Senses.oneOf(Terms.WATERS), Sights::withWater),
                    seen(Senses.flag(GIVEN), Findings::withWatered),
                    seen(Senses.flag("not " + GIVEN), (found, not) -> found.withWatered(false)),
                    seen(Senses.longest((words, bench) -> rootLength(words)), Findings::withRootLength),
                    seen(Senses.oneOf(Terms.ROOTS), Findings::withRoots),
                    seen(Senses.longest((words, bench) -> shoot(words)), Findings::withShoot),
                    seen(Senses.oneOf(Terms.FIRMNESSES), Findings::withFirmness),
                    seen(Senses.oneOf(Terms.GROWTHS), Findings::with),
                    seen(Senses.oneOf(Terms.TROUBLES), Sights::withTrouble),
                    seen(
                            Senses.phraseAfter("trouble"),
                            (found, note) -> found.with(Trouble.OTHER).withNote(note)),
                    seen(Senses.restAfter("note"), Findings::withNote))));

    private static <T> Sense<UnaryOperator<Findings>> seen(Sense<T> sense, BiFunction<Findings, T, Findings> add) {
        return sense.map(thing -> found -> add.apply(found, thing));
    }

    /** What is found dry is watered on the spot, unless it is said that it was not. */
    private static Findings withMoisture(Findings found, Moisture moisture) {
        Findings more = found.withMoisture(moisture);
        return moisture == Moisture.DRY ? more.withWatered(true) : more;
    }

    /** Water that stands low is topped up on the spot, unless it is said that it was not. */
    private static Findings withWater(Findings found, Water level) {
        Findings more = found.withWater(level);
        return level == Water.LOW ? more.withWatered(true) : more;
    }

    /** Cloudy water is changed on the spot, unless it is said that it was not. */
    private static Findings withTrouble(Findings found, Trouble trouble) {
        Findings more = found.with(trouble);
        return trouble == Trouble.CLOUDY ? more.withWatered(true) : more;
    }

    /** {@code roots 6 cm}: their length, where a comma would part roots from a shoot. */
    private static Optional<Heard<Length>> rootLength(String words) {
        return Fold.of(words).startsWith(ROOTS) && Lengths.isSure(words.substring(ROOTS.length()))
                ? Optional.of(Lengths.parse(words.substring(ROOTS.length())))
                : Optional.empty();
    }

    private static Optional<Heard<Length>> shoot(String words) {
        boolean named = Fold.of(words).startsWith(SHOOT);
        String length = named ? words.substring(SHOOT.length()) : words;
        boolean sure = named ? Lengths.parse(length).value().isPresent() : Lengths.isSure(length);
        return sure ? Optional.of(Lengths.parse(length)) : Optional.empty();
    }

    static Sights of(Filled filled) {
        List<Filled.Filling<?>> named = named(filled);
        List<Group> groups = new ArrayList<>();
        int first = 0;
        for (int i = 0; i < named.size(); i++) {
            int end = start(named, i + 1);
            List<UnaryOperator<Findings>> seen =
                    filled.between(SIGHT, named.get(i).from(), end);
            if (!seen.isEmpty() || i == named.size() - 1) {
                int from = named.get(first).from();
                groups.add(new Group(
                        all(filled.between(Slots.POTS, from, end)),
                        all(filled.between(Slots.DRY_BULBS, from, end)),
                        seen));
                first = i + 1;
            }
        }
        return new Sights(filled.between(SIGHT, 0, start(named, 0)), groups);
    }

    /** Where pots or dry bulbs are named, in the order of the line. */
    private static List<Filled.Filling<?>> named(Filled filled) {
        List<Filled.Filling<?>> named = new ArrayList<>(filled.fillings(Slots.POTS));
        named.addAll(filled.fillings(Slots.DRY_BULBS));
        named.sort(Comparator.comparingInt(Filled.Filling::from));
        return named;
    }

    private static <T> List<T> all(List<List<T>> lists) {
        return lists.stream().flatMap(List::stream).toList();
    }

    private static int start(List<Filled.Filling<?>> named, int index) {
        return index < named.size() ? named.get(index).from() : Integer.MAX_VALUE;
    }

    /** All that was seen, put together. */
    static Findings together(Findings base, List<UnaryOperator<Findings>> seen) {
        Findings found = base;
        for (UnaryOperator<Findings> more : seen) {
            found = more.apply(found);
        }
        return found;
    }
}
