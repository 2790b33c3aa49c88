// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Event;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Labels;
import sillbook.model.Outcome;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.ReadingSource;
import sillbook.model.SpanReading;
import sillbook.model.SpotReading;
import sillbook.model.Thermometer;
import sillbook.model.Variety;
import sillbook.text.Fold;

/** Reads what stands in a journal as entries of the diary. */
final class DiaryReading {
    private static final Comparator<String> BY_LABEL =
            Comparator.comparing(Labels::letters).thenComparingInt(Labels::number);

    private final Journal journal;
    private final PotNames names;
    private final Entries entries;

    DiaryReading(Journal journal) {
        this.journal = journal;
        this.names = new PotNames(journal);
        this.entries = new Entries(journal);
    }

    /** Events that one act wrote. */
    DiaryEntry of(List<Event> events) {
        Event first = events.get(0);
        List<Id<Pot>> pots = events.stream()
                .flatMap(event -> event.subject().asPot().stream())
                .sorted(Comparator.comparing(names::label, BY_LABEL))
                .toList();
        String whose = pots.isEmpty() ? names.whose(List.of(first.subject())) : "";
        String says = (whose.isEmpty() ? "" : whose + ": ") + entries.say(first.what());
        return new DiaryEntry(
                first.day(),
                writtenOn(first),
                pots,
                says,
                pots.isEmpty() ? season(first) : found(pots),
                List.copyOf(events));
    }

    private Optional<LocalDate> writtenOn(Event event) {
        return Optional.of(day(event.writtenAt()))
                .filter(written -> !written.equals(event.day().likely()));
    }

    private LocalDate day(Instant instant) {
        return LocalDate.ofInstant(instant, journal.settings().zone());
    }

    private String season(Event event) {
        return " " + season(event.day());
    }

    private String season(Day day) {
        return journal.nameOf(journal.seasonOf(day.likely()));
    }

    /** Labels one by one, varieties, kinds and the season. */
    private String found(List<Id<Pot>> pots) {
        List<String> words = new ArrayList<>();
        pots.forEach(pot -> words.add(names.label(pot)));
        pots.stream()
                .flatMap(pot -> journal.pots().get(pot).plantings().stream())
                .map(planting -> of(planting.variety()))
                .distinct()
                .forEach(words::add);
        words.add(journal.nameOf(journal.pots().get(pots.get(0)).season()));
        return " " + Fold.of(String.join(" ", words));
    }

    private String of(Id<Variety> variety) {
        Variety named = journal.varieties().get(variety);
        return named.name() + " " + named.kind();
    }

    DiaryEntry of(Outcome outcome) {
        List<Id<Pot>> pot = List.of(outcome.pot());
        String says = new OutcomeWords(journal).say(outcome);
        return new DiaryEntry(outcome.day(), Optional.empty(), pot, says, found(pot), List.of(outcome));
    }

    DiaryEntry of(Purchase purchase) {
        String says = names.variety(purchase.variety()) + ": " + Terms.STATES.say(purchase.state()) + ", "
                + PurchaseWords.bulbs(purchase)
                + purchase.price().map(price -> ", " + Prices.say(price)).orElse("")
                + from(purchase.supplier());
        String found = " purchase bought " + Fold.of(of(purchase.variety())) + " " + journal.nameOf(purchase.season());
        return new DiaryEntry(purchase.day(), Optional.empty(), List.of(), says, found, List.of(purchase));
    }

    private static String from(String supplier) {
        return supplier.isEmpty() ? "" : ", from " + supplier;
    }

    DiaryEntry of(SpanReading span) {
        String says = names.place(span.place()) + ": " + readings().say(span) + " (reading)";
        return new DiaryEntry(span.to(), Optional.empty(), List.of(), says, " " + season(span.to()), List.of(span));
    }

    DiaryEntry of(SpotReading spot) {
        Day day = Day.on(readings().day(spot));
        String says = names.place(spot.place()) + ": " + readings().say(spot) + " (reading)";
        return new DiaryEntry(day, Optional.empty(), List.of(), says, " " + season(day), List.of(spot));
    }

    private ReadingWords readings() {
        return new ReadingWords(journal.settings());
    }

    DiaryEntry of(ReadingSource source) {
        LocalDate first = day(source.first());
        Day last = Day.on(day(source.last()));
        String says = names.place(source.place()) + ": " + Counts.of(source.readings(), "reading") + ", "
                + Days.span(first, last.likely()) + ", from " + source.name();
        return new DiaryEntry(last, Optional.empty(), List.of(), says, " " + season(last), List.of(source));
    }

    /** Empty where it was never tried in ice water, which is all that happens to one. */
    Optional<DiaryEntry> of(Thermometer thermometer) {
        return thermometer.ice().map(test -> {
            String read = Temperatures.say(test.read(), journal.settings().temperatures());
            String says = names.place(thermometer.place()) + ": thermometer reads " + read + " in ice water";
            return new DiaryEntry(
                    test.on(), Optional.empty(), List.of(), says, " " + season(test.on()), List.of(thermometer));
        });
    }
}
