// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import static java.util.Comparator.comparingInt;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Sorts of bulb that share one pot, and so one cold.
 *
 * <p>They agree on the longest of their minimums to the shortest of their maximums. Where these do not overlap the
 * neediest has its way, and that is said.
 *
 * @param needs at least one
 */
public record MixedPot(List<Need> needs) {
    public MixedPot {
        needs = List.copyOf(needs);
        if (needs.isEmpty()) {
            throw new IllegalArgumentException("a mixed pot without bulbs");
        }
    }

    /** The cold they all get; empty when none of them needs any. */
    public Optional<DayCount> cold() {
        return needs.stream()
                .flatMap(need -> need.cold().stream())
                .reduce(DayCount::atLeast)
                .map(neediest -> noCommonTime().isPresent() ? neediest : within(neediest, shortestMaximum()));
    }

    private static DayCount within(DayCount neediest, int high) {
        return DayCount.of(neediest.low(), Math.min(neediest.typical(), high), high);
    }

    private int shortestMaximum() {
        return needs.stream()
                .flatMap(need -> need.cold().stream())
                .mapToInt(DayCount::high)
                .min()
                .orElse(0);
    }

    /** The needs in the order given, each with the cold that is shared. */
    public List<Need> sharing() {
        Optional<DayCount> shared = cold();
        return needs.stream()
                .map(need -> shared.map(need::withCold).orElse(need))
                .toList();
    }

    /** What to say of bulbs that should not share a pot; empty when they can. */
    public List<Warning> warnings() {
        return Stream.of(noCommonTime(), coldAndNoCold())
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Warning> noCommonTime() {
        Optional<Integer> neediest = needingCold().max(comparingInt(i -> cold(i).low()));
        Optional<Integer> tenderest = needingCold().min(comparingInt(i -> cold(i).high()));
        return neediest.flatMap(most -> tenderest
                .filter(least -> cold(most).low() > cold(least).high())
                .map(least -> new Warning.NoCommonTime(
                        cold(most).low(), most, cold(least).high(), least)));
    }

    private Stream<Integer> needingCold() {
        return IntStream.range(0, needs.size())
                .filter(i -> needs.get(i).cold().isPresent())
                .boxed();
    }

    private DayCount cold(int index) {
        return needs.get(index).cold().orElse(DayCount.ZERO);
    }

    private Optional<Warning> coldAndNoCold() {
        List<Integer> without = IntStream.range(0, needs.size())
                .filter(i -> needs.get(i).cold().isEmpty())
                .boxed()
                .toList();
        boolean some = !without.isEmpty() && without.size() < needs.size();
        return some ? Optional.of(new Warning.ColdAndNoCold(without)) : Optional.empty();
    }

    /**
     * The pot as a whole: it enters a stage with the first of its sorts, and is past bloom with the last.
     *
     * @param each the stages of every sort in it, at least one
     * @throws java.util.NoSuchElementException when there is none
     */
    public static Stages together(List<Stages> each) {
        return each.stream().reduce(MixedPot::together).orElseThrow();
    }

    private static Stages together(Stages one, Stages other) {
        return new Stages(
                first(one.cold(), other.cold()),
                first(one.coolRoom(), other.coolRoom()),
                one.warmRoom().first(other.warmRoom()),
                one.bloom().first(other.bloom()),
                one.afterBloom().flatMap(past -> other.afterBloom().map(past::last)));
    }

    private static Optional<Window> first(Optional<Window> one, Optional<Window> other) {
        return one.flatMap(window -> other.map(window::first)).or(() -> one).or(() -> other);
    }
}
