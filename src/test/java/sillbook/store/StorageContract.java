// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.change.Step;
import sillbook.model.Day;
import sillbook.model.DaysRead;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.Kind;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Potting;
import sillbook.model.Season;
import sillbook.model.Settings;
import sillbook.model.Subject;
import sillbook.model.Variety;

/** What every storage must do. */
public abstract class StorageContract {
    private static final Instant NOW = Instant.parse("2027-01-12T08:41:00.123Z");
    private static final Journal EMPTY = Journal.empty(Settings.initial(ZoneOffset.UTC));

    @TempDir
    protected Path folder;

    private final RandomEntries entries = new RandomEntries(7);
    private Path file;
    private Store store;

    protected abstract Storage storage();

    @BeforeEach
    void begin() {
        file = folder.resolve("journal.sillbook");
        store = storage().begin(file, EMPTY);
    }

    @AfterEach
    void close() {
        store.close();
    }

    private long commit(String name, Entity<?>... entities) {
        List<Edit> edits = new ArrayList<>();
        for (Entity<?> entity : entities) {
            edits.add(new Edit.Put(entity));
        }
        return commit(new Step(name, edits));
    }

    private long commit(Step step) {
        return kept(store.commit(store.revision(), step, List.of(), NOW)).revision();
    }

    private static Written.Kept kept(Written written) {
        assertThat(written).isInstanceOf(Written.Kept.class);
        return (Written.Kept) written;
    }

    private Variety variety(String name) {
        return Variety.of(entries.id(), name, Kind.of("tulip"));
    }

    private Pot pot(String label, int season, Variety variety) {
        return new Pot(
                entries.id(),
                new Season(season),
                label,
                List.of(new Pot.Planting(variety.id(), 5, Optional.empty())),
                Pot.Way.DRAINED,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Potting.NOT_SAID,
                Optional.empty(),
                Optional.empty(),
                "");
    }

    @Test
    void beginsWithWhatItIsGiven() {
        Journal content = new RandomEntries(3).journal(200);
        try (Store begun = storage().begin(folder.resolve("other.sillbook"), content)) {
            assertThat(begun.read().journal().with(DaysRead.NONE)).isEqualTo(content);
            assertThat(begun.steps(0, 10)).isEqualTo(new Steps(List.of(), 0, 0));
            assertThat(begun.isReadOnly()).isFalse();
        }
    }

    @Test
    void knowsWhereAJournalIs() {
        assertThat(storage().probe(file)).isEqualTo(Storage.Found.JOURNAL);
        assertThat(storage().probe(folder.resolve("none.sillbook"))).isEqualTo(Storage.Found.NOTHING);
        assertThat(storage().has(file)).isTrue();
        assertThat(storage().has(folder.resolve("none.sillbook"))).isFalse();
    }

    @Test
    void refusesToOpenNothing() {
        assertThatThrownBy(() -> storage().open(folder.resolve("none.sillbook")))
                .isInstanceOf(StoreException.Missing.class)
                .hasMessageContaining("none.sillbook");
    }

    @Test
    void doesNotBeginWhereAJournalIs() {
        assertThatThrownBy(() -> storage().begin(file, EMPTY)).isInstanceOf(StoreException.AlreadyThere.class);
        assertThat(store.read().journal()).isEqualTo(EMPTY);
    }

    @Test
    void keepsAStep() {
        Variety variety = variety("Marrow Lane");

        long revision = commit("variety 'Marrow Lane' written down", variety);

        assertThat(store.read()).isEqualTo(new Snapshot(revision, EMPTY.with(List.of(new Edit.Put(variety)))));
        assertThat(store.steps(0, 10))
                .isEqualTo(
                        new Steps(List.of(new Steps.Listed("variety 'Marrow Lane' written down", NOW, false)), 1, 0));
    }

    @Test
    void tellsTheStepItKept() {
        Step step = new Step("one", List.of(new Edit.Put(variety("Inkwell"))));

        assertThat(kept(store.commit(store.revision(), step, List.of(), NOW)).step())
                .isEqualTo(step);
    }

    @Test
    void takesBackAndPutsBack() {
        Variety variety = variety("Inkwell");
        commit("one", variety);
        Journal after = store.read().journal();

        Written.Kept back = kept(store.takeBack(store.revision(), NOW));

        assertThat(back.step()).isEqualTo(new Step("one", List.of(new Edit.Remove(variety))));
        assertThat(store.read()).isEqualTo(new Snapshot(back.revision(), EMPTY));
        assertThat(store.steps(0, 1).stretch()).containsExactly(new Steps.Listed("one", NOW, true));

        Written.Kept forth = kept(store.putBack(store.revision(), NOW));

        assertThat(forth.step()).isEqualTo(new Step("one", List.of(new Edit.Put(variety))));
        assertThat(store.read()).isEqualTo(new Snapshot(forth.revision(), after));
    }

    @Test
    void takesBackACorrectionAndARemoval() {
        Variety first = variety("Inkwell");
        Variety second = new Variety(
                first.id(),
                "Bluejar",
                "",
                first.kind(),
                first.height(),
                first.bloomSeason(),
                "blue",
                first.scent(),
                first.packetForcing(),
                first.forPots(),
                "");
        commit("written", first);
        commit("corrected", second);
        commit(new Step("removed", List.of(new Edit.Remove(second))));

        assertThat(kept(store.takeBack(store.revision(), NOW)).step().edits()).containsExactly(new Edit.Put(second));
        assertThat(kept(store.takeBack(store.revision(), NOW)).step().edits()).containsExactly(new Edit.Put(first));
    }

    @Test
    void hasNothingToTakeBackInTheBeginning() {
        assertThat(store.takeBack(store.revision(), NOW)).isEqualTo(new Written.Nothing());
        assertThat(store.putBack(store.revision(), NOW)).isEqualTo(new Written.Nothing());
    }

    @Test
    void aNewStepEndsWhatCouldBePutBack() {
        commit("one", variety("Inkwell"));
        commit("two", variety("Bluejar"));
        store.takeBack(store.revision(), NOW);

        commit("three", variety("Thimble Post"));

        assertThat(store.putBack(store.revision(), NOW)).isEqualTo(new Written.Nothing());
        assertThat(store.steps(0, 10).stretch()).extracting(Steps.Listed::name).containsExactly("three", "one");
    }

    @Test
    void listsStepsFromTheNewest() {
        for (String name : List.of("one", "two", "three", "four")) {
            commit(name, variety(name));
        }
        store.takeBack(store.revision(), NOW);

        Steps steps = store.steps(1, 2);

        assertThat(steps.stretch()).extracting(Steps.Listed::name).containsExactly("three", "two");
        assertThat(steps.all()).isEqualTo(4);
        assertThat(steps.takenBack()).isEqualTo(1);
    }

    @Test
    void writesNothingDecidedOnAnEarlierRevision() {
        long before = store.revision();
        commit("one", variety("Inkwell"));
        Snapshot snapshot = store.read();

        assertThat(store.commit(before, new Step("two", List.of()), List.of(), NOW))
                .isEqualTo(new Written.Stale());
        assertThat(store.takeBack(before, NOW)).isEqualTo(new Written.Stale());
        assertThat(store.putBack(before, NOW)).isEqualTo(new Written.Stale());

        assertThat(store.read()).isEqualTo(snapshot);
        assertThat(store.steps(0, 10).all()).isEqualTo(1);
    }

    @Test
    void twoWindowsWriteOneJournal() {
        try (Store other = storage().open(file)) {
            commit("one", variety("Inkwell"));

            assertThat(other.read()).isEqualTo(store.read());
            assertThat(kept(other.takeBack(other.revision(), NOW)).step().name())
                    .isEqualTo("one");
            assertThat(store.read().journal()).isEqualTo(EMPTY);
        }
    }

    @Test
    void windowsCountWhileTheirStepIsInForce() {
        Variety variety = variety("Inkwell");
        Pot pot = pot("H1", 2026, variety);
        List<KeptWindow> windows = List.of(entries.window(pot.id()), entries.window(entries.id()));
        Step step = new Step("potted", List.of(new Edit.Put(variety), new Edit.Put(pot)));
        store.commit(store.revision(), step, windows, NOW);
        KeptWindow moved = entries.window(pot.id());
        store.commit(store.revision(), new Step("moved", List.of()), List.of(moved), NOW);
        assertThat(store.keptWindows(pot.id())).containsExactly(windows.get(0), moved);
        assertThat(store.keptWindows()).containsExactly(windows.get(0), windows.get(1), moved);

        store.takeBack(store.revision(), NOW);
        assertThat(store.keptWindows(pot.id())).containsExactly(windows.get(0));
        assertThat(store.keptWindows()).isEqualTo(windows);

        store.putBack(store.revision(), NOW);
        assertThat(store.keptWindows(pot.id())).containsExactly(windows.get(0), moved);
    }

    @Test
    void whatWasForetoldFromTheFirstStays() {
        Path begun = file.resolveSibling("begun.sillbook");
        List<KeptWindow> windows = List.of(entries.window(entries.id()), entries.window(entries.id()));
        try (Store other = storage().begin(begun, EMPTY, windows)) {
            KeptWindow later = entries.window(windows.get(0).pot());
            other.commit(other.revision(), new Step("moved", List.of()), List.of(later), NOW);
            assertThat(other.keptWindows()).containsExactly(windows.get(0), windows.get(1), later);
            assertThat(other.keptWindows(later.pot())).containsExactly(windows.get(0), later);

            other.takeBack(other.revision(), NOW);
            assertThat(other.keptWindows()).isEqualTo(windows);
            other.commit(other.revision(), new Step("moved", List.of()), List.of(), NOW);
            assertThat(other.keptWindows())
                    .as("the step that was taken back is gone")
                    .isEqualTo(windows);
        }
    }

    @Test
    void theFirstScreenHasTheSeasonAndWhatIsOpenAndItsAncestors() {
        Variety variety = variety("Umbrella Street");
        Place place = Place.of(entries.id(), "cellar", Place.Sort.CELLAR);
        Pot now = pot("A1", 2026, variety);
        Pot open = pot("A2", 2024, variety);
        Pot closed = pot("A3", 2025, variety);
        Pot parent = pot("A4", 2025, variety);
        Pot heir = heirOf(parent);
        Event ofPlace = event(new Subject.OfPlace(place.id()), new Happening.Jotted("swept"));
        Event ofClosed = event(new Subject.OfPot(closed.id()), new Happening.Closed(Happening.End.FINISHED, ""));
        Event ofParent = event(new Subject.OfPot(parent.id()), new Happening.Closed(Happening.End.FINISHED, ""));
        commit("all", variety, place, now, open, closed, parent, heir, ofPlace, ofClosed, ofParent);

        Journal current = store.readCurrent(NOW).journal();

        assertThat(current.pots().all()).containsExactlyInAnyOrder(now, open, parent, heir);
        assertThat(current.events().all()).containsExactlyInAnyOrder(ofPlace, ofParent);
        assertThat(current.varieties().all()).containsExactly(variety);
        assertThat(current.places().all()).containsExactly(place);
        assertThat(store.readCurrent(NOW).revision()).isEqualTo(store.revision());
    }

    private Pot heirOf(Pot parent) {
        return new Pot(
                entries.id(),
                new Season(2026),
                "A5",
                parent.plantings(),
                Pot.Way.DRAINED,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Potting.NOT_SAID,
                Optional.empty(),
                Optional.of(parent.id()),
                "");
    }

    private Event event(Subject subject, Happening what) {
        return new Event(entries.id(), subject, Day.on(LocalDate.of(2026, 5, 1)), 0, NOW, Optional.empty(), what);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void theFirstScreenNamesNothingThatIsMissing(long seed) {
        Journal content = new RandomEntries(seed).journal(150);
        try (Store begun = storage().begin(folder.resolve("other.sillbook"), content)) {
            Journal current = begun.readCurrent(NOW).journal();
            List<Id<?>> there =
                    current.entities().stream().<Id<?>>map(Entity::id).toList();
            assertThat(current.entities().stream().flatMap(Entity::refersTo)).isSubsetOf(there);
            assertThat(current.settings()).isEqualTo(content.settings());
        }
    }

    @Test
    void aBackupIsTheSameJournal() {
        commit("one", variety("Inkwell"));
        Path copy = folder.resolve("copy.sillbook");

        store.backUp(copy);

        try (Store backup = storage().open(copy)) {
            assertThat(backup.read().journal()).isEqualTo(store.read().journal());
            assertThat(backup.dump()).isEqualTo(store.dump());
        }
        assertThatThrownBy(() -> store.backUp(copy)).isInstanceOf(StoreException.AlreadyThere.class);
    }

    /**
     * Does what comes to hand, and after each act compares the store with a journal in memory that follows the edits it
     * was told, and with the journal that was there before.
     */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18})
    void agreesWithAJournalInMemoryWhateverIsDone(long seed) {
        Random random = new Random(seed);
        RandomEntries some = new RandomEntries(seed);
        Deque<Journal> before = new ArrayDeque<>();
        Deque<Journal> ahead = new ArrayDeque<>();
        Journal journal = EMPTY;
        String start = store.dump();
        for (int act = 0; act < 120; act++) {
            int what = random.nextInt(5);
            if (what == 0 && !before.isEmpty()) {
                ahead.push(journal);
                journal = follow(journal, store.takeBack(store.revision(), NOW), before.pop());
            } else if (what == 1 && !ahead.isEmpty()) {
                before.push(journal);
                journal = follow(journal, store.putBack(store.revision(), NOW), ahead.pop());
            } else {
                Step step = some.step(journal);
                before.push(journal);
                ahead.clear();
                journal = follow(
                        journal, store.commit(store.revision(), step, List.of(), NOW), journal.with(step.edits()));
            }
        }
        assertThat(store.verify()).isEmpty();
        thereAndBackAgain(start);
    }

    private Journal follow(Journal journal, Written written, Journal expected) {
        Written.Kept kept = kept(written);
        Journal entries = journal.with(kept.step().edits());
        Journal followed = kept.days().map(entries::with).orElse(entries);
        assertThat(followed.with(DaysRead.NONE)).isEqualTo(expected.with(DaysRead.NONE));
        assertThat(store.read().journal()).isEqualTo(followed);
        return followed;
    }

    private void thereAndBackAgain(String start) {
        while (store.putBack(store.revision(), NOW) instanceof Written.Kept) {}
        String end = store.dump();
        int steps = store.steps(0, 0).all();
        int back = 0;
        while (store.takeBack(store.revision(), NOW) instanceof Written.Kept) {
            back++;
        }
        assertThat(back).isEqualTo(steps);
        assertThat(store.dump()).isEqualTo(start);
        while (store.putBack(store.revision(), NOW) instanceof Written.Kept) {}
        assertThat(store.dump()).isEqualTo(end);
        assertThat(end).isNotEqualTo(start);
        assertThat(store.verify()).isEmpty();
    }
}
