// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.change.Step;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.Outcome;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.Wish;

/** Journals in memory, by the path they are begun under; all stores of one path are windows of one journal. */
public final class MemoryStorage implements Storage {
    private final Map<Path, Kept> journals = new HashMap<>();

    /** One step: the journal it led from, and the one it led to. */
    private record Turn(Step step, Instant at, Journal before, Journal after, List<KeptWindow> windows) {}

    private static final class Kept {
        private final Journal begun;
        private final List<KeptWindow> windows;
        private final List<Turn> turns = new ArrayList<>();
        private int inForce;
        private long revision;

        private Kept(Journal begun, List<KeptWindow> windows) {
            this.begun = begun;
            this.windows = List.copyOf(windows);
        }

        private Journal now() {
            return inForce == 0 ? begun : turns.get(inForce - 1).after();
        }
    }

    @Override
    public Found probe(Path file) {
        return journals.containsKey(file) ? Found.JOURNAL : Found.NOTHING;
    }

    @Override
    public boolean has(Path file) {
        return journals.containsKey(file);
    }

    @Override
    public Store open(Path file) {
        Kept kept = journals.get(file);
        if (kept == null) {
            throw new StoreException.Missing(file);
        }
        return new Window(kept);
    }

    @Override
    public Store begin(Path file, Journal content, List<KeptWindow> windows) {
        if (journals.putIfAbsent(file, new Kept(content, windows)) != null) {
            throw new StoreException.AlreadyThere(file);
        }
        return open(file);
    }

    private final class Window implements Store {
        private final Kept kept;

        private Window(Kept kept) {
            this.kept = kept;
        }

        @Override
        public Snapshot read() {
            return new Snapshot(kept.revision, kept.now());
        }

        @Override
        public Snapshot readCurrent(Instant now) {
            Journal journal = kept.now();
            LocalDate today = LocalDate.ofInstant(now, journal.settings().zone());
            Set<Id<Pot>> pots = currentPots(journal, journal.seasonOf(today));
            return new Snapshot(
                    kept.revision,
                    Journal.of(journal.entities().stream()
                            .filter(entity -> isCurrent(entity, pots))
                            .toList()));
        }

        @Override
        public long revision() {
            return kept.revision;
        }

        @Override
        public boolean isReadOnly() {
            return false;
        }

        @Override
        public Written commit(long revision, Step step, List<KeptWindow> windows, Instant now) {
            if (revision != kept.revision) {
                return new Written.Stale();
            }
            Journal before = kept.now();
            kept.turns.subList(kept.inForce, kept.turns.size()).clear();
            kept.turns.add(new Turn(step, now, before, before.with(step.edits()), List.copyOf(windows)));
            kept.inForce++;
            return kept(step);
        }

        @Override
        public Written takeBack(long revision, Instant now) {
            if (revision != kept.revision) {
                return new Written.Stale();
            }
            if (kept.inForce == 0) {
                return new Written.Nothing();
            }
            kept.inForce--;
            Turn turn = kept.turns.get(kept.inForce);
            return kept(new Step(turn.step().name(), edits(turn.after(), turn.before())));
        }

        @Override
        public Written putBack(long revision, Instant now) {
            if (revision != kept.revision) {
                return new Written.Stale();
            }
            if (kept.inForce == kept.turns.size()) {
                return new Written.Nothing();
            }
            Turn turn = kept.turns.get(kept.inForce);
            kept.inForce++;
            return kept(new Step(turn.step().name(), edits(turn.before(), turn.after())));
        }

        private Written.Kept kept(Step step) {
            kept.revision++;
            return new Written.Kept(kept.revision, step);
        }

        @Override
        public Steps steps(int from, int howMany) {
            List<Steps.Listed> listed = new ArrayList<>();
            int newest = kept.turns.size() - 1 - from;
            for (int index = newest; index >= 0 && index > newest - howMany; index--) {
                Turn turn = kept.turns.get(index);
                listed.add(new Steps.Listed(turn.step().name(), turn.at(), index >= kept.inForce));
            }
            return new Steps(listed, kept.turns.size(), kept.turns.size() - kept.inForce);
        }

        @Override
        public List<KeptWindow> keptWindows(Id<Pot> pot) {
            return keptWindows().stream()
                    .filter(window -> window.pot().equals(pot))
                    .toList();
        }

        @Override
        public List<KeptWindow> keptWindows() {
            return Stream.concat(
                            kept.windows.stream(),
                            kept.turns.subList(0, kept.inForce).stream().flatMap(turn -> turn.windows().stream()))
                    .toList();
        }

        @Override
        public String dump() {
            return kept.now().entities().stream().map(Entity::toString).sorted().collect(Collectors.joining("\n"));
        }

        @Override
        public List<String> verify() {
            return List.of();
        }

        @Override
        public void backUp(Path copy) {
            begin(copy, kept.now(), keptWindows());
        }

        @Override
        public void close() {}
    }

    private static List<Edit> edits(Journal from, Journal to) {
        Set<Entity<?>> before = new HashSet<>(from.entities());
        Set<Entity<?>> after = new HashSet<>(to.entities());
        Set<Id<?>> stay = after.stream().map(Entity::id).collect(Collectors.toSet());
        List<Edit> edits = new ArrayList<>();
        before.stream()
                .filter(entity -> !stay.contains(entity.id()))
                .forEach(entity -> edits.add(new Edit.Remove(entity)));
        after.stream().filter(entity -> !before.contains(entity)).forEach(entity -> edits.add(new Edit.Put(entity)));
        return edits;
    }

    private static Set<Id<Pot>> currentPots(Journal journal, Season season) {
        Set<Id<Pot>> shown = new HashSet<>();
        for (Pot pot : journal.pots().all()) {
            boolean closed =
                    journal.history(pot.id()).stream().anyMatch(event -> event.what() instanceof Happening.Closed);
            if (pot.season().equals(season) || !closed) {
                addWithParents(journal, pot, shown);
            }
        }
        return shown;
    }

    private static void addWithParents(Journal journal, Pot pot, Set<Id<Pot>> shown) {
        if (shown.add(pot.id())) {
            pot.parent().map(journal.pots()::get).ifPresent(parent -> addWithParents(journal, parent, shown));
        }
    }

    private static boolean isCurrent(Entity<?> entity, Set<Id<Pot>> pots) {
        if (entity instanceof Pot pot) {
            return pots.contains(pot.id());
        }
        if (entity instanceof Event event) {
            return event.subject().asPot().map(pots::contains).orElse(true);
        }
        if (entity instanceof Outcome outcome) {
            return pots.contains(outcome.pot());
        }
        return !(entity instanceof Wish wish) || pots.containsAll(wish.pots());
    }
}
