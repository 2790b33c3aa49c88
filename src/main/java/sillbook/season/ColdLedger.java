// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Place.ColdDays;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.ColdPart.Basis;

/**
 * The cold of one pot, entered day by day, each day by what is trusted most of it. Where nothing was read it is what the calendar says, and
 * is not entered day by day.
 */
final class ColdLedger {
    private final List<Entry> entries = new ArrayList<>();
    private final List<LocalDate> reached = new ArrayList<>();
    private double had;

    /** A stretch to be entered. */
    private record Entry(Optional<Id<Place>> place, DaySpan days, ColdDays coldDays, StretchReading reading) {
        /** The first day that is cold there. */
        Optional<LocalDate> began() {
            return reading.isRead()
                    ? days.start()
                            .datesUntil(days.endExclusive())
                            .filter(reading::isCold)
                            .findFirst()
                    : Optional.of(new ColdCalendar(coldDays).coldOnOrAfter(days.start()))
                            .filter(days::contains);
        }

        ColdStretch closed(Iterable<ColdPart> parts) {
            List<ColdPart> all = new ArrayList<>();
            parts.forEach(all::add);
            return new ColdStretch(place, days, coldDays, began(), all);
        }
    }

    void enter(Optional<Id<Place>> place, DaySpan days, ColdDays coldDays, ReadDays read) {
        entries.add(new Entry(place, days, coldDays, new StretchReading(read, new ColdCalendar(coldDays), days)));
    }

    /** The first day of cold. */
    Optional<LocalDate> began() {
        return entries.stream().flatMap(entry -> entry.began().stream()).findFirst();
    }

    /**
     * Adds it all up.
     *
     * @param rooted from when on the hours from 0 to 2 C count whole; empty where it is not known to be rooted
     */
    List<ColdStretch> close(Optional<LocalDate> rooted) {
        boolean isRead = entries.stream().anyMatch(entry -> entry.reading().isRead());
        return entries.stream()
                .map(entry -> isRead ? byDay(entry, rooted) : byCalendar(entry))
                .toList();
    }

    /** After it is closed: the days by which each whole day of cold was had; none where nothing was read. */
    List<LocalDate> reached() {
        return reached;
    }

    private static ColdStretch byCalendar(Entry entry) {
        int cold = new ColdCalendar(entry.coldDays()).coldDaysIn(entry.days());
        return entry.closed(List.of(new ColdPart(Basis.ASSUMED, entry.days().days(), cold, cold, cold)));
    }

    private ColdStretch byDay(Entry entry, Optional<LocalDate> rooted) {
        Map<Basis, ColdPart> parts = new EnumMap<>(Basis.class);
        Consumer<ColdPart> adding = part -> {
            parts.merge(part.basis(), part, ColdPart::plus);
            had += part.likely();
        };
        Predicate<LocalDate> isRooted = ColdReading.isRooted(rooted);
        for (LocalDate day = entry.days().start(); day.isBefore(entry.days().endExclusive()); day = day.plusDays(1)) {
            entry.reading().tell(day, isRooted.test(day), adding);
            while (reached.size() < ColdCount.whole(had)) {
                reached.add(day.plusDays(1));
            }
        }
        return entry.closed(parts.values());
    }
}
