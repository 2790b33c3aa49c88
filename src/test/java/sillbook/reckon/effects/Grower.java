// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * An invented grower, of whom all is known: what every kind, variety, mix, place and winter truly does to a score, and
 * the scores that came of it. The same seed is the same grower.
 */
final class Grower {
    private static final List<String> FACTORS = List.of("kind", "variety", "mix", "place", "winter");
    private static final int[] LEVELS = {2, 6, 2, 3, 3};
    private static final int POTS = 36;

    private final double mean;
    private final double[][] truths;
    private final List<Observation> pots = new ArrayList<>();

    private Grower(double mean, double[][] truths) {
        this.mean = mean;
        this.truths = truths;
    }

    /** How far each sort of thing scatters is drawn from the prior, as the average takes it to be. */
    static Grower fromThePrior(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] sds = random.doubles(LEVELS.length + 1L)
                .map(any -> Math.abs(random.nextGaussian()))
                .toArray();
        return grow(random, sds, false);
    }

    /** How far each sort of thing scatters is fixed, and scores are whole numbers from 1 to 5. */
    static Grower rounded(long seed) {
        return grow(new SplittableRandom(seed), new double[] {.3, .5, .2, .5, .3, .6}, true);
    }

    private static Grower grow(SplittableRandom random, double[] sds, boolean isRounded) {
        double[][] truths = IntStream.range(0, LEVELS.length)
                .mapToObj(f -> random.doubles(LEVELS[f])
                        .map(any -> sds[f] * random.nextGaussian())
                        .toArray())
                .toArray(double[][]::new);
        Grower grower = new Grower(3.5, truths);
        for (int pot = 0; pot < POTS; pot++) {
            int variety = random.nextInt(LEVELS[1]);
            // Every variety has its usual place, as with real growers; one pot in three stands elsewhere.
            int place = random.nextInt(3) == 0 ? random.nextInt(LEVELS[3]) : variety % LEVELS[3];
            int[] levels = {variety % LEVELS[0], variety, random.nextInt(LEVELS[2]), place, pot * LEVELS[4] / POTS};
            grower.add(levels, sds[LEVELS.length] * random.nextGaussian(), isRounded);
        }
        return grower;
    }

    private void add(int[] levels, double luck, boolean isRounded) {
        double score = mean + luck;
        for (int f = 0; f < levels.length; f++) {
            score += truths[f][levels[f]];
        }
        double written = isRounded ? Math.max(1, Math.min(5, Math.rint(score))) : score;
        pots.add(Observation.of(
                written, IntStream.of(levels).mapToObj(String::valueOf).toList()));
    }

    Design design() {
        return Design.of(FACTORS, pots, List.of(new Nested("variety", "kind")));
    }

    /** What a variety's score truly is, all else being average. */
    double truth(String variety) {
        int level = Integer.parseInt(variety);
        return mean + truths[1][level] + truths[0][level % LEVELS[0]];
    }
}
