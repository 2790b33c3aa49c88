// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.chance;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * How likely it is on each day that at least one pot is in bloom.
 *
 * @param first the first of the days
 * @param chances one for each day from then on, 0 to 1
 */
public record Covering(int first, List<Double> chances) {
    public Covering {
        chances = List.copyOf(chances);
    }

    /**
     * Of so many days; each pot is looked at once a day.
     *
     * @param pots when each is in bloom
     * @param days at least 0
     */
    public static Covering of(List<Spell> pots, int first, int days) {
        double[] none = new double[days];
        Arrays.fill(none, 1);
        for (Spell pot : pots) {
            double[] chances = pot.chancesFrom(first, days);
            for (int i = 0; i < days; i++) {
                none[i] *= 1 - chances[i];
            }
        }
        return new Covering(
                first, DoubleStream.of(none).map(chance -> 1 - chance).boxed().toList());
    }

    /** The chance on one of the days. */
    public double on(int day) {
        return chances.get(day - first);
    }

    /** How many of the days are without anything in bloom, on the average of all winters like this. */
    public double bareDays() {
        return chances.stream().mapToDouble(chance -> 1 - chance).sum();
    }
}
