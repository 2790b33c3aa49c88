// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sillbook.model.Band;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.reckon.cold.ColdWeight;

/** Finds what holds a pot back that by the calendar would have had more cold. */
record HeldBack(Journal journal, List<ColdStretch> stretches, LocalDate today) {
    /** Half a week is said. */
    private static final int LEAST_DAYS = 4;

    /** Warmer than the middle of what counts whole, in thousandths of a degree, what is lost is lost to warmth. */
    private static final double MIDDLE = (ColdWeight.USUAL.full() + ColdWeight.USUAL.fading()) / 2 * 1000;

    /** @param enoughOn the day its weeks are likely had, which is still to come */
    Optional<Concern> find(LocalDate enoughOn) {
        ColdCount count = ColdCount.of(stretches);
        int lost = stretches.stream().mapToInt(HeldBack::lost).sum();
        return stretches.stream()
                .filter(stretch -> lost >= LEAST_DAYS && stretch.isRead())
                .max(Comparator.comparing(HeldBack::lost))
                .flatMap(most -> most.place()
                        .map(place -> new Concern.HeldBack(
                                place, lost, ranWarm(place, most), count.daysIn(), count.daysColdEnough(), enoughOn)));
    }

    private static int lost(ColdStretch stretch) {
        return stretch.daysByCalendar() - stretch.daysColdEnough();
    }

    /** Whether the days that were read, and did not count whole, were rather warm than cold. */
    private boolean ranWarm(Id<Place> place, ColdStretch stretch) {
        ReadDays read = ReadDays.of(journal, place, today);
        return stretch.days()
                        .start()
                        .datesUntil(stretch.days().endExclusive())
                        .flatMap(day -> read.between(day).stream())
                        .filter(HeldBack::isLessThanWhole)
                        .mapToDouble(HeldBack::middle)
                        .average()
                        .orElse(MIDDLE)
                >= MIDDLE;
    }

    private static boolean isLessThanWhole(Band day) {
        return ColdWeight.USUAL.least(day.low().celsius(), day.high().celsius()) < 1;
    }

    private static double middle(Band day) {
        return (day.low().milli() + day.high().milli()) / 2.0;
    }
}
