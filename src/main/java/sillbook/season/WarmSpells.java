// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Band;
import sillbook.model.DayRead;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Stage;
import sillbook.model.Temperature;
import sillbook.reckon.cold.ColdWeight;
import sillbook.reckon.dates.DaySpan;

/**
 * Finds days on which a place was too warm for cold, for more than a day on end. Cold once had is reported not to be undone in bulbs (Acta
 * Horticulturae 47, 1975), so a spell is warned of and never taken off. Buds are said to dry up after warm storage (Horticulture magazine,
 * Flower Blasting); that a day is what matters, and that stems may stay short, is assumed.
 *
 * <p>The sum of a day does not tell at which hours it was warm. Warm hours of two neighbouring days are taken to join; of a longer spell
 * all days but the first and the last are known to have been warm throughout.
 */
record WarmSpells(ReadDays read) {
    private static final Temperature BOUND = Temperature.ofCelsius(ColdWeight.USUAL.gone());
    private static final double LONGEST_UNSAID = 24;

    /** Hours of a day by which its sum may be off, being added up from many. */
    private static final double OFF = 0.01;

    /** Warm hours on days in a row. */
    private record Spell(DaySpan days, double hours) {
        boolean isLong() {
            return days.days() > 1 && hours > LONGEST_UNSAID + OFF;
        }
    }

    /** The longest while a pot that needs cold had it, from the first day that was cold. */
    static Optional<Concern> of(Journal journal, Foretold pot) {
        return pot.life()
                .cold()
                .began()
                .filter(began -> pot.figures().needsCold())
                .map(began -> DaySpan.ofInclusive(began, pot.today()))
                .flatMap(cold -> stoodAt(pot.life(), cold).entrySet().stream()
                        .flatMap(stay -> new WarmSpells(ReadDays.of(journal, stay.getKey(), pot.today()))
                                .longest(stay.getKey(), stay.getValue()).stream())
                        .max(Comparator.comparingLong(spell -> spell.days().days())));
    }

    /** The days at each place of its cold. */
    private static Map<Id<Place>, List<DaySpan>> stoodAt(PotLife life, DaySpan cold) {
        Map<Id<Place>, List<DaySpan>> days = new LinkedHashMap<>();
        life.phases().stream()
                .filter(phase -> phase.stage() == Stage.COLD)
                .forEach(phase -> phase.place()
                        .ifPresent(place -> phase.days()
                                .intersection(cold)
                                .ifPresent(stay -> days.computeIfAbsent(place, there -> new ArrayList<>())
                                        .add(stay))));
        return days;
    }

    private Optional<Concern.WarmSpell> longest(Id<Place> place, List<DaySpan> stays) {
        return DaySpan.joined(stays).stream()
                .flatMap(days -> read.known(days).stream())
                .flatMap(this::spells)
                .max(Comparator.comparingDouble(Spell::hours))
                .map(spell -> new Concern.WarmSpell(place, spell.days, BOUND, highest(spell.days)));
    }

    private Stream<Spell> spells(DaySpan known) {
        return known.start()
                .datesUntil(known.endExclusive())
                .filter(day -> warmHours(day) > 0)
                .filter(day -> day.equals(known.start()) || !isWarmThroughout(day.minusDays(1)))
                .map(day -> from(day, known))
                .filter(Spell::isLong);
    }

    private Spell from(LocalDate first, DaySpan known) {
        double hours = warmHours(first);
        LocalDate end = first.plusDays(1);
        boolean goesOn = true;
        while (goesOn && known.contains(end) && warmHours(end) > 0) {
            hours += warmHours(end);
            goesOn = isWarmThroughout(end);
            end = end.plusDays(1);
        }
        return new Spell(DaySpan.of(first, end), hours);
    }

    private double warmHours(LocalDate day) {
        return read.sum(day)
                .map(DayRead::warm)
                .or(() -> read.span(day)
                        .filter(span -> span.between().low().milli() > BOUND.milli())
                        .map(span -> read.hours(day)))
                .orElse(0.0);
    }

    private boolean isWarmThroughout(LocalDate day) {
        return warmHours(day) > read.hours(day) - OFF;
    }

    private Temperature highest(DaySpan days) {
        return days.start()
                .datesUntil(days.endExclusive())
                .flatMap(day -> read.between(day).stream())
                .map(Band::high)
                .max(Comparator.comparing(Temperature::milli))
                .orElseThrow();
    }
}
