// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.season.Years.Year;

/**
 * The history of one pot, read in order up to a day.
 *
 * @param stands where it stands; empty when nobody wrote it, or it is done
 * @param phases the stages and places so far, the last one reaching to the end of that day
 * @param seen what was seen, and {@code bloom} what flowered, in the present one of its {@code years}
 * @param display the display of several pots that it is part of
 * @param uncertain the stages whose first day is only about known; {@code WAITING} stands for the potting
 */
public record PotLife(
        Pot pot,
        Standing standing,
        Optional<Stay> stands,
        List<Phase> phases,
        Optional<Day> potted,
        ColdTime cold,
        Seen seen,
        Bloom bloom,
        Years years,
        List<Noted<Care>> cares,
        List<Noted<String>> notes,
        Answers answers,
        Optional<Noted<String>> display,
        Set<Stage> uncertain) {

    private static final Set<Care> STAYS_ON = EnumSet.of(Care.HOODED, Care.STAKED, Care.INTO_OUTER_POT);

    public PotLife {
        phases = List.copyOf(phases);
        cares = List.copyOf(cares);
        notes = List.copyOf(notes);
        uncertain = Set.copyOf(uncertain);
    }

    /** The life of a pot up to a day; what is written for later days is not read. */
    public static PotLife of(Journal journal, Pot pot, LocalDate today) {
        return History.read(journal, pot, today);
    }

    /** Its winters, the present one, or only one, last; that has no end yet. */
    public List<Year> winters() {
        List<Year> winters = new ArrayList<>(years.past());
        winters.add(present());
        return winters;
    }

    /**
     * The cold of one of its winters: by thermometers where they were read, else by the cold days of its places.
     *
     * @param today up to which, not with it, it is counted
     */
    public ColdCount cold(Journal journal, Year winter, LocalDate today) {
        if (years.past().isEmpty()) {
            return cold.count();
        }
        Seen seenThen = winter.equals(present()) ? seen : Seen.NOTHING;
        return ColdCount.of(new ColdReading(journal, today).stretches(phases(winter), potted, seenThen));
    }

    /** The phases that began in one of its winters, as far as they have happened. */
    public List<Phase> phases(Year winter) {
        return phases.stream()
                .filter(phase ->
                        phase.happened() && winter.contains(phase.days().start()))
                .toList();
    }

    Year present() {
        return new Year(years.woken(), LocalDate.MAX, bloom, seen.signs());
    }

    public Stage stage() {
        return standing.stage();
    }

    /** The care that is still on it: a hood that was not taken off, stakes, an outer pot; each as last put on. */
    public List<Noted<Care>> dress() {
        Map<Care, Noted<Care>> worn = new EnumMap<>(Care.class);
        for (Noted<Care> care : cares) {
            if (care.value() == Care.UNHOODED) {
                worn.remove(Care.HOODED);
            } else if (STAYS_ON.contains(care.value())) {
                worn.put(care.value(), care);
            }
        }
        return stage() == Stage.DONE ? List.of() : List.copyOf(worn.values());
    }

    /** What was done to it in the present winter. */
    Stream<Noted<Care>> caresThisYear() {
        return cares.stream().filter(care -> years.isPresent(care.day().likely()));
    }

    /** The last time that was done to it in the present winter. */
    Optional<Noted<Care>> last(Care care) {
        return caresThisYear().filter(done -> done.value() == care).reduce((one, later) -> later);
    }

    /** The day it was put to the rest it is still in. */
    public Optional<Day> restingSince() {
        return stage() == Stage.AFTER_BLOOM ? last(Care.RESTED).map(Noted::day) : Optional.empty();
    }

    /** Whether it was put outdoors and not brought in again. */
    boolean isOutdoors() {
        return caresThisYear()
                .map(Noted::value)
                .filter(care -> care == Care.OUTDOORS || care == Care.BROUGHT_IN || care == Care.RESTED)
                .reduce((one, later) -> later)
                .filter(Care.OUTDOORS::equals)
                .isPresent();
    }

    /** Whether its winter ended in failure. */
    public boolean isFailed() {
        return standing instanceof Standing.Done done && done.end() == End.FAILED;
    }

    /** Potted, or standing somewhere as if it were, and not done. */
    public boolean isGrowing() {
        return !(standing instanceof Standing.Waiting) && stage() != Stage.DONE;
    }
}
