// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.model.Purchase;

/**
 * When a place's next round is due: its interval after the day since which not every pot there was looked at.
 *
 * @param looks the last look at each pot; coming to the place counts as one
 * @param leftOut the last round that was left out, which counts as made
 * @param afterFrost the day to look for bulbs that frost made soft, where that is still to be done; it may come first
 */
public record RoundDue(
        Map<Id<Pot>, LocalDate> looks,
        Map<Id<Purchase>, LocalDate> felt,
        Optional<LocalDate> leftOut,
        Optional<LocalDate> afterFrost,
        int everyDays,
        LocalDate result)
        implements Why<LocalDate> {
    public RoundDue {
        looks = Collections.unmodifiableMap(new LinkedHashMap<>(looks));
        felt = Collections.unmodifiableMap(new LinkedHashMap<>(felt));
    }

    @Override
    public <T> T fold(Cases<T> cases) {
        return cases.roundDue(this);
    }

    static RoundDue of(
            Map<Id<Pot>, LocalDate> looks,
            Map<Id<Purchase>, LocalDate> felt,
            Optional<LocalDate> leftOut,
            Optional<LocalDate> afterFrost,
            int everyDays) {
        LocalDate due = due(last(looks, felt, leftOut), everyDays, afterFrost);
        return new RoundDue(looks, felt, leftOut, afterFrost, everyDays, due);
    }

    private static LocalDate due(LocalDate last, int everyDays, Optional<LocalDate> afterFrost) {
        LocalDate usual = last.plusDays(everyDays);
        return afterFrost.filter(usual::isAfter).orElse(usual);
    }

    @Override
    public LocalDate recomputed() {
        return due(last(), everyDays, afterFrost);
    }

    /** The day since which not every pot, or purchase, was looked at. */
    public LocalDate last() {
        return last(looks, felt, leftOut);
    }

    private static LocalDate last(
            Map<Id<Pot>, LocalDate> looks, Map<Id<Purchase>, LocalDate> felt, Optional<LocalDate> leftOut) {
        LocalDate last = Stream.concat(looks.values().stream(), felt.values().stream())
                .min(Comparator.naturalOrder())
                .orElseThrow();
        return leftOut.filter(last::isBefore).orElse(last);
    }

    @Override
    public List<String> ruleSources() {
        return List.of("advice-columns");
    }

    @Override
    public Set<Lever> levers() {
        return EnumSet.of(Lever.A_CHECK, Lever.INTERVAL);
    }
}
