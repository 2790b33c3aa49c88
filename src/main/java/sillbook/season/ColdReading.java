// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Place.ColdDays;
import sillbook.model.Pot;
import sillbook.model.Pot.Planting;
import sillbook.model.Purchase;
import sillbook.model.Stage;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.DaySpan;

/** Counts the cold of a pot by the calendar, from its phases and the cold days of its places. */
record ColdReading(Journal journal, LocalDate today) {

    ColdTime of(Pot pot, List<Phase> phases, Optional<Day> potted) {
        List<ColdStretch> stretches = stretches(phases, potted);
        ColdCount count = ColdCount.of(stretches);
        return new ColdTime(
                stretches.stream().flatMap(stretch -> stretch.began().stream()).findFirst(),
                count.daysIn(),
                count.daysColdEnough(),
                dryDays(pot));
    }

    /**
     * The days in the cold since potting, place by place, up to but not with today. A pot whose potting nobody wrote was
     * potted when it came to stand somewhere.
     */
    List<ColdStretch> stretches(List<Phase> phases, Optional<Day> potted) {
        LocalDate from = potted.map(Day::likely).orElse(LocalDate.MIN);
        DaySpan counted = DaySpan.of(from.isAfter(today) ? today : from, today);
        return phases.stream()
                .filter(phase -> phase.stage() == Stage.COLD)
                .flatMap(phase -> phase.days().intersection(counted).stream()
                        .map(days -> new ColdStretch(phase.place(), days, coldDays(phase.place()))))
                .toList();
    }

    /** Where nobody wrote which place it is, it is taken to be cold. */
    ColdDays coldDays(Optional<Id<Place>> place) {
        return place.flatMap(journal.places()::find).map(Place::coldDays).orElse(ColdDays.ALL_YEAR);
    }

    private Optional<Integer> dryDays(Pot pot) {
        Optional<Integer> least = Optional.empty();
        for (Planting planting : pot.plantings()) {
            Optional<Integer> days = dryDays(planting);
            if (days.isEmpty()) {
                return Optional.empty();
            }
            least = least.filter(known -> known <= days.get()).or(() -> days);
        }
        return least;
    }

    /** Days that a planting's bulbs had dry; empty when nobody knows. */
    Optional<Integer> dryDays(Planting planting) {
        return planting.purchase()
                .flatMap(journal.purchases()::find)
                .map(Purchase::cooled)
                .flatMap(Purchase.Cooled::weeks)
                .map(weeks -> DayCount.daysOfWeeks(Math.min(weeks, Figures.MOST_WEEKS)));
    }
}
