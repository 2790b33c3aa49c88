// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sillbook.app.Book;
import sillbook.exchange.ReadingsJson;
import sillbook.model.DayRead;
import sillbook.model.Journal;
import sillbook.model.Logged;
import sillbook.model.Place;
import sillbook.model.ReadingSource;
import sillbook.model.SpanReading;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.ReadStretch;
import sillbook.words.Provisos;
import sillbook.words.line.PlaceCalled;

/** Says what thermometers read. */
@Command(
        name = "readings",
        description = {
            "Say what the thermometers of a place read, moment by moment, where from, which is suspicious and where there"
                    + " is a gap, and the lowest and highest that were written down; of all places where none is named.",
            "--days says what each day comes to instead, put right for what a thermometer reads wrong, and which days a"
                    + " lowest and highest holds for."
        })
final class ReadingsCommand extends View {
    @Option(names = "--place", paramLabel = "NAME", description = "One place, by its name or how that begins.")
    private Optional<String> place = Optional.empty();

    @Option(
            names = "--from",
            paramLabel = "DAY",
            description = "The first day; that on which the season began if not said.")
    private Optional<String> from = Optional.empty();

    @Option(names = "--to", paramLabel = "DAY", description = "The last day, which is in it; today if not said.")
    private Optional<String> to = Optional.empty();

    @Option(names = "--days", description = "What each day comes to.")
    private boolean days;

    ReadingsCommand(Books books, Printer printer) {
        super(books, printer);
    }

    @Override
    Sight look(Book book) {
        Journal journal = book.readAll();
        LocalDate today = book.today();
        LocalDate first = from.map(text -> Given.dayNear(text, today))
                .orElseGet(() ->
                        journal.seasonOf(today).firstDay(journal.settings().seasonStart()));
        LocalDate last = to.map(text -> Given.dayNear(text, today)).orElse(today);
        List<ReadStretch> read = places(journal)
                .map(one -> days ? days(journal, one, first, last) : readings(book, one, first, last))
                .filter(stretch -> !stretch.isEmpty())
                .toList();
        return new Sight(
                () -> ReadingsJson.write(read, days, Provisos.NONE),
                () -> read.stream()
                        .flatMap(new ReadingsText(journal.settings())::lines)
                        .toList(),
                List.of(),
                "Nothing was read there in that stretch. Write what a thermometer reads: sillbook write 'cellar 5 C'");
    }

    private Stream<Place> places(Journal journal) {
        return place.map(name -> Stream.of(CouldNot.unless(PlaceCalled.find(journal, name))))
                .orElseGet(() -> journal.places().all().stream().sorted(Comparator.comparing(Place::name)));
    }

    private static ReadStretch days(Journal journal, Place place, LocalDate first, LocalDate last) {
        if (last.isBefore(first)) {
            return new ReadStretch(place, List.of(), List.of(), List.of(), List.of());
        }
        List<DayRead> sums = List.copyOf(journal.daysRead()
                .at(place.id())
                .subMap(first, true, last, true)
                .values());
        List<SpanReading> spans = spans(
                journal,
                place,
                span -> ReadStretch.covered(span)
                        .flatMap(DaySpan.ofInclusive(first, last)::intersection)
                        .isPresent());
        return new ReadStretch(place, List.of(), List.of(), sums, spans);
    }

    private static List<SpanReading> spans(Journal journal, Place place, Predicate<SpanReading> which) {
        return journal.spanReadingsAt(place.id()).stream()
                .filter(which)
                .sorted(Comparator.comparing(span -> span.from().likely()))
                .toList();
    }

    private static ReadStretch readings(Book book, Place place, LocalDate first, LocalDate last) {
        ZoneId zone = book.journal().settings().zone();
        Instant start = first.atStartOfDay(zone).toInstant();
        Instant end = last.plusDays(1).atStartOfDay(zone).toInstant();
        List<Logged> readings = new ArrayList<>();
        book.readings(place.id(), start, end, readings::add);
        List<ReadingSource> sources = book.journal().readingSources().all().stream()
                .filter(source -> source.place().equals(place.id()))
                .filter(source -> source.first().isBefore(end) && !source.last().isBefore(start))
                .sorted(Comparator.comparing(ReadingSource::first).thenComparing(ReadingSource::name))
                .toList();
        List<SpanReading> spans = spans(
                book.journal(),
                place,
                span -> !span.from().likely().isAfter(last)
                        && !span.to().likely().isBefore(first));
        return new ReadStretch(place, sources, readings, List.of(), spans);
    }
}
