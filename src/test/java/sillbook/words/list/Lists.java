// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import sillbook.change.Hand;
import sillbook.change.Step;
import sillbook.handbook.Handbook;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Ids;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Place;
import sillbook.model.Settings;
import sillbook.model.Variety;
import sillbook.season.Outlook;
import sillbook.words.Heard;
import sillbook.words.line.Bench;

/** Tables, and a small book to read them against. */
final class Lists {
    static final LocalDate TODAY = LocalDate.of(2026, 9, 20);
    static final Variety INKWELL = Variety.of(new Id<>(1, 1), "Inkwell", Kind.of("hyacinth"));
    private static final Ids IDS = new SplittableRandom(20260920)::nextLong;

    private Lists() {}

    /** A hyacinth, a place, and nothing else. */
    static Journal book() {
        Place cellar = Place.of(new Id<>(2, 1), "cellar", Place.Sort.CELLAR);
        return Journal.empty(Settings.initial(ZoneId.of("UTC")))
                .with(List.of(new Edit.Put(INKWELL), new Edit.Put(cellar)));
    }

    /** Cells parted by semicolons, the header first. */
    static Table table(String... lines) {
        List<Table.Row> rows = new ArrayList<>();
        for (int at = 1; at < lines.length; at++) {
            rows.add(new Table.Row(at + 1, cells(lines[at])));
        }
        return new Table(cells(lines[0]), rows);
    }

    private static List<String> cells(String line) {
        return List.of(line.split(";", -1));
    }

    static Heard<ListReading> heard(Journal journal, ListSort sort, String... lines) {
        return heard(journal, sort, table(lines));
    }

    static Heard<ListReading> heard(Journal journal, ListSort sort, Table table) {
        Handbook handbook = Handbook.standard();
        Outlook outlook = Outlook.of(journal, handbook, TODAY);
        return ListReading.read(table, sort, new Bench(journal, outlook, handbook, IDS));
    }

    static ListReading read(Journal journal, ListSort sort, String... lines) {
        return heard(journal, sort, lines).value().orElseThrow();
    }

    /** What is said back: {@code 2 new 'Marrow Lane': tulip}. */
    static Stream<String> said(ListReading reading) {
        return reading.rows().stream()
                .flatMap(row -> row.lines().stream()
                        .map(line -> row.number() + " " + row.outcome().word() + " " + line));
    }

    /** The journal once the list is brought in. */
    static Journal after(Journal journal, ListReading reading) {
        Hand hand = new Hand(TODAY.atStartOfDay(ZoneId.of("UTC")).toInstant(), TODAY, IDS);
        Step step = reading.change().orElseThrow().on(journal, hand).fold(kept -> kept, refusal -> {
            throw new AssertionError(refusal.sentence());
        });
        return journal.with(step.edits());
    }
}
