// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.model.Band;
import sillbook.model.DayRead;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Stage;
import sillbook.reckon.heat.BloomLength;
import sillbook.reckon.heat.SineDay;
import sillbook.reckon.heat.ThermalTime;

/**
 * What the warmth of its rooms comes to for a pot. Remarks only: no day rests on them, and a length learnt from own pots stands over them.
 *
 * @param soFar of tulips, for which alone a base is published; empty before they are brought out, or where no day of it was read
 * @param bloom how long the bloom lasts where the pot stands; empty where its length is learnt, or the room's temperature not known
 */
public record RoomWarmth(Optional<SoFar> soFar, Optional<Lasting> bloom) {
    /** Where a length of bloom without a temperature is taken to hold: the middle of a usual warm sill; a judgement of ours. */
    public static final double USUAL_ROOM = 18;

    /** By what was worked out from trials. */
    private static final double LEAST_FACTOR = 2;

    private static final double MOST_FACTOR = 3.2;
    private static final int WEEK = 7;
    private static final double MILLI = 1000;
    private static final String TULIP = "tulip";
    private static final Set<Stage> OUT = EnumSet.of(Stage.COOL_ROOM, Stage.WARM_ROOM);
    private static final Set<Stage> BLOOMS_THERE = EnumSet.of(Stage.WARM_ROOM, Stage.IN_BLOOM);

    /**
     * Warmth since it was brought out, up to its first flower.
     *
     * @param degreeDays above {@link ThermalTime#TULIP_BASE}, of the days that were read
     * @param daysRead how many those are
     * @param days how many there are in all
     */
    public record SoFar(double degreeDays, int daysRead, int days) {}

    /**
     * How long a bloom lasts at the temperature of a room.
     *
     * @param celsius of the last week read there, else the middle of what it usually has
     * @param usual the days that are usual for it
     * @param days by the usual factor for ten degrees
     * @param least by the factor that tells more or less, whichever gives less
     * @param most the same, whichever gives more
     */
    public record Lasting(
            Id<Place> place, double celsius, boolean isRead, double usual, double days, double least, double most) {
        static Lasting of(Id<Place> place, double celsius, boolean isRead, double usual) {
            double slow = new BloomLength(usual, USUAL_ROOM, LEAST_FACTOR).daysAt(celsius);
            double fast = new BloomLength(usual, USUAL_ROOM, MOST_FACTOR).daysAt(celsius);
            double days = new BloomLength(usual, USUAL_ROOM, BloomLength.USUAL_FACTOR).daysAt(celsius);
            return new Lasting(place, celsius, isRead, usual, days, Math.min(slow, fast), Math.max(slow, fast));
        }
    }

    public static RoomWarmth of(Journal journal, PotNow pot, LocalDate today) {
        return new RoomWarmth(soFar(journal, pot), lasting(journal, pot, today));
    }

    private static Optional<SoFar> soFar(Journal journal, PotNow pot) {
        boolean isTulip = pot.figures().varieties().stream()
                .allMatch(one -> one.kind().name().equals(TULIP));
        List<Phase> out = pot.life().phases().stream()
                .filter(phase -> phase.happened() && OUT.contains(phase.stage()))
                .toList();
        List<DayRead> read =
                out.stream().flatMap(phase -> read(journal, phase).stream()).toList();
        int days = (int) out.stream().mapToLong(phase -> phase.days().days()).sum();
        double sum = read.stream()
                .mapToDouble(day ->
                        new SineDay(day.lowest() / MILLI, day.highest() / MILLI).degreesAbove(ThermalTime.TULIP_BASE))
                .sum();
        return isTulip && !read.isEmpty() ? Optional.of(new SoFar(sum, read.size(), days)) : Optional.empty();
    }

    private static Collection<DayRead> read(Journal journal, Phase phase) {
        return phase.place()
                .map(place -> journal.daysRead()
                        .at(place)
                        .subMap(phase.days().start(), true, phase.days().endExclusive(), false)
                        .values())
                .orElse(List.of());
    }

    private static Optional<Lasting> lasting(Journal journal, PotNow pot, LocalDate today) {
        boolean isLearnt = pot.figures().varieties().stream()
                .anyMatch(one -> one.find(PlantSpan.IN_BLOOM).isPresent());
        Optional<FigureInForce> figure = pot.figures()
                .find(FigureName.IN_BLOOM)
                .filter(found -> !isLearnt && !found.origin().isOwn());
        boolean bloomsHere = BLOOMS_THERE.contains(pot.life().stage());
        Optional<Id<Place>> place = pot.life().stands().map(Stay::place).filter(there -> bloomsHere);
        return figure.flatMap(found -> place.flatMap(
                there -> lasting(journal, there, today, found.range().typical())));
    }

    private static Optional<Lasting> lasting(Journal journal, Id<Place> place, LocalDate today, double usual) {
        Collection<DayRead> week = journal.daysRead()
                .at(place)
                .subMap(today.minusDays(WEEK), false, today, true)
                .values();
        if (!week.isEmpty()) {
            double mean = week.stream().mapToInt(DayRead::mean).average().orElseThrow() / MILLI;
            return Optional.of(Lasting.of(place, mean, true, usual));
        }
        return journal.places()
                .get(place)
                .usual()
                .map(RoomWarmth::middle)
                .map(mean -> Lasting.of(place, mean, false, usual));
    }

    private static double middle(Band band) {
        return (band.low().celsius() + band.high().celsius()) / 2;
    }
}
