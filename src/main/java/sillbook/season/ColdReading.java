// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Comparator;
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
                dryDays(pot, potted));
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

    /** Of several plantings the least, since all share one cold; empty when nobody knows of one. */
    private Optional<Integer> dryDays(Pot pot, Optional<Day> potted) {
        List<DryCold> each =
                pot.plantings().stream().map(planting -> dry(planting, potted)).toList();
        return each.stream().allMatch(DryCold::isKnown)
                ? each.stream().map(DryCold::days).min(Comparator.naturalOrder())
                : Optional.empty();
    }

    /** What a planting's bulbs had dry: before they came, and since then up to their potting. */
    DryCold dry(Planting planting, Optional<Day> potted) {
        return planting.purchase()
                .flatMap(journal.purchases()::find)
                .map(purchase -> dry(purchase, potted))
                .orElse(DryCold.UNKNOWN);
    }

    DryCold dry(Purchase purchase, Optional<Day> potted) {
        return new DryCold(beforeItCame(purchase), atItsPlace(purchase, potted));
    }

    private static Optional<Integer> beforeItCame(Purchase purchase) {
        return purchase.cooled().weeks().map(weeks -> DayCount.daysOfWeeks(Math.min(weeks, Figures.MOST_WEEKS)));
    }

    /** Days since they came, up to a day of potting if there is one, on which it was cold where they wait. */
    private int atItsPlace(Purchase purchase, Optional<Day> potted) {
        LocalDate came = purchase.day().likely();
        LocalDate until = potted.map(Day::likely).filter(today::isAfter).orElse(today);
        return Optional.of(DaySpan.of(came, until.isBefore(came) ? came : until))
                .filter(days -> purchase.state() == Purchase.State.IN_HAND)
                .flatMap(days -> purchase.waits()
                        .flatMap(journal.places()::find)
                        .filter(place -> place.serves() == Stage.COLD)
                        .map(place -> new ColdCalendar(place.coldDays()).coldDaysIn(days)))
                .orElse(0);
    }
}
