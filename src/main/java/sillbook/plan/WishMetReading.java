// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sillbook.model.Wish;
import sillbook.reckon.chance.Several;
import sillbook.reckon.chance.Spares;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Forcing;

/** Reads how a plan stands to wishes. */
record WishMetReading(Planning planning, List<PlannedPot> pots, Ribbon ribbon) {
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
        List<Double> each =
                meeting.stream().map(pot -> chance(pots.get(pot), day)).toList();
        double chance = Several.atLeast(wish.asks().pots(), each);
        return new WishMet(wish, meeting, List.of(), chance, spares(wish, meeting.size(), chance), latest(wish, day));
    }

    private double chance(PlannedPot pot, LocalDate day) {
        return BloomChances.spell(pot, DaySpan.ofInclusive(day, day)).chanceOn(0);
    }

    /** As many more of the quickest bulbs that suit, or that are in the plan, as would make it sure enough; none where it is. */
    private Optional<Integer> spares(Wish wish, int meeting, double chance) {
        if (chance >= Spares.SURE) {
            return Optional.of(0);
        }
        return Stream.concat(pots.stream().map(PlannedPot::candidate), planning.candidates().stream())
                .filter(candidate -> wish.asks().suits(candidate.variety()))
                .map(Candidate::forcing)
                .distinct()
                .flatMap(forcing -> fewest(forcing, wish.asks().pots()).stream())
                .min(Comparator.naturalOrder())
                .map(pots -> Math.max(1, pots - meeting));
    }

    /** Whichever day it is: so long after they came in as suits them best. */
    private static Optional<Integer> fewest(Forcing forcing, int wanted) {
        return wanted > Spares.MOST_WANTED
                ? Optional.empty()
                : Spares.fewest(BloomChances.spell(forcing), forcing.toFlower().typical(), wanted)
                        .map(spares -> spares.pulls().size());
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
