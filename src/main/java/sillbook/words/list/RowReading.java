// SPDX-License-Identifier: Apache-2.0
package sillbook.words.list;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.words.line.Bench;
import sillbook.words.list.ListForm.Meant;

/** Reads the rows of a list one after another, each against the journal as those before it leave it. */
final class RowReading<E extends Entity<E>> {
    private final ListForm<E> form;
    private final Header header;
    private final List<ListedRow> rows = new ArrayList<>();
    private final Map<Id<E>, Integer> told = new HashMap<>();
    private Bench bench;

    RowReading(ListForm<E> form, Header header, Bench bench) {
        this.form = form;
        this.header = header;
        this.bench = bench;
    }

    List<ListedRow> rows() {
        return List.copyOf(rows);
    }

    void read(Table.Row row) {
        Cells cells = new Cells(header, row, bench);
        Optional<Meant<E>> meant = cells.areRight(form.columns()) ? form.read(cells) : Optional.empty();
        ListedRow read = meant.map(one -> judged(one, cells)).orElseGet(() -> wrong(cells));
        bench = new Bench(bench.journal().with(puts(read.writes())), bench.outlook(), bench.handbook(), bench.ids());
        rows.add(read);
    }

    private ListedRow wrong(Cells cells) {
        String name = Naming.name(cells.text(form.columns().get(0)))
                .value()
                .map(bare -> "'" + bare + "'")
                .orElse("");
        return new ListedRow(cells.number(), name, Outcome.WRONG, List.of(), cells.bad(), List.of());
    }

    /** What is new always says something: its kind, or its count. */
    private ListedRow judged(Meant<E> meant, Cells cells) {
        List<Entity<?>> writes = new ArrayList<>(meant.made().stream().toList());
        writes.add(meant.after());
        Journal after = bench.journal().with(puts(writes));
        List<String> says = meant.before()
                .map(before -> differences(before, meant.after(), after))
                .orElseGet(() -> facts(meant, after));
        String name = form.name(meant.after(), after);
        if (says.isEmpty()) {
            return new ListedRow(cells.number(), name, Outcome.SAME, says, List.of(), List.of());
        }
        Outcome outcome = meant.before().isPresent() ? Outcome.CHANGED : Outcome.NEW;
        return Optional.ofNullable(told.putIfAbsent(meant.after().id(), cells.number()))
                .map(earlier -> contradicting(earlier, says, cells))
                .orElseGet(() -> new ListedRow(cells.number(), name, outcome, says, List.of(), writes));
    }

    private ListedRow contradicting(int earlier, List<String> says, Cells cells) {
        cells.blame(
                form.columns().get(0),
                "row " + earlier + " is about the same, and says otherwise: " + String.join("; ", says)
                        + ". Leave one of the two.");
        return wrong(cells);
    }

    private static List<Edit> puts(List<? extends Entity<?>> entities) {
        return entities.stream().<Edit>map(Edit.Put::new).toList();
    }

    private List<String> facts(Meant<E> meant, Journal journal) {
        Stream<String> made = meant.made().stream().map(variety -> "a new variety, " + variety.kind());
        Stream<String> said =
                form.columns().stream().map(column -> column.says().apply(meant.after(), journal));
        return Stream.concat(made, said).filter(says -> !says.isEmpty()).toList();
    }

    private List<String> differences(E before, E after, Journal journal) {
        return form.columns().stream()
                .map(column -> column.difference(before, after, journal))
                .flatMap(Optional::stream)
                .toList();
    }
}
