// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import sillbook.model.Band;
import sillbook.model.Day;
import sillbook.model.Findings.Growth;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot.Planting;
import sillbook.model.Stage;
import sillbook.reckon.dates.DayCount;
import sillbook.season.Years.Year;

/** One winter of a pot, as what its plants did in their own time, and under what, is read from it. */
record Course(PotLife life, Year year, ColdReading reading) {
    private static final double DAYS_IN_WEEK = 7;
    private static final double DAYS_IN_MONTH = 30;

    /** Longer in the dry does not count (Cornell's trials of dry and potted cold, as in {@code reckon.dates}). */
    private static final int MOST_DRY_DAYS = 70;

    /** The winter a pot is in, or was in last. */
    static Course present(PotLife life, ColdReading reading) {
        return new Course(life, life.present(), reading);
    }

    /** The day from which its plants' days are counted: brought in for good; of kinds without cold, potted or woken. */
    Optional<Day> begun(boolean needsCold) {
        return needsCold ? leftCold() : year.began().or(life::potted);
    }

    private Optional<Day> leftCold() {
        List<Phase> phases = phases();
        for (int i = phases.size() - 1; i > 0; i--) {
            Phase after = phases.get(i);
            if (after.stage() != Stage.COLD && phases.get(i - 1).stage() == Stage.COLD) {
                return Optional.of(Day.on(after.days().start()))
                        .filter(day -> !life.uncertain().contains(after.stage()));
            }
        }
        return Optional.empty();
    }

    private List<Phase> phases() {
        return life.phases(year);
    }

    /** The day a span of its plants ended; only days that are exactly known. */
    Optional<Day> reached(PlantSpan span, Bloom.Points points) {
        Optional<Day> day = switch (span) {
            case TO_BUDS -> sign(Growth.BUDS);
            case TO_COLOUR -> sign(Growth.COLOUR);
            case TO_FIRST_FLOWER -> points.firstFlower();
            case TO_FULL_BLOOM -> points.fullBloom();
            case IN_BLOOM -> points.pastBloom();
        };
        return day.filter(Day::isExact);
    }

    private Optional<Day> sign(Growth sign) {
        return Optional.ofNullable(year.signs().get(sign));
    }

    /** Days of cold before it was brought in, or so far, with those that a planting had dry. */
    int daysOfCold(Planting planting) {
        int potted = ColdCount.of(reading.stretches(phases(Stage.COLD), life.potted(), life.seen()))
                .daysColdEnough();
        int dry = year.began().isPresent()
                ? 0
                : reading.dry(planting, life.potted()).days();
        return potted + Math.min(dry, MOST_DRY_DAYS);
    }

    /** What a length that began on a day was under. */
    Conditions under(PlantSpan span, Optional<Integer> daysOfCold, Optional<LocalDate> from) {
        return Conditions.of(
                daysOfCold.map(days -> days / DAYS_IN_WEEK), room(span).flatMap(this::usual), from.map(this::months));
    }

    private double months(LocalDate day) {
        LocalDate start = reading.journal()
                .seasonOf(day)
                .firstDay(reading.journal().settings().seasonStart());
        return ChronoUnit.DAYS.between(start, day) / DAYS_IN_MONTH;
    }

    /** Where its flowers stood, or for what comes before them the room they came in; the cool room where it saw no other. */
    private Optional<Id<Place>> room(PlantSpan span) {
        Optional<Id<Place>> inBloom = span == PlantSpan.IN_BLOOM ? longestAt(Stage.IN_BLOOM) : Optional.empty();
        return inBloom.or(() -> longestAt(Stage.WARM_ROOM))
                .or(() -> year.bloom().hasBegun() ? longestAt(Stage.COOL_ROOM) : Optional.empty());
    }

    private Optional<Id<Place>> longestAt(Stage stage) {
        return Phase.longestAt(phases(stage));
    }

    private List<Phase> phases(Stage stage) {
        return phases().stream().filter(phase -> phase.stage() == stage).toList();
    }

    private Optional<Double> usual(Id<Place> place) {
        return reading.journal().places().find(place).flatMap(Place::usual).map(Course::middle);
    }

    private static double middle(Band band) {
        return (band.low().celsius() + band.high().celsius()) / 2;
    }

    /**
     * What the plants of a pot are under, or will be as far as that can be said: a pot in the cold will have had its usual
     * weeks when it is brought in, and in which room it will flower nobody knows.
     *
     * @param need the cold of its kind; empty where it needs none
     */
    Conditions expected(PlantSpan span, Planting planting, Optional<DayCount> need, int daysToFlower) {
        int had = daysOfCold(planting);
        Optional<LocalDate> in = begun(need.isPresent()).map(Day::likely);
        boolean isInCold = in.isEmpty() && life.stage() == Stage.COLD;
        Optional<Integer> wanted = isInCold ? need.map(cold -> Math.max(had, cold.typical())) : Optional.empty();
        Optional<Integer> cold = need.flatMap(any -> in.map(day -> had).or(() -> wanted));
        Optional<LocalDate> from =
                in.or(() -> wanted.map(days -> reading.today().plusDays(days - had)));
        Optional<LocalDate> begins = span == PlantSpan.IN_BLOOM
                ? year.bloom()
                        .pot()
                        .firstFlower()
                        .map(Day::likely)
                        .or(() -> from.map(day -> day.plusDays(daysToFlower)))
                : from;
        return under(span, cold, begins);
    }
}
