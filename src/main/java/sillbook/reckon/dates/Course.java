// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The stages a pot goes through, in order, and how long each lasts before the next begins. */
final class Course {
    private final List<Milestone> milestones = new ArrayList<>();
    private final List<DayCount> lasts = new ArrayList<>();

    private Course() {}

    /** The course of a need in a pot of which this is known; {@code cold} is what of its cold follows potting. */
    static Course of(Need need, Optional<DayCount> cold, Facts facts) {
        var course = new Course();
        cold.ifPresent(days -> course.add(Milestone.COLD, days));
        if (need.coolRoom().isPresent() && !facts.isWarmAtOnce()) {
            course.add(Milestone.COOL_ROOM, need.coolShare());
        }
        course.add(Milestone.WARM_ROOM, need.afterCold().less(need.coolHad(facts)));
        boolean isOpen = facts.on(Milestone.BLOOM).isPresent();
        Optional<DayCount> bloom = isOpen ? need.inBloom() : need.bloomAhead().or(need::inBloom);
        course.add(Milestone.BLOOM, bloom.orElse(DayCount.ZERO));
        need.inBloom().ifPresent(known -> course.add(Milestone.AFTER_BLOOM, DayCount.ZERO));
        return course;
    }

    private void add(Milestone milestone, DayCount days) {
        milestones.add(milestone);
        lasts.add(days);
    }

    private boolean has(Milestone milestone) {
        return milestones.contains(milestone);
    }

    /**
     * The days that are fixed by what is known: of every stage that has begun, and the first of all from the potting.
     * A pot brought out of the cold where no cool room is used goes into the warm one.
     */
    Map<Milestone, LocalDate> pins(Facts facts) {
        var pins = new EnumMap<Milestone, LocalDate>(Milestone.class);
        pins.putAll(facts.happened());
        Optional<LocalDate> cold = facts.on(Milestone.COLD);
        if (!has(Milestone.COOL_ROOM)) {
            facts.on(Milestone.COOL_ROOM).ifPresent(out -> pins.putIfAbsent(Milestone.WARM_ROOM, out));
            pins.remove(Milestone.COOL_ROOM);
        }
        if (!has(Milestone.COLD)) {
            pins.remove(Milestone.COLD);
        }
        facts.potted().or(() -> cold).ifPresent(start -> pins.putIfAbsent(milestones.get(0), start));
        return pins;
    }

    /** The first stage whose day is fixed; empty when the course has none. */
    Optional<Milestone> firstPinned(Map<Milestone, LocalDate> pins) {
        return milestones.stream().filter(pins::containsKey).findFirst();
    }

    /**
     * The window of every stage: the day itself where it is pinned, backward before the first pin, forward after each,
     * and never past the next.
     *
     * @param first the first pinned stage
     */
    Stages windows(Map<Milestone, LocalDate> pins, Milestone first) {
        var windows = new EnumMap<Milestone, Window>(Milestone.class);
        Window start = Window.on(pinned(pins, first).orElseThrow());
        windows.put(first, start);
        int index = milestones.indexOf(first);
        backward(start, index, windows);
        forward(start, index, pins, windows);
        return stages(windows, pins);
    }

    private void backward(Window from, int index, Map<Milestone, Window> windows) {
        Window window = from;
        for (int i = index - 1; i >= 0; i--) {
            window = window.minus(lasts.get(i));
            windows.put(milestones.get(i), window);
        }
    }

    private void forward(Window from, int index, Map<Milestone, LocalDate> pins, Map<Milestone, Window> windows) {
        Window window = from;
        for (int i = index + 1; i < milestones.size(); i++) {
            Milestone milestone = milestones.get(i);
            Window follows = beforeNext(window.plus(lasts.get(i - 1)), milestone, pins);
            window = pinned(pins, milestone).map(Window::on).orElse(follows);
            windows.put(milestone, window);
        }
    }

    private static Window beforeNext(Window window, Milestone milestone, Map<Milestone, LocalDate> pins) {
        Window cut = window;
        for (Milestone later : Milestone.values()) {
            if (later.compareTo(milestone) > 0) {
                cut = pinned(pins, later).map(cut::notAfter).orElse(cut);
            }
        }
        return cut;
    }

    private static Optional<LocalDate> pinned(Map<Milestone, LocalDate> pins, Milestone milestone) {
        return Optional.ofNullable(pins.get(milestone));
    }

    private static Stages stages(Map<Milestone, Window> windows, Map<Milestone, LocalDate> pins) {
        return new Stages(
                Optional.ofNullable(windows.get(Milestone.COLD)),
                Optional.ofNullable(windows.get(Milestone.COOL_ROOM)),
                Optional.ofNullable(windows.get(Milestone.WARM_ROOM)).orElseThrow(),
                Optional.ofNullable(windows.get(Milestone.BLOOM)).orElseThrow(),
                Optional.ofNullable(windows.get(Milestone.AFTER_BLOOM))
                        .or(() -> pinned(pins, Milestone.AFTER_BLOOM).map(Window::on)));
    }
}
