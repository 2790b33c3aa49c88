// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import sillbook.model.Day;
import sillbook.model.Findings.Roots;
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

/** Counts the cold of a pot: by the thermometers of its places, else by their cold days. */
record ColdReading(Journal journal, LocalDate today) {
    /**
     * Nobody having looked for roots, a pot is taken to have them after so many days of cold (assumed; of the first two weeks it is
     * published that they should be warmer: Iowa State University, Vos, 2024).
     */
    private static final int ROOTED_AFTER_DAYS = 14;

    ColdTime of(Pot pot, List<Phase> phases, Optional<Day> potted, Seen seen) {
        ColdLedger ledger = entered(phases, potted);
        Optional<LocalDate> began = ledger.began();
        List<ColdStretch> stretches = ledger.close(rooted(began, seen));
        return new ColdTime(began, stretches, ledger.reached(), dryDays(pot, potted));
    }

    /** The days in the cold since potting of some phases of a pot. */
    List<ColdStretch> stretches(List<Phase> phases, Optional<Day> potted, Seen seen) {
        ColdLedger ledger = entered(phases, potted);
        return ledger.close(rooted(ledger.began(), seen));
    }

    private ColdLedger entered(List<Phase> phases, Optional<Day> potted) {
        LocalDate from = potted.map(Day::likely).orElse(LocalDate.MIN);
        DaySpan counted = DaySpan.of(from.isAfter(today) ? today : from, today);
        ColdLedger ledger = new ColdLedger();
        phases.stream()
                .filter(phase -> phase.stage() == Stage.COLD)
                .forEach(phase -> phase.days()
                        .intersection(counted)
                        .ifPresent(days ->
                                ledger.enter(phase.place(), days, coldDays(phase.place()), read(phase.place()))));
        return ledger;
    }

    /** From when on it is taken to be rooted: since roots showed, or, where nobody looked, two weeks into the cold. */
    static Optional<LocalDate> rooted(Optional<LocalDate> began, Seen seen) {
        return seen.roots().isPresent()
                ? seen.roots()
                        .filter(roots -> roots.value() == Roots.SHOWING)
                        .map(roots -> roots.day().likely())
                : began.map(day -> day.plusDays(ROOTED_AFTER_DAYS));
    }

    /** Of a day, by the one from which on it is rooted; never where that is not known. */
    static Predicate<LocalDate> isRooted(Optional<LocalDate> rooted) {
        LocalDate since = rooted.orElse(LocalDate.MAX);
        return day -> !day.isBefore(since);
    }

    private ReadDays read(Optional<Id<Place>> place) {
        return place.map(there -> ReadDays.of(journal, there, today)).orElse(ReadDays.NONE);
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
                        .map(place -> daysAt(place, days)))
                .orElse(0);
    }

    /** Whole days that count of those that dry bulbs lay at a place. */
    private int daysAt(Place place, DaySpan days) {
        ColdLedger ledger = new ColdLedger();
        ledger.enter(Optional.of(place.id()), days, place.coldDays(), read(Optional.of(place.id())));
        return ColdCount.of(ledger.close(Optional.empty())).daysColdEnough();
    }

    /** How a place has lately been. */
    ColdPace pace(Optional<Id<Place>> place, Optional<LocalDate> rooted) {
        DaySpan lately = DaySpan.of(today.minusDays(ColdPace.LATELY_DAYS), today);
        return new StretchReading(read(place), new ColdCalendar(coldDays(place)), lately)
                .pace(lately, isRooted(rooted));
    }
}
