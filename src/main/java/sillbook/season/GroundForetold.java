// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import sillbook.model.Band;
import sillbook.model.Length;
import sillbook.model.Trench;
import sillbook.model.Trench.Cover;
import sillbook.reckon.dates.DaySpan;
import sillbook.reckon.soil.FrostChance;
import sillbook.reckon.soil.Ground;
import sillbook.reckon.soil.Mulch;
import sillbook.reckon.soil.YearlyWave;

/**
 * How cold it gets where pots stand buried, over one winter, by the year's wave: that of the air, held back by the cover, damped and late at their depth. A thermometer
 * in the ground beats it.
 *
 * @param winter the twelve months from the first day of the season on
 * @param band the temperatures the pots should have
 * @param spells how far the mean of ten days lies about the wave of the air, in C, as a standard deviation
 * @param surface of the ground, under its cover where one is laid
 * @param bare at the pots, while the ground lies bare
 * @param covered at the pots, under the cover; the same where none is laid
 * @param chance that it freezes at the pots in a winter, 0 to 1
 * @param otherwise the same with 10 cm of straw on ground that is bare, and bare where something is laid
 * @param safeDepth in m, from which on it freezes in one winter of twenty at most; 0 where it does at any depth, endless where it does at none
 */
public record GroundForetold(
        Trench trench,
        DaySpan winter,
        Band band,
        double spells,
        WinterWave air,
        WinterWave surface,
        WinterWave bare,
        WinterWave covered,
        double chance,
        double otherwise,
        double safeDepth) {
    /** Pots go in when a thermometer at their depth reads so, or less (common practice). */
    public static final double POTS_IN = 7;

    /** What bare ground is asked about: how far straw would help. */
    public static final Cover STRAW = new Cover(Cover.Material.STRAW, Length.ofCentimetres(10), Optional.empty());

    /** How long the ground takes to warm up again under a cover newly laid, in days; a judgement of ours. */
    private static final int SETTLING = 14;

    private static final double CM = 100;

    /**
     * Of a winter.
     *
     * @param air over the ground
     * @param firstDay of the season
     */
    static GroundForetold of(Trench trench, YearlyWave air, Band band, LocalDate firstDay) {
        Ground ground = SoilHeat.of(trench.soil()).ground();
        double depth = trench.depth().centimetres() / CM;
        double spells = trench.spells().orElse(FrostChance.USUAL_SPELL_SD);
        YearlyWave under = under(air, trench, trench.cover());
        FrostChance frost = frost(air, trench, trench.cover(), spells);
        Optional<Cover> other = trench.cover().isPresent() ? Optional.empty() : Optional.of(STRAW);
        WinterWave winter = WinterWave.from(firstDay, air);
        return new GroundForetold(
                trench,
                new DaySpan(firstDay, firstDay.plusYears(1)),
                band,
                spells,
                winter,
                winter.later(under),
                winter.later(ground.at(depth, air)),
                winter.later(ground.at(depth, under)),
                frost.at(depth),
                frost(air, trench, other, spells).at(depth),
                frost.safeDepth());
    }

    private static YearlyWave under(YearlyWave air, Trench trench, Optional<Cover> cover) {
        SoilHeat soil = SoilHeat.of(trench.soil());
        return cover.map(CoverHeat::mulch)
                .map(mulch -> mulch.under(air, soil.ground(), soil.conductivity()))
                .orElse(air);
    }

    private static FrostChance frost(YearlyWave air, Trench trench, Optional<Cover> cover, double spells) {
        SoilHeat soil = SoilHeat.of(trench.soil());
        double left = cover.map(CoverHeat::mulch)
                .map((Mulch mulch) -> mulch.left(soil.ground(), soil.conductivity(), FrostChance.SPELL))
                .orElse(1.0);
        return new FrostChance(under(air, trench, cover), soil.ground(), spells * left);
    }

    /** The day on which bare ground is down to what pots may go into; empty where it never gets so cold. */
    public Optional<LocalDate> potsIn() {
        return bare.upTo(POTS_IN).map(DaySpan::start);
    }

    /** The day from which on bare ground freezes at its surface, so that it is dug before; empty where it stays open. */
    public Optional<LocalDate> digBefore() {
        return air.upTo(0).map(DaySpan::start);
    }

    /**
     * The day of the first hard frost, by which the ground is covered: when a spell of one standard deviation brings the mean of ten days to freezing. Empty where
     * that does not come.
     */
    public Optional<LocalDate> firstFrost() {
        return air.upTo(spells).map(DaySpan::start);
    }

    /** The days on which the ground is frozen at its surface, under its cover, so that no pot can be lifted. */
    public Optional<DaySpan> shut() {
        return surface.upTo(0);
    }

    /** The days on which it is frozen at the pots. */
    public Optional<DaySpan> frozen() {
        return covered.upTo(0);
    }

    /** The days on which the pots have the temperatures they should, from when bare ground is cold enough. */
    public List<DaySpan> inBand() {
        double low = band.low().celsius();
        double high = band.high().celsius();
        List<DaySpan> under = covered.between(low, high);
        Optional<LocalDate> from = bare.upTo(high).map(DaySpan::start);
        if (under.isEmpty() || from.isEmpty()) {
            return under;
        }
        DaySpan first = under.get(0);
        return first.start().isAfter(from.get()) && first.days() < YearlyWave.YEAR
                ? withFirst(new DaySpan(from.get(), first.endExclusive()), under)
                : under;
    }

    private static List<DaySpan> withFirst(DaySpan first, List<DaySpan> spans) {
        return Stream.concat(Stream.of(first), spans.stream().skip(1)).toList();
    }

    /** How cold it is at the pots on a day: as bare ground up to the first hard frost, then as it settles under its cover. */
    public double on(LocalDate day) {
        double uncovered = bare.on(day);
        return firstFrost()
                .map(laid -> ChronoUnit.DAYS.between(laid, day))
                .map(days -> Math.max(0, Math.min(1, days / (double) SETTLING)))
                .map(share -> uncovered + share * (covered.on(day) - uncovered))
                .orElse(uncovered);
    }

    /** The same, day by day. */
    public NavigableMap<LocalDate, Double> days(DaySpan days) {
        NavigableMap<LocalDate, Double> curve = new TreeMap<>();
        days.start().datesUntil(days.endExclusive()).forEach(day -> curve.put(day, on(day)));
        return curve;
    }
}
