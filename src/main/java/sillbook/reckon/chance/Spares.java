// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.chance;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Pots that come in a few days apart, so that enough of them are at a stage on a wished day. Were each early or late only by itself, all of them on the best day would be the surest; but those of one day share its weather, and
 * those apart guard against it.
 *
 * @param pulls the days they come in, the earliest first; a day stands there as often as pots come in on it
 * @param chance that enough of them are
 */
public record Spares(List<Integer> pulls, double chance) {
    /** Nine chances in ten: what is called sure enough here, a judgement of ours. */
    public static final double SURE = 0.9;

    /** Pots for one day come in 3 to 5 days apart (common practice). */
    private static final int NEAREST = 3;

    private static final int FARTHEST = 5;

    private static final int MOST_DAYS = 5;

    /** How many pots may be wished for. */
    public static final int MOST_WANTED = 20;

    /** More pots than these for each one wished for are nobody's answer. */
    private static final int MOST_TIMES = 8;

    /** A chance that is met but for this is met. */
    private static final double ROUNDING = 1e-12;

    public Spares {
        pulls = List.copyOf(pulls);
    }

    /**
     * The fewest that are sure enough; of as few the surest. As many as are wished for come in on one day, if that will do; else they come in on two to five days, 3 to 5 apart, as equally many on each as can be. Empty where eight
     * times as many as wished for are not enough.
     *
     * @param spell of a pot that comes in on day 0
     * @param day the wish is for
     * @param wanted pots at the stage, 1 to {@value #MOST_WANTED}
     */
    public static Optional<Spares> fewest(Spell spell, int day, int wanted) {
        return more(List.of(), spell, day, wanted);
    }

    /**
     * The fewest beside pots that are there already, so that all together are sure enough; of as few the surest.
     *
     * @param there the chance of each of those that it is at the stage on the day
     */
    public static Optional<Spares> more(List<Double> there, Spell spell, int day, int wanted) {
        if (wanted < 1 || wanted > MOST_WANTED) {
            throw new IllegalArgumentException(wanted + " pots wanted on a day");
        }
        double[] after = after(spell);
        Several among = Several.of(wanted, there);
        int fewest = Math.max(1, wanted - there.size());
        return IntStream.rangeClosed(fewest, MOST_TIMES * wanted)
                .mapToObj(pots -> surest(after, day, among, pots, pots == wanted && there.isEmpty() ? 1 : 2))
                .filter(spares -> spares.chance >= SURE - ROUNDING)
                .findFirst();
    }

    /** The chance that a pot is at the stage so many days after it came in, from 0 to the last there is a chance of. */
    private static double[] after(Spell spell) {
        int last = spell.ends().quantile(1 - ROUNDING);
        return spell.chancesFrom(0, Math.max(1, last + 1));
    }

    /** @param fewestDays on which they come in, where there are as many of them */
    private static Spares surest(double[] after, int day, Several among, int pots, int fewestDays) {
        return IntStream.rangeClosed(Math.min(fewestDays, pots), Math.min(pots, MOST_DAYS))
                .boxed()
                .flatMap(days -> IntStream.rangeClosed(NEAREST, FARTHEST)
                        .boxed()
                        .flatMap(apart -> places(after, day, among, spread(pots, days, apart))))
                .max(Comparator.comparingDouble(Spares::chance))
                .orElseThrow();
    }

    /** How much earlier than the last each comes in, the earliest first. */
    private static List<Integer> spread(int pots, int days, int apart) {
        return IntStream.range(0, pots)
                .map(pot -> (days - 1 - pot * days / pots) * apart)
                .boxed()
                .toList();
    }

    /** With the last so long before the wished day, as long as that leaves a chance. */
    private static Stream<Spares> places(double[] after, int day, Several among, List<Integer> earlier) {
        return IntStream.range(0, after.length).mapToObj(last -> {
            List<Double> chances = earlier.stream()
                    .map(days -> last + days < after.length ? after[last + days] : 0)
                    .toList();
            return new Spares(
                    earlier.stream().map(days -> day - last - days).toList(),
                    among.and(chances).enough());
        });
    }
}
