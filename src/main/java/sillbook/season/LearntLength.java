// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.handbook.Unit;
import sillbook.model.OwnFigure.Range;
import sillbook.model.OwnFigure.Scope;
import sillbook.reckon.stages.DayChances;
import sillbook.reckon.stages.NormalInverseGamma;
import sillbook.reckon.stages.Outliers;
import sillbook.reckon.stages.Regression;
import sillbook.reckon.stages.ThreePoints;
import sillbook.reckon.stages.Widening;

/** A length learnt from own pots: what was published moved by how long it took so far, and by what each was under. */
public final class LearntLength {
    /** From so many own lengths on what was learnt holds; a judgement of ours. */
    static final int LEAST = 3;

    private static final double DAYS_IN_WEEK = 7;

    /** A length published without a range is taken to be a day less or more. */
    private static final double NARROWEST = 1;

    private final Scope scope;
    private final PlantSpan span;
    private final FigureInForce published;
    private final List<OwnLength> own;
    private final List<OwnLength> shortOfCold;
    private final Widening widening;
    private final Conditions usual;
    private final List<Condition> told;
    private final Regression belief;

    /** Worked out once for each of the conditions it is asked for: pots made together are under the same. */
    private final Map<Conditions, DayChances> chances = new ConcurrentHashMap<>();

    /**
     * Learns it.
     *
     * @param scope the variety, or the kind, of the pots
     * @param published what it grew from, in the unit of the figure
     * @param own at least {@link #LEAST}, the oldest first
     * @param shortOfCold those that were left out, because they had less cold than they need
     * @param widening what the windows before teach of those to come
     */
    LearntLength(
            Scope scope,
            PlantSpan span,
            FigureInForce published,
            List<OwnLength> own,
            List<OwnLength> shortOfCold,
            Widening widening) {
        if (own.size() < LEAST) {
            throw new IllegalArgumentException("learnt from too few: " + own);
        }
        this.scope = scope;
        this.span = span;
        this.published = published;
        this.own = List.copyOf(own);
        this.shortOfCold = List.copyOf(shortOfCold);
        this.widening = widening;
        this.usual = Conditions.mean(own.stream().map(OwnLength::under).toList());
        this.told = Stream.of(Condition.values())
                .filter(condition -> usual.find(condition).isPresent())
                .toList();
        this.belief = untaught().after(cases());
    }

    /** The variety, or the kind, of the pots. */
    public Scope scope() {
        return scope;
    }

    public PlantSpan span() {
        return span;
    }

    /** What it grew from, in the unit of the figure. */
    public FigureInForce published() {
        return published;
    }

    /** What it was learnt from, the oldest first. */
    public List<OwnLength> own() {
        return own;
    }

    /** Those that were left out, because they had less cold than they need. */
    public List<OwnLength> shortOfCold() {
        return shortOfCold;
    }

    /** What the windows before teach of those to come. */
    public Widening widening() {
        return widening;
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
        return NormalInverseGamma.before(span.believed(points(published)));
    }

    /** The conditions of the own lengths on the average, of those of which it is known. */
    public Conditions usual() {
        return usual;
    }

    /** The conditions that any of the own lengths tells, in order. */
    List<Condition> told() {
        return told;
    }

    /** What is believed of the length and its conditions, each counted from what is usual. */
    Regression belief() {
        return belief;
    }

    private Regression untaught() {
        NormalInverseGamma before = before();
        double length = Math.max(1, before.centre());
        List<Double> slopes =
                told.stream().map(condition -> length * condition.share()).toList();
        return Regression.before(before, slopes);
    }

    private List<Regression.Case> cases() {
        return own.stream()
                .map(one -> new Regression.Case(off(one.under()), one.days()))
                .toList();
    }

    /** How far conditions are from what is usual; 0 where they are not known. */
    List<Double> off(Conditions under) {
        return told.stream()
                .map(condition -> under.find(condition)
                        .flatMap(here -> usual.find(condition).map(there -> here - there))
                        .orElse(0.0))
                .toList();
    }

    /** Under the usual conditions. */
    public LengthGiven asUsual() {
        return given(Conditions.UNKNOWN);
    }

    /** Under these. */
    public LengthGiven given(Conditions here) {
        return new LengthGiven(this, here);
    }

    /** How likely each number of days is under these; none takes less than nothing. */
    DayChances chances(Conditions here) {
        return chances.computeIfAbsent(
                here, under -> DayChances.of(given(under).next()).notBefore(0));
    }

    /** Those of its own lengths that stand far from all the others. */
    public List<OwnLength> outliers() {
        return Outliers.among(cases(), untaught()).stream().map(own::get).toList();
    }

    /** Days in the unit of the figure; of a sign, which has none, days. */
    Range inUnit(double earliest, double likely, double latest) {
        double perUnit = span.figure().map(LearntLength::daysPerUnit).orElse(1.0);
        return new Range(earliest / perUnit, likely / perUnit, latest / perUnit);
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
