// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.model.Cause;
import sillbook.model.Event;
import sillbook.model.Failure;
import sillbook.model.Findings;
import sillbook.model.Findings.Trouble;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Place.Hazard;
import sillbook.model.Stage;
import sillbook.model.Subject;
import sillbook.model.Temperature;

/** Holds every cause of failure against what the journal says of a pot. Nothing is weighed but by how many entries speak. */
final class SuspectReading {
    private static final Temperature FREEZING = Temperature.ofCelsius(0);
    private static final Set<String> FROST = Set.of("frost", "froze", "icy");
    private static final Set<String> FRUIT = Set.of("fruit", "apple", "pear", "banana");

    private final Journal journal;
    private final PotNow pot;
    private final Failure found;
    private final List<Phase> phases;
    private final List<Phase> cold;
    private final List<StoodThrough> readings;
    private final List<Event> checks;

    /**
     * @param found what was seen to be wrong
     */
    SuspectReading(Journal journal, PotNow pot, Failure found) {
        this.journal = journal;
        this.pot = pot;
        this.found = found;
        this.phases = pot.life().phases();
        this.cold = phases.stream().filter(phase -> phase.stage() == Stage.COLD).toList();
        this.readings = StoodThrough.of(journal, cold);
        this.checks = journal.history(pot.life().pot().id()).stream()
                .filter(event -> event.what() instanceof Happening.Checked)
                .toList();
    }

    /**
     * Every cause once: those entries speak for first, then those that cannot be told, then the rest; of each those that what was found
     * fits best, then those with most entries.
     */
    List<Suspect> list() {
        return Stream.of(coldShort(), warmSpell(), frozen(), tooWetOrDry(), fruitNear(), rushed())
                .sorted(Comparator.comparing(Suspect::verdict)
                        .thenComparing(suspect -> -suspect.weight())
                        .thenComparing(suspect -> suspect.verdict() == Suspect.Verdict.SPEAKS_FOR
                                ? -suspect.clues().size()
                                : 0))
                .toList();
    }

    private Suspect suspect(Cause cause, List<Clue> speaking, Suspect.Verdict otherwise, Clue reason) {
        List<CauseFit> fits = CauseFit.of(cause, found);
        return speaking.isEmpty()
                ? new Suspect(cause, otherwise, List.of(reason), fits)
                : new Suspect(cause, Suspect.Verdict.SPEAKS_FOR, speaking, fits);
    }

    private Suspect coldShort() {
        Optional<FigureInForce> figure = pot.figures().find(FigureName.COLD);
        if (pot.coldNeed().isEmpty() || figure.isEmpty()) {
            return suspect(Cause.COLD_SHORT, List.of(), Suspect.Verdict.NOTHING_SPEAKS_FOR, new Clue.NeedsNoCold());
        }
        ColdTime had = pot.life().cold();
        int needed = pot.coldNeed().get().potted().typical();
        boolean isOver = broughtIn().isPresent();
        Clue weeks = new Clue.WeeksIn(had.daysIn(), had.daysColdEnough(), needed, figure.get(), isOver);
        boolean isShort = isOver && had.daysColdEnough() < needed;
        return suspect(
                Cause.COLD_SHORT, isShort ? List.of(weeks) : List.of(), Suspect.Verdict.NOTHING_SPEAKS_FOR, weeks);
    }

    private Suspect warmSpell() {
        Optional<Temperature> most = pot.figures()
                .find(FigureName.COLD_BAND)
                .map(band -> Temperature.ofCelsius(band.range().high()));
        if (most.isEmpty() || !pot.figures().needsCold()) {
            return suspect(Cause.WARM_SPELL, List.of(), Suspect.Verdict.NOTHING_SPEAKS_FOR, new Clue.NeedsNoCold());
        }
        List<StoodThrough> over = readings.stream()
                .filter(reading -> reading.between().high().milli() > most.get().milli())
                .toList();
        List<Clue> clues = StoodThrough.joined(over, false).stream()
                .<Clue>map(reading -> new Clue.TooWarm(reading, most.get()))
                .toList();
        return read(Cause.WARM_SPELL, clues, most.get(), false);
    }

    private Suspect frozen() {
        List<StoodThrough> under = readings.stream()
                .filter(reading -> reading.between().low().milli() < FREEZING.milli())
                .toList();
        List<Clue> clues = new ArrayList<>();
        StoodThrough.joined(under, true).forEach(reading -> clues.add(new Clue.TooCold(reading)));
        clues.addAll(notes(FROST));
        clues.addAll(
                found(findings -> findings.troubles().contains(Trouble.FROST) || mentions(findings.note(), FROST)));
        return read(Cause.FROZEN, clues, FREEZING, true);
    }

    /** A cause that readings would show. */
    private Suspect read(Cause cause, List<Clue> clues, Temperature limit, boolean isLow) {
        Optional<LocalDate> since =
                readings.stream().map(reading -> reading.days().start()).min(Comparator.naturalOrder());
        return since.map(first -> suspect(
                        cause, clues, Suspect.Verdict.NOTHING_SPEAKS_FOR, new Clue.ReadBetween(limit, isLow, first)))
                .orElseGet(
                        () -> suspect(cause, clues, Suspect.Verdict.CANNOT_BE_TOLD, new Clue.NeverRead(places(cold))));
    }

    private Suspect tooWetOrDry() {
        List<Clue> clues = found(Findings::isTooDryOrWet);
        Optional<Clue> unchecked = cold.stream()
                .reduce((earlier, later) -> later)
                .filter(last -> !isChecked(last))
                .flatMap(last -> last.place()
                        .map(place -> new Clue.NotChecked(place, last.days().start())));
        int moist = (int)
                checks.stream().filter(event -> findings(event).tellsOfWater()).count();
        Suspect.Verdict otherwise = unchecked.isPresent() || moist == 0
                ? Suspect.Verdict.CANNOT_BE_TOLD
                : Suspect.Verdict.NOTHING_SPEAKS_FOR;
        return suspect(Cause.TOO_WET_OR_DRY, clues, otherwise, unchecked.orElse(new Clue.FoundMoist(moist)));
    }

    private boolean isChecked(Phase phase) {
        return checks.stream()
                .filter(event -> phase.days().contains(event.day().likely()))
                .anyMatch(event -> findings(event).tellsOfWater());
    }

    private Suspect fruitNear() {
        List<Clue> clues = new ArrayList<>();
        places(phases).stream()
                .filter(place -> journal.places().get(place).hazards().contains(Hazard.FRUIT))
                .forEach(place -> clues.add(new Clue.Beside(place)));
        clues.addAll(notes(FRUIT));
        clues.addAll(found(findings -> mentions(findings.note(), FRUIT)));
        return suspect(
                Cause.FRUIT_NEAR, clues, Suspect.Verdict.NOTHING_SPEAKS_FOR, new Clue.NothingNoted(places(phases)));
    }

    private Suspect rushed() {
        Optional<FigureInForce> figure = pot.figures().find(FigureName.COOL_ROOM);
        Optional<LocalDate> in = broughtIn();
        if (in.isEmpty() || figure.isEmpty()) {
            return suspect(Cause.RUSHED, List.of(), Suspect.Verdict.NOTHING_SPEAKS_FOR, new Clue.NeverBroughtIn());
        }
        int days = phases.stream()
                .filter(phase -> phase.stage() == Stage.COOL_ROOM
                        && !phase.days().start().isBefore(in.get()))
                .mapToInt(phase -> (int) phase.days().days())
                .sum();
        boolean warmed = phases.stream().anyMatch(phase -> phase.stage() == Stage.WARM_ROOM);
        Clue had = new Clue.CoolRoom(in.get(), days, figure.get());
        boolean tooFew = warmed && days < figure.get().range().low();
        return suspect(Cause.RUSHED, tooFew ? List.of(had) : List.of(), Suspect.Verdict.NOTHING_SPEAKS_FOR, had);
    }

    /** The day it was carried from the cold to a room. */
    private Optional<LocalDate> broughtIn() {
        return cold.stream()
                .reduce((earlier, later) -> later)
                .map(last -> last.days().endExclusive())
                .filter(out ->
                        phases.stream().anyMatch(phase -> phase.days().start().equals(out)));
    }

    private List<Clue> notes(Set<String> words) {
        Stream<Event> own = journal.history(pot.life().pot().id()).stream();
        Stream<Event> there = phases.stream()
                .flatMap(phase -> phase.place().stream()
                        .flatMap(place -> journal.history(new Subject.OfPlace(place)).stream())
                        .filter(event -> phase.days().contains(event.day().likely())));
        return Stream.concat(own, there)
                .sorted(Event.BY_HISTORY)
                .flatMap(event -> note(event, words).stream())
                .toList();
    }

    private static Optional<Clue> note(Event event, Set<String> words) {
        return event.what() instanceof Happening.Jotted jotted && mentions(jotted.text(), words)
                ? Optional.of(new Clue.Jotted(event.day().likely(), jotted.text()))
                : Optional.empty();
    }

    /** Whether a word of the text begins with one of these. */
    private static boolean mentions(String text, Set<String> words) {
        return Stream.of(text.toLowerCase(Locale.ROOT).split("[^a-z]+"))
                .anyMatch(word -> words.stream().anyMatch(word::startsWith));
    }

    private List<Clue> found(Predicate<Findings> telling) {
        return checks.stream()
                .filter(event -> telling.test(findings(event)))
                .<Clue>map(event -> new Clue.Found(event.day().likely(), findings(event)))
                .toList();
    }

    private static Findings findings(Event check) {
        return ((Happening.Checked) check.what()).findings();
    }

    private static List<Id<Place>> places(List<Phase> stood) {
        return stood.stream()
                .flatMap(phase -> phase.place().stream())
                .distinct()
                .toList();
    }
}
