// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.change.Step;
import sillbook.model.Catalogue;
import sillbook.model.ChartColumn;
import sillbook.model.DayRead;
import sillbook.model.DaysRead;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Intention;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.LastRead;
import sillbook.model.Logged;
import sillbook.model.Outcome;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.ReadingSource;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.model.Wish;

/** Journals in memory, by the path they are begun under; all stores of one path are windows of one journal. */
public final class MemoryStorage implements Storage {
    private final Map<Path, Kept> journals = new HashMap<>();

    /** One step: what it led from, and what it led to. */
    private record Turn(Step step, Instant at, State before, State after, List<KeptWindow> windows) {}

    /** What there is at one moment. */
    private record State(Journal entries, MemoryReadings readings) {
        Journal journal() {
            return entries.with(readings.days(entries));
        }
    }

    private static final class Kept {
        private final State begun;
        private final List<KeptWindow> windows;
        private final List<Turn> turns = new ArrayList<>();
        private int inForce;
        private long revision;

        private Kept(Journal begun, List<KeptWindow> windows) {
            this.begun = new State(begun.with(DaysRead.NONE), MemoryReadings.NONE);
            this.windows = List.copyOf(windows);
        }

        private State state() {
            return inForce == 0 ? begun : turns.get(inForce - 1).after();
        }

        private Journal now() {
            return state().journal();
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
                                    .filter(entity -> isCurrent(entity, pots, journal.seasonPlans()))
                                    .toList())
                            .with(current(journal, pots, now)));
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
        public void lookThrough() {}

        @Override
        public Written commit(long revision, Step step, List<KeptWindow> windows, Instant now) {
            if (revision != kept.revision) {
                return new Written.Stale();
            }
            State before = kept.state();
            MemoryReadings readings = before.readings();
            for (Edit edit : step.edits()) {
                if (edit instanceof Edit.Remove && edit.entity() instanceof ReadingSource source) {
                    readings = readings.without(source);
                }
            }
            return add(step, now, new State(before.entries().with(step.edits()), readings), windows);
        }

        private Written add(Step step, Instant now, State after, List<KeptWindow> windows) {
            State before = kept.state();
            kept.turns.subList(kept.inForce, kept.turns.size()).clear();
            kept.turns.add(new Turn(step, now, before, after, List.copyOf(windows)));
            kept.inForce++;
            return kept(step, before);
        }

        @Override
        public Written takeIn(long revision, Delivery delivery, Progress progress, Instant now) {
            if (revision != kept.revision) {
                return new Written.Stale();
            }
            State before = kept.state();
            String hash = hash(delivery);
            Id<ReadingSource> id = ReadingSource.idOf(delivery.place(), hash);
            if (before.entries().readingSources().contains(id)) {
                return new Written.Nothing();
            }
            MemoryReadings.Intake intake = before.readings().takeIn(delivery, false);
            Comparison comparison = intake.comparison();
            if (!progress.goesOn(comparison) || comparison.readings() == 0) {
                return new Written.Nothing();
            }
            ReadingSource source = new ReadingSource(
                    id,
                    delivery.place(),
                    delivery.name(),
                    hash,
                    comparison.readings(),
                    comparison.suspicious(),
                    intake.first(),
                    intake.last());
            Step step = Step.takenIn(
                    source, before.entries().places().get(delivery.place()).name(), delivery.beside());
            return add(step, now, new State(before.entries().with(step.edits()), intake.after()), List.of());
        }

        @Override
        public Comparison compare(Delivery delivery, Progress progress) {
            Id<ReadingSource> id = ReadingSource.idOf(delivery.place(), hash(delivery));
            boolean isTakenIn = kept.state().entries().readingSources().contains(id);
            Comparison comparison =
                    kept.state().readings().takeIn(delivery, isTakenIn).comparison();
            progress.goesOn(comparison);
            return comparison;
        }

        @Override
        public void readings(Id<Place> place, Instant from, Instant toExclusive, Consumer<Logged> taking) {
            kept.state().readings().of(kept.state().entries(), place).stream()
                    .filter(reading ->
                            !reading.at().isBefore(from) && reading.at().isBefore(toExclusive))
                    .forEach(taking);
        }

        @Override
        public List<ChartColumn> chart(Id<Place> place, Instant from, Instant toExclusive, int columns) {
            return kept.state().readings().chart(kept.state().entries(), place, from, toExclusive, columns);
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
            return kept(
                    new Step(
                            turn.step().name(),
                            edits(turn.after().entries(), turn.before().entries())),
                    turn.after());
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
            return kept(
                    new Step(
                            turn.step().name(),
                            edits(turn.before().entries(), turn.after().entries())),
                    turn.before());
        }

        private Written.Kept kept(Step step, State before) {
            kept.revision++;
            DaysRead now = kept.now().daysRead();
            boolean isOther = !before.journal().daysRead().equals(now);
            return new Written.Kept(kept.revision, step, isOther ? Optional.of(now) : Optional.empty());
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
            return kept.now().entities().stream().map(Entity::toString).sorted().collect(Collectors.joining("\n"))
                    + kept.state().readings().dump();
        }

        @Override
        public List<String> verify() {
            return List.of();
        }

        @Override
        public void backUp(Path copy) {
            Kept copied = new Kept(kept.now(), keptWindows());
            copied.turns.add(
                    new Turn(new Step("copied", List.of()), Instant.EPOCH, copied.begun, kept.state(), List.of()));
            copied.inForce = 1;
            if (journals.putIfAbsent(copy, copied) != null) {
                throw new StoreException.AlreadyThere(copy);
            }
        }

        @Override
        public void close() {}
    }

    private static String hash(Delivery delivery) {
        try (InputStream in = delivery.original().open()) {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(in.readAllBytes()));
        } catch (IOException | NoSuchAlgorithmException e) {
            throw new AssertionError(e);
        }
    }

    /** What was read since the first day of a pot that is shown, or for 500 days. */
    private static DaysRead current(Journal journal, Set<Id<Pot>> pots, Instant now) {
        LocalDate longAgo = LocalDate.ofInstant(now.minus(Duration.ofDays(500)), ZoneOffset.UTC);
        LocalDate since = pots.stream()
                .flatMap(pot -> journal.history(pot).stream())
                .map(event -> event.day().earliest())
                .min(Comparator.naturalOrder())
                .filter(longAgo::isBefore)
                .orElse(longAgo);
        List<DayRead> days = new ArrayList<>();
        List<LastRead> last = new ArrayList<>();
        for (Place place : journal.places().all()) {
            boolean isAir = journal.trenches().all().stream()
                    .anyMatch(trench ->
                            trench.outdoors().filter(place.id()::equals).isPresent());
            LocalDate from = isAir ? LocalDate.MIN : since;
            days.addAll(journal.daysRead().at(place.id()).tailMap(from).values());
            journal.daysRead().lastAt(place.id()).ifPresent(last::add);
        }
        return DaysRead.of(days, last);
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

    private static boolean isCurrent(Entity<?> entity, Set<Id<Pot>> pots, Catalogue<SeasonPlan> plans) {
        if (entity instanceof Pot pot) {
            return pots.contains(pot.id());
        }
        if (entity instanceof Event event) {
            return event.subject().asPot().map(pots::contains).orElse(true);
        }
        if (entity instanceof Outcome outcome) {
            return pots.contains(outcome.pot());
        }
        if (entity instanceof Intention meant) {
            return pots.contains(meant.pot()) && isOfCurrentPots(plans.get(meant.plan()), pots);
        }
        if (entity instanceof SeasonPlan plan) {
            return isOfCurrentPots(plan, pots);
        }
        return !(entity instanceof Wish wish) || pots.containsAll(wish.pots());
    }

    private static boolean isOfCurrentPots(SeasonPlan plan, Set<Id<Pot>> pots) {
        return plan.pots().stream().flatMap(one -> one.pot().stream()).allMatch(pots::contains);
    }
}
