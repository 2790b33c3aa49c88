// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.words.Complaint;

/** The slots of a form with what a line put in them, and what was left over. Grows while the line is read. */
final class Filled {
    private final Map<Slot<?>, List<Filling<?>>> fillings = new LinkedHashMap<>();
    private final List<Stretch> unknown = new ArrayList<>();
    private final List<Complaint> complaints = new ArrayList<>();
    private final List<Complaint> doubts = new ArrayList<>();
    private final Written line;
    private int notUnderstood;

    /** Empty, for a line. */
    Filled(Written line) {
        this.line = line;
    }

    /**
     * What fills a slot.
     *
     * @param from its first word
     * @param tentative whether it may be meant otherwise, so that it has to be taken first
     */
    record Filling<T>(int from, Found<T> found, boolean tentative) {}

    /** What fills the slot first; empty also when what was written there is wrong. */
    <T> Optional<T> get(Slot<T> slot) {
        return all(slot).stream().findFirst();
    }

    <T> List<T> all(Slot<T> slot) {
        return fillings(slot).stream()
                .flatMap(filling -> filling.found().meaning().value().stream())
                .toList();
    }

    /** What fills the slot from one word on, up to another. */
    <T> List<T> between(Slot<T> slot, int from, int endExclusive) {
        return fillings(slot).stream()
                .filter(filling -> filling.from() >= from && filling.from() < endExclusive)
                .flatMap(filling -> filling.found().meaning().value().stream())
                .toList();
    }

    boolean has(Slot<?> slot) {
        return fillings.containsKey(slot);
    }

    boolean isOpen(Slot<?> slot) {
        return slot.many() || !has(slot);
    }

    /** Whether what fills it may be meant otherwise. */
    boolean isTentative(Slot<?> slot) {
        return fillings.getOrDefault(slot, List.of()).stream().anyMatch(Filling::tentative);
    }

    /** Where the words begin that this one belongs to: what they fill, or what was left over after the last that does. */
    int startOf(int word) {
        int start = 0;
        for (List<Filling<?>> some : fillings.values()) {
            for (Filling<?> filling : some) {
                boolean holds = filling.from() <= word && word < filling.found().end();
                int begins = holds ? filling.from() : filling.found().end();
                start = filling.from() <= word ? Math.max(start, begins) : start;
            }
        }
        return start;
    }

    /** Whether anything outside these words is understood. */
    boolean isAnythingOutside(int from, int endExclusive) {
        return fillings.keySet().stream().anyMatch(slot -> isFilledOutside(slot, from, endExclusive));
    }

    /** Whether something outside these words fills it. */
    boolean isFilledOutside(Slot<?> slot, int from, int endExclusive) {
        return fillings.getOrDefault(slot, List.of()).stream()
                .anyMatch(filling -> filling.from() < from || filling.from() >= endExclusive);
    }

    /** A slot is only ever filled with what its own sense found. */
    @SuppressWarnings("unchecked")
    <T> List<Filling<T>> fillings(Slot<T> slot) {
        return (List<Filling<T>>) (List<?>) fillings.getOrDefault(slot, List.of());
    }

    <T> void fill(Slot<T> slot, Filling<T> filling) {
        fillings.computeIfAbsent(slot, empty -> new ArrayList<>()).add(filling);
        filling.found().meaning().complaint().ifPresent(wrong -> {
            complaints.add(wrong);
            notUnderstood++;
        });
    }

    /** How many words make no sense, or not the sense they seem to. */
    int notUnderstood() {
        return notUnderstood;
    }

    /** A word that makes no sense; words next to each other are one stretch. */
    void leaveOver(int word) {
        notUnderstood++;
        Stretch at = line.stretch(word, word + 1);
        int last = unknown.size() - 1;
        boolean joins = last >= 0
                && line.line()
                        .substring(unknown.get(last).toExclusive(), at.fromInclusive())
                        .isBlank();
        if (joins) {
            unknown.set(last, new Stretch(unknown.get(last).fromInclusive(), at.toExclusive()));
        } else {
            unknown.add(at);
        }
    }

    void complain(Complaint complaint) {
        complaints.add(complaint);
    }

    /** Words that may be meant otherwise; less grave than words that are wrong. */
    void doubt(Complaint complaint) {
        doubts.add(complaint);
    }

    List<Stretch> unknown() {
        return unknown;
    }

    /** The first thing that is wrong with what was written. */
    Optional<Complaint> complaint() {
        return complaints.stream().findFirst();
    }

    /** The first words that may be meant otherwise. */
    Optional<Complaint> doubt() {
        return doubts.stream().findFirst();
    }

    Written line() {
        return line;
    }
}
