// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sillbook.model.Failure.Sign;
import sillbook.model.Outcome;
import sillbook.reckon.effects.Proportion;

/**
 * How the pots did that had about so much cold: which lengths of it worked. Plain counts, that change no figure: how long it was is the
 * grower's choice, and what else was different is not taken out.
 *
 * @param weeks that counted, whole ones, the nearest
 * @param well of those that were judged, how many did well
 * @param shortStems of them how many stayed short and stuck
 * @param read of their days in the cold those that thermometers saw, 0 to 1; the others are taken to be as their places are
 */
public record ColdTried(int weeks, Proportion well, int shortStems, double read) {
    private static final double DAYS_IN_WEEK = 7;

    /** Nobody published a longer cold; of a pot that is said to have had more, its end was not written. */
    private static final int MOST_WEEKS = 30;

    /** From the shortest to the longest; of pots that were judged and stood in the cold. */
    static List<ColdTried> of(Collection<Grown> grown) {
        Map<Integer, List<Grown>> byWeeks = new TreeMap<>();
        grown.stream()
                .filter(one -> one.daysOfCold() > 0 && weeks(one) <= MOST_WEEKS)
                .filter(one -> one.rating().isPresent())
                .forEach(one -> byWeeks.computeIfAbsent(weeks(one), none -> new ArrayList<>())
                        .add(one));
        List<ColdTried> tried = new ArrayList<>();
        byWeeks.forEach((weeks, some) -> tried.add(new ColdTried(
                weeks, new Proportion(count(some, Grown.Rating.WELL), some.size()), shortStems(some), read(some))));
        return tried;
    }

    private static int weeks(Grown one) {
        return (int) Math.round(one.cold().likely() / DAYS_IN_WEEK);
    }

    private static int shortStems(Collection<Grown> some) {
        return (int) some.stream().filter(ColdTried::isShort).count();
    }

    private static double read(Collection<Grown> some) {
        double in = some.stream().mapToDouble(one -> one.cold().daysIn()).sum();
        return in > 0 ? some.stream().mapToDouble(one -> one.cold().read()).sum() / in : 0;
    }

    private static int count(Collection<Grown> some, Grown.Rating rating) {
        return (int) some.stream()
                .filter(one -> one.rating().filter(rating::equals).isPresent())
                .count();
    }

    private static boolean isShort(Grown one) {
        return one.outcome()
                .map(Outcome::failure)
                .filter(found -> found.signs().contains(Sign.SHORT_AND_STUCK))
                .isPresent();
    }
}
