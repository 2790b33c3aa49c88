// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.change.Step;
import sillbook.model.Edit;
import sillbook.store.StoreException;

/** The form of a journal's file. */
class SchemaTest {
    private static final int READINGS = 50_000;

    @TempDir
    private Path folder;

    private Database database;

    @BeforeEach
    void open() {
        database = Database.open(Journals.full(folder.resolve("journal.sillbook")), Access.WRITE);
    }

    @AfterEach
    void close() {
        database.close();
    }

    private List<String> tables() {
        return database.list("SELECT name FROM sqlite_schema WHERE type = 'table'", Row::text);
    }

    private List<String> columns(String table) {
        return database.list("SELECT name FROM pragma_table_info(?) ORDER BY cid", Row::text, table);
    }

    @Test
    void everyTableIsStrict() {
        assertThat(database.list(
                        "SELECT name FROM pragma_table_list WHERE NOT strict AND name NOT LIKE 'sqlite%'", Row::text))
                .isEmpty();
        assertThat(tables()).hasSizeGreaterThan(20);
    }

    /** In the file itself, so that other tools find it there. The first column of an entry is its id, and needs none. */
    @Test
    void everyColumnHasItsComment() {
        List<String> bare = new ArrayList<>();
        for (String table : tables()) {
            String sql = database.first("SELECT sql FROM sqlite_schema WHERE name = ?", Row::text, table)
                    .orElseThrow();
            columns(table).stream()
                    .filter(column -> !column.equals("id") && !isCommented(sql, column))
                    .forEach(column -> bare.add(table + "." + column));
        }
        assertThat(bare).isEmpty();
    }

    private static boolean isCommented(String sql, String column) {
        return Pattern.compile(
                        "^ +" + column + " +(TEXT|INTEGER|REAL|BLOB)[^\n]*(,?\n {20,}[^\n]*)*-- \\S", Pattern.MULTILINE)
                .matcher(sql)
                .find();
    }

    @Test
    void theMappingsKnowEveryColumn() {
        List<Table> mapped = Mappings.ALL.stream()
                .flatMap(mapping ->
                        Stream.concat(Stream.of(mapping.table()), mapping.parts().map(Parts::table).stream()))
                .toList();
        assertThat(mapped)
                .hasSize(30)
                .allSatisfy(table ->
                        assertThat(table.columns()).containsExactlyInAnyOrderElementsOf(columns(table.name())));
    }

    @Test
    void aTableKnowsItsColumnsOnly() {
        Table table = Table.of("pot", "id", "label");
        assertThat(table.indexOf("label")).isEqualTo(1);
        assertThatThrownBy(() -> table.indexOf("colour")).hasMessage("pot has no column colour");
        assertThatThrownBy(() -> Mappings.ofTable("tulips")).hasMessage("there is no table of tulips");
    }

    @Test
    void aReadingTakesAtMost25Bytes() {
        String place = database.first("SELECT id FROM place", Row::text).orElseThrow();
        database.transaction(() -> {
            for (int line = 0; line < READINGS; line++) {
                database.update(
                        "INSERT INTO reading VALUES (1, ?, ?, 1, ?, 0)",
                        1_790_000_000 + 600 * line,
                        9_625 - line % 4_000,
                        line);
            }
            return place;
        });
        long bytes = database.number("SELECT sum(pgsize) FROM dbstat WHERE name = 'reading'");
        System.out.printf(Locale.ROOT, "a reading takes %.1f bytes%n", bytes / (double) READINGS);
        assertThat(bytes).isLessThanOrEqualTo(25L * READINGS);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE event SET day = '2027-02-31'",
                "UPDATE event SET day_earliest = '2027-02-03', day_latest = NULL",
                "UPDATE event SET subject_season = 2026",
                "UPDATE event SET what = 'LOST'",
                "UPDATE event SET what = 'MOVED', place = NULL",
                "UPDATE outcome SET score = 6",
                "UPDATE place SET usual_low = 5000, usual_low_written = '', usual_high = 4000, usual_high_written = ''",
                "UPDATE planting SET bulbs = 0",
                "UPDATE planting SET variety = '00000000000000000000000000000001'",
                "UPDATE variety SET name = ' '",
                "UPDATE pot SET across = 190, across_written = NULL",
                "UPDATE pot SET season = 'last'",
                "DELETE FROM variety",
                "INSERT INTO book VALUES (2, 0)"
            })
    void whatMakesNoSenseCannotBeWritten(String sql) {
        assertThatThrownBy(() -> database.run(sql))
                .isInstanceOf(StoreException.Unfit.class)
                .hasMessageContaining("does not fit");
    }

    @Test
    void removalLeavesATrace() {
        String id = database.first("SELECT id FROM outcome", Row::text).orElseThrow();
        Content content = new Content(database);
        Key key = new Key(Mappings.ofTable("outcome"), id);
        var outcome = content.find(key).orElseThrow();

        content.remove(key, Journals.NOW);
        assertThat(database.first(
                        "SELECT removed_at FROM tombstone WHERE table_name = 'outcome' AND id = ?", Row::instant, id))
                .hasValue(Journals.NOW);

        content.put(outcome);
        assertThat(database.list("SELECT id FROM tombstone", Row::text)).isEmpty();
        assertThat(content.find(key)).isEqualTo(Optional.of(outcome));
    }

    @Test
    void onlyWhatAStepChangedIsLogged() {
        var unchanged = new Content(database).read(new VarietyRows(), "").get(0);
        StepLog log = new StepLog(database, new Content(database), new WrongSums(database));
        database.transaction(() -> log.add(new Step("again", List.of(new Edit.Put(unchanged))), Journals.NOW));
        assertThat(database.number("SELECT count(*) FROM step")).isEqualTo(1);
        assertThat(database.number("SELECT count(*) FROM step_row")).isZero();
    }
}
