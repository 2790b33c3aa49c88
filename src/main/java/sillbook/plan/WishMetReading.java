// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sillbook.model.Wish;
import sillbook.reckon.dates.DaySpan;

/** Reads how a plan stands to wishes. */
record WishMetReading(Planning planning, List<PlannedPot> pots, Ribbon ribbon) {
    /** Nine winters of ten. */
    private static final double SURE = 0.9;

    private static final int MOST_SPARES = 5;

    /** From an order to the day the bulbs are here (common practice). */
    private static final int DELIVERY_DAYS = 14;

    WishMet of(Wish wish) {
        return wish.asks().isEveryDay() ? everyDay(wish) : dated(wish);
    }

    private WishMet everyDay(Wish wish) {
        DaySpan days = DaySpan.ofInclusive(wish.from(), wish.to());
        List<DaySpan> gaps = DaySpan.joined(days.start()
                .datesUntil(days.endExclusive())
                .filter(day -> count(wish, day) < wish.asks().pots())
                .map(day -> DaySpan.ofInclusive(day, day))
                .toList());
        double least = days.start()
                .datesUntil(days.endExclusive())
                .mapToDouble(ribbon::chance)
                .min()
                .orElse(0);
        return new WishMet(wish, List.of(), gaps, least, Optional.empty(), Optional.empty());
    }

    private int count(Wish wish, LocalDate day) {
        return (int) suited(wish)
                .filter(pot -> pots.get(pot).inFlower().contains(day))
                .count();
    }

    private IntStream suited(Wish wish) {
        return IntStream.range(0, pots.size())
                .filter(pot -> wish.asks().suits(pots.get(pot).candidate().variety()))
                .filter(pot -> wish.asks()
                        .room()
                        .filter(room -> !pots.get(pot).course().room().equals(Optional.of(room)))
                        .isEmpty());
    }

    private WishMet dated(Wish wish) {
        LocalDate day = WishedDays.inFlowerOn(wish);
        List<Integer> meeting = suited(wish)
                .filter(pot -> pots.get(pot).inFlower().contains(day))
                .boxed()
                .toList();
        double[] each =
                meeting.stream().mapToDouble(pot -> chance(pots.get(pot), day)).toArray();
        double chance = atLeast(wish.asks().pots(), each);
        return new WishMet(wish, meeting, List.of(), chance, spares(wish, each, chance), latest(wish, day));
    }

    private double chance(PlannedPot pot, LocalDate day) {
        return BloomChances.of(pot, DaySpan.ofInclusive(day, day))[0];
    }

    /** The chance that at least so many of pots are in bloom that do not depend on each other. */
    static double atLeast(int wanted, double[] each) {
        double[] exactly = new double[each.length + 1];
        exactly[0] = 1;
        for (double chance : each) {
            for (int some = each.length; some > 0; some--) {
                exactly[some] = exactly[some] * (1 - chance) + exactly[some - 1] * chance;
            }
            exactly[0] *= 1 - chance;
        }
        return wanted > each.length
                ? 0
                : Arrays.stream(exactly, wanted, exactly.length).sum();
    }

    /** As many more like the likeliest of them as are wanted; none where it is sure enough already. */
    private static Optional<Integer> spares(Wish wish, double[] each, double chance) {
        if (chance >= SURE) {
            return Optional.of(0);
        }
        double best = Arrays.stream(each).max().orElse(0);
        for (int more = 1; more <= MOST_SPARES && best > 0; more++) {
            double[] with = Arrays.copyOf(each, each.length + more);
            Arrays.fill(with, each.length, with.length, best);
            if (atLeast(wish.asks().pots(), with) >= SURE) {
                return Optional.of(more);
            }
        }
        return Optional.empty();
    }

    /** Worked back for the quickest of the bulbs that suit and are still to be potted. */
    private Optional<LatestDays> latest(Wish wish, LocalDate day) {
        return planning.candidates().stream()
                .filter(candidate -> candidate.pot().isEmpty() && wish.asks().suits(candidate.variety()))
                .map(candidate -> latest(candidate, day))
                .max((one, other) -> one.potBy().compareTo(other.potBy()));
    }

    private static LatestDays latest(Candidate candidate, LocalDate day) {
        LocalDate in = day.minusDays(candidate.forcing().toFlower().typical());
        LocalDate potted = in.minusDays(candidate.forcing().usualCold());
        return new LatestDays(potted.minusDays(DELIVERY_DAYS), potted, in);
    }
}
