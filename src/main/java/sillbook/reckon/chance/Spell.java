// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.chance;

import sillbook.reckon.stages.DayChances;
import sillbook.reckon.stages.ThreePoints;

/**
 * A pot's days at a stage, as in bloom, or from the first flower open to full bloom: on which day it gets there, and when it is beyond.
 *
 * @param begins its first day there
 * @param ends the first day on which it is no longer
 */
public record Spell(DayChances begins, DayChances ends) {

    /**
     * How long it lasts has nothing to do with when it begins.
     *
     * @param lasts in days; less than one is one
     */
    public static Spell of(DayChances begins, DayChances lasts) {
        return new Spell(begins, begins.plus(lasts.notBefore(1)));
    }

    /** The days there are for a length of which the least, the usual and the most are known, as PERT reads them; a day that is known where these are the same. */
    public static DayChances days(ThreePoints length) {
        return length.low() == length.high()
                ? DayChances.on((int) Math.floor(length.low() + 0.5))
                : DayChances.of(length.beta());
    }

    /** The same of a pot that comes in so many days later. */
    public Spell later(int days) {
        return new Spell(begins.later(days), ends.later(days));
    }

    /** The chance that the pot is at the stage on a day: it has begun by then, and not ended. */
    public double chanceOn(int day) {
        return Math.max(0, begins.chanceBy(day) - ends.chanceBy(day));
    }

    /** The same for each of so many days from one on. */
    double[] chancesFrom(int first, int days) {
        double[] chances = new double[days];
        double isThere = chanceOn(first - 1);
        for (int i = 0; i < days; i++) {
            isThere += begins.chanceOn(first + i) - ends.chanceOn(first + i);
            chances[i] = Math.max(0, isThere);
        }
        return chances;
    }
}
