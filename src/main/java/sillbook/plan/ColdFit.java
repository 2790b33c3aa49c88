// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Forcing;

/**
 * When pots can be potted and come in, so that they have their usual weeks of cold and none too many: for each cold place, the latest day to
 * pot for each day of coming in. Worked out once for all pots that take the same.
 */
final class ColdFit {
    private final Forcing forcing;
    private final LocalDate readyFrom;
    private final Map<Id<Place>, TreeMap<LocalDate, LocalDate>> potting = new HashMap<>();

    /** Of days of coming in in a season. */
    ColdFit(Forcing forcing, LocalDate readyFrom, List<ColdTable> colds, DaySpan season) {
        this.forcing = forcing;
        this.readyFrom = readyFrom;
        for (ColdTable cold : colds) {
            TreeMap<LocalDate, LocalDate> days = new TreeMap<>();
            season.start()
                    .datesUntil(season.endExclusive())
                    .forEach(in -> reckon(cold, in).ifPresent(potted -> days.put(in, potted)));
            potting.put(cold.berth().id(), days);
        }
    }

    /**
     * The latest day to pot for a day of coming in, so that the place is cold for the usual weeks before that; no later than is usual for a
     * season. Empty where the place is not cold for long enough, the bulbs would come too late, or would stand there too long.
     */
    Optional<LocalDate> potting(Berth berth, LocalDate in) {
        return Optional.ofNullable(
                potting.getOrDefault(berth.id(), new TreeMap<>()).get(in));
    }

    /** From the first to the last day of coming in from any place. */
    Optional<DaySpan> in() {
        Optional<LocalDate> first = potting.values().stream()
                .filter(days -> !days.isEmpty())
                .map(TreeMap::firstKey)
                .min(Comparator.naturalOrder());
        Optional<LocalDate> last = potting.values().stream()
                .filter(days -> !days.isEmpty())
                .map(TreeMap::lastKey)
                .max(Comparator.naturalOrder());
        return first.flatMap(from -> last.map(to -> DaySpan.ofInclusive(from, to)));
    }

    /** The longest stretch of days of coming in from a place. */
    Optional<DaySpan> longest(Berth berth) {
        List<DaySpan> days = potting.getOrDefault(berth.id(), new TreeMap<>()).keySet().stream()
                .map(day -> DaySpan.ofInclusive(day, day))
                .toList();
        return DaySpan.joined(days).stream().max(Comparator.comparingLong(DaySpan::days));
    }

    /** Those places from which it can come in on a day. */
    List<Berth> fitting(List<Berth> colds, LocalDate in) {
        return colds.stream().filter(berth -> potting(berth, in).isPresent()).toList();
    }

    /** The same days for the same pots, whenever they were worked out. */
    @Override
    public boolean equals(Object other) {
        return other instanceof ColdFit fit
                && forcing.equals(fit.forcing)
                && readyFrom.equals(fit.readyFrom)
                && potting.equals(fit.potting);
    }

    @Override
    public int hashCode() {
        return Objects.hash(forcing, readyFrom);
    }

    private Optional<LocalDate> reckon(ColdTable place, LocalDate in) {
        LocalDate enough = place.since(forcing.usualCold(), in);
        if (enough.isBefore(readyFrom) || !place.isThere(enough, in)) {
            return Optional.empty();
        }
        LocalDate potted = Dates.earlier(enough, forcing.potting().latest());
        boolean isTooLong = place.cold(potted, in) > forcing.mostCold();
        return potted.isBefore(readyFrom) || isTooLong || !place.isWhole(potted, in)
                ? Optional.empty()
                : Optional.of(potted);
    }

    /** Days of cold at a place. */
    static int cold(Berth berth, LocalDate from, LocalDate to) {
        return (int) from.datesUntil(to).filter(berth::isCold).count();
    }
}
