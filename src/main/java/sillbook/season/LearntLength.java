// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.List;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.handbook.Unit;
import sillbook.model.OwnFigure.Range;
import sillbook.model.OwnFigure.Scope;
import sillbook.reckon.stages.DayChances;
import sillbook.reckon.stages.NormalInverseGamma;
import sillbook.reckon.stages.Outliers;
import sillbook.reckon.stages.Sample;
import sillbook.reckon.stages.StudentT;
import sillbook.reckon.stages.ThreePoints;
import sillbook.reckon.stages.Widening;

/**
 * A length learnt from own pots: what was published moved by how long it took so far.
 *
 * @param scope the variety, or the kind, of the pots
 * @param published what it grew from, in the unit of the figure
 * @param own at least {@link #LEAST}, the oldest first
 * @param widening what the windows before teach of those to come
 */
public record LearntLength(Scope scope, FigureInForce published, List<OwnLength> own, Widening widening) {
    /** From so many own lengths on what was learnt holds; a judgement of ours. */
    static final int LEAST = 3;

    private static final double DAYS_IN_WEEK = 7;

    /** A length published without a range is taken to be a day less or more. */
    private static final double NARROWEST = 1;

    public LearntLength {
        own = List.copyOf(own);
        if (own.size() < LEAST) {
            throw new IllegalArgumentException("learnt from too few: " + own);
        }
    }

    public FigureName figure() {
        return published.name();
    }

    /** How many pots it was learnt from. */
    public int pots() {
        return (int) own.stream()
                .flatMap(length -> length.pots().stream())
                .distinct()
                .count();
    }

    /** What was believed before, in days. */
    public NormalInverseGamma before() {
        return NormalInverseGamma.before(points(published));
    }

    /** How long it takes next time, in days, by the own lengths alone. */
    public StudentT asLearnt() {
        return before().after(Sample.of(days())).next();
    }

    /** The same, as far as it is believed: the windows of all learnt lengths are made of this. */
    public StudentT next() {
        return asLearnt().widened(widening.by());
    }

    /** The days that one time in ten are not reached, the middle, and those that one time in ten are passed. */
    public DayChances.DayWindow window() {
        return chances().window();
    }

    /** How likely each number of days is; none takes less than nothing. */
    DayChances chances() {
        return DayChances.of(next()).notBefore(0);
    }

    /** Those of its own lengths that stand far from all the others. */
    public List<OwnLength> outliers() {
        return Outliers.among(days(), before()).stream().map(own::get).toList();
    }

    private List<Double> days() {
        return own.stream().map(OwnLength::days).toList();
    }

    /** What comes of it, in the unit of the figure. */
    public Range range() {
        DayChances.DayWindow window = window();
        double perUnit = daysPerUnit(figure());
        return new Range(window.earliest() / perUnit, window.likely() / perUnit, window.latest() / perUnit);
    }

    /** A figure in days, as three points with room between them. */
    static ThreePoints points(FigureInForce figure) {
        double perUnit = daysPerUnit(figure.name());
        Range range = figure.range();
        double room = range.low() == range.high() ? NARROWEST : 0;
        return new ThreePoints(
                Math.max(0, range.low() * perUnit - room), range.typical() * perUnit, range.high() * perUnit + room);
    }

    private static double daysPerUnit(FigureName name) {
        return name.unit() == Unit.WEEKS ? DAYS_IN_WEEK : 1;
    }
}
