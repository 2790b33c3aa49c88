// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.OwnFigure.Range;
import sillbook.reckon.stages.DayChances;
import sillbook.reckon.stages.Regression;
import sillbook.reckon.stages.StudentT;

/**
 * How long it takes under conditions, by what was learnt.
 *
 * @param here what is known of them; the others are taken to be as usual
 */
public record LengthGiven(LearntLength length, Conditions here) {

    /**
     * What a condition does to the length.
     *
     * @param here empty where it is not known of this pot
     * @param usual empty where it is not known of any other
     * @param days longer, likeliest, than under what is usual; shorter below 0
     */
    public record Part(Condition condition, Optional<Double> here, Optional<Double> usual, double days) {}

    /** How long it takes next time, in days, by the own lengths alone. */
    public StudentT asLearnt() {
        return length.belief().next(length.off(here));
    }

    /** The same, as far as it is believed: the windows of all learnt lengths are made of this. */
    public StudentT next() {
        return asLearnt().widened(length.widening().by());
    }

    /** The days that one time in ten are not reached, the middle, and those that one time in ten are passed. */
    public DayChances.DayWindow window() {
        return chances().window();
    }

    /** How likely each number of days is; none takes less than nothing. */
    DayChances chances() {
        return length.chances(here);
    }

    /** What comes of it, in the unit of the figure. */
    public Range range() {
        DayChances.DayWindow window = window();
        return length.inUnit(window.earliest(), window.likely(), window.latest());
    }

    /** Every condition that is known of this pot, or of those it was learnt from. */
    public List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        List<Condition> told = length.told();
        List<Double> off = length.off(here);
        Regression belief = length.belief();
        Conditions usual = length.usual();
        for (Condition condition : Condition.values()) {
            int at = told.indexOf(condition);
            double days = at < 0 ? 0 : belief.slope(at) * off.get(at);
            if (at >= 0 || here.find(condition).isPresent()) {
                parts.add(new Part(condition, here.find(condition), usual.find(condition), days));
            }
        }
        return parts;
    }
}
