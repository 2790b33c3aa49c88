// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sillbook.model.Day;
import sillbook.model.Variety;
import sillbook.words.Days;

/** A day whose word may have been meant for the beginning of a name: {@code bought 5 Tuesday Coat}. */
record DayInName(Filled filled) {
    private static final List<Slot<Day>> DAYS = List.of(Slots.DAY, Slots.COMING_DAY);

    /** How such a day was read that stands right before these words. */
    Optional<String> before(int from, int endExclusive) {
        return DAYS.stream()
                .flatMap(slot -> filled.fillings(slot).stream())
                .filter(filling -> filling.found().end() == from && isWord(filling))
                .flatMap(filling -> said(filling, endExclusive).stream())
                .findFirst();
    }

    private boolean isWord(Filled.Filling<Day> filling) {
        return text(filling).chars().allMatch(Character::isLetter);
    }

    private String text(Filled.Filling<Day> filling) {
        return filled.line().text(filling.from(), filling.found().end());
    }

    private Optional<String> said(Filled.Filling<Day> filling, int endExclusive) {
        String name = filled.line().text(filling.from(), endExclusive);
        return filling.found()
                .meaning()
                .value()
                .map(day -> "'" + text(filling) + "' was read as a day, " + Days.full(day)
                        + ". If it belongs to the name, write that in quotes: '" + name + "'.");
    }

    /** Remarks on such a day before a name that is new, or understood by its beginning. */
    void remark(Slot<Named<Variety>> slot, Draft draft) {
        filled.fillings(slot).stream()
                .filter(filling -> filling.found().sure() != Sure.WHOLE)
                .flatMap((Filled.Filling<Named<Variety>> filling) -> before(filling.from(), end(filling)).stream())
                .forEach(says -> draft.remark("day-in-name", says));
    }

    /** Brackets after a name are no part of it. */
    private int end(Filled.Filling<?> name) {
        return Math.min(name.found().end(), filled.line().phraseEnd(name.from()));
    }

    /** The same before the first words that make no sense. */
    Optional<String> beforeUnknown() {
        return filled.unknown().stream().findFirst().flatMap(at -> {
            List<Integer> words = IntStream.range(0, filled.line().size())
                    .filter(word ->
                            at.contains(filled.line().words().get(word).at().fromInclusive()))
                    .boxed()
                    .toList();
            return before(words.get(0), words.get(words.size() - 1) + 1);
        });
    }
}
