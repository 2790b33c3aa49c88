// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import sillbook.change.Step;
import sillbook.model.Edit;
import sillbook.model.Journal;
import sillbook.store.RandomEntries;
import sillbook.store.Snapshot;
import sillbook.store.Store;
import sillbook.store.StoreException;
import sillbook.store.Written;

/**
 * Each write of an act fails in turn. The journal is then as it was before the act, however often it is tried again, and
 * once nothing fails any more the act is done as if nothing had been.
 */
class FaultTest {
    private static final Journal BEFORE = new RandomEntries(5).journal(60);
    private static final Step STEP = step();

    @TempDir
    private Path folder;

    /** A step in which entries of most types come, change and go. */
    private static Step step() {
        RandomEntries random = new RandomEntries(8);
        List<Edit> edits = new ArrayList<>();
        Journal journal = BEFORE;
        while (edits.size() < 60) {
            List<Edit> next = random.step(journal).edits();
            journal = journal.with(next);
            edits.addAll(next);
        }
        return new Step("much at once", edits);
    }

    /** What can be done to a journal. Each begins where the one before it left off. */
    enum Act {
        COMMIT {
            @Override
            Written on(Store store) {
                return store.commit(store.revision(), STEP, List.of(), Journals.NOW);
            }
        },
        TAKE_BACK {
            @Override
            Written on(Store store) {
                return store.takeBack(store.revision(), Journals.NOW);
            }
        },
        PUT_BACK {
            @Override
            Written on(Store store) {
                return store.putBack(store.revision(), Journals.NOW);
            }
        };

        abstract Written on(Store store);

        /** Brings a store to where this can be done. */
        void lead(Store store) {
            for (Act earlier : values()) {
                if (earlier.compareTo(this) < 0) {
                    assertThat(earlier.on(store)).isInstanceOf(Written.Kept.class);
                }
            }
        }
    }

    /** What a store says of itself; the dump has every row of every table of content. */
    private record Said(Snapshot snapshot, String dump, int steps, List<String> damage) {
        static Said by(Store store) {
            return new Said(store.read(), store.dump(), store.steps(0, 9).all(), store.verify());
        }
    }

    private Path begin(String name) {
        Path file = folder.resolve(name + ".sillbook");
        Journals.STORAGE.begin(file, BEFORE).close();
        return file;
    }

    /** What the act comes to where nothing fails. */
    private Said undisturbed(Act act) {
        try (Database database = Database.open(begin("undisturbed"), Access.WRITE)) {
            Store store = new SqliteStore(database, false, false, Journals.SUMS);
            act.lead(store);
            assertThat(act.on(store)).isInstanceOf(Written.Kept.class);
            return Said.by(store);
        }
    }

    @ParameterizedTest
    @EnumSource(Act.class)
    void whicheverRowCannotBeWrittenNothingIs(Act act) {
        Said after = undisturbed(act);
        try (Database database = Database.open(begin("journal"), Access.WRITE)) {
            Store store = new SqliteStore(database, false, false, Journals.SUMS);
            act.lead(store);
            Said before = Said.by(store);
            RowFault fault = RowFault.of(database);
            int failures = 0;
            for (fault.failFrom(1); fails(act, store); fault.failFrom(1 + failures)) {
                failures++;
                assertThat(fails(act, store)).as("tried again, it fails again").isTrue();
                fault.mend();
                assertThat(Said.by(store)).as("after write %d failed", failures).isEqualTo(before);
            }
            assertThat(failures).isGreaterThan(STEP.edits().size());
            assertThat(Said.by(store)).isEqualTo(after);
        }
    }

    /** Tries an act; it fails as the storage says, or is kept. */
    private static boolean fails(Act act, Store store) {
        try {
            assertThat(act.on(store)).isInstanceOf(Written.Kept.class);
            return false;
        } catch (StoreException expected) {
            return true;
        }
    }

    /** The same at the level of pages: the file finds no more room, sooner or later in the act. */
    @Test
    void whicheverPageFindsNoRoomNothingIsWritten() {
        Said after = undisturbed(Act.COMMIT);
        try (Database database = Database.open(begin("journal"), Access.WRITE)) {
            Store store = new SqliteStore(database, false, false, Journals.SUMS);
            Said before = Said.by(store);
            long pages = database.number("PRAGMA page_count");
            int failures = 0;
            while (isFull(database, pages + failures, store)) {
                failures++;
                assertThat(Said.by(store))
                        .as("with room for %d pages", pages + failures)
                        .isEqualTo(before);
            }
            assertThat(failures).isPositive();
            assertThat(Said.by(store)).isEqualTo(after);
        }
    }

    private static boolean isFull(Database database, long mostPages, Store store) {
        database.number("PRAGMA max_page_count = " + mostPages);
        return fails(Act.COMMIT, store);
    }
}
