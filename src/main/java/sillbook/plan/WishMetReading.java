// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sillbook.model.Purchase;
import sillbook.model.Wish;
import sillbook.reckon.chance.Several;
import sillbook.reckon.chance.Spares;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Forcing;

/** Reads how a plan stands to wishes. */
record WishMetReading(Planning planning, WishedDays days, List<PlannedPot> pots, BloomChances chances) {
    WishMet of(Wish wish) {
        return wish.asks().isEveryDay() ? everyDay(wish) : dated(wish);
    }

    private WishMet everyDay(Wish wish) {
        List<LocalDate> ahead = days.ahead(DaySpan.ofInclusive(wish.from(), wish.to()))
                .map(span -> span.start().datesUntil(span.endExclusive()).toList())
                .orElse(List.of());
        List<DaySpan> gaps = DaySpan.joined(ahead.stream()
                .filter(day -> count(wish, day) < wish.asks().pots())
                .map(day -> DaySpan.ofInclusive(day, day))
                .toList());
        double least = ahead.stream()
                .mapToDouble(day -> chance(wish, suited(wish).boxed().toList(), day))
                .min()
                .orElse(1);
        return new WishMet(wish, List.of(), gaps, least, Optional.empty(), Optional.empty());
    }

    /** That at least as many of some pots are in bloom as are wished for. */
    private double chance(Wish wish, List<Integer> of, LocalDate day) {
        return Several.atLeast(
                wish.asks().pots(), of.stream().map(pot -> chances.of(pot, day)).toList());
    }

    private int count(Wish wish, LocalDate day) {
        return (int) suited(wish)
                .filter(pot -> pots.get(pot).inFlower().contains(day))
                .count();
    }

    private IntStream suited(Wish wish) {
        return IntStream.range(0, pots.size()).filter(pot -> pots.get(pot).suits(wish));
    }

    /** On that of its days on which most are in flower, of as many the first. */
    private WishMet dated(Wish wish) {
        int shift = WishedDays.shift(wish);
        LocalDate day = wish.from()
                .plusDays(shift)
                .datesUntil(wish.to().plusDays(shift + 1L))
                .max(Comparator.<LocalDate>comparingInt(
                                one -> meeting(wish, one).size())
                        .thenComparing(Comparator.reverseOrder()))
                .orElseThrow();
        List<Double> each = suited(wish).mapToObj(pot -> chances.of(pot, day)).toList();
        double chance = Several.atLeast(wish.asks().pots(), each);
        return new WishMet(wish, meeting(wish, day), List.of(), chance, spares(wish, each, chance), latest(wish, day));
    }

    private List<Integer> meeting(Wish wish, LocalDate day) {
        return suited(wish)
                .filter(pot -> pots.get(pot).inFlower().contains(day))
                .boxed()
                .toList();
    }

    /** The fewest pots more that make it sure enough, of any bulbs that suit, or that are in the plan; none where it is. */
    private Optional<Integer> spares(Wish wish, List<Double> each, double chance) {
        if (chance >= Spares.SURE) {
            return Optional.of(0);
        }
        return Stream.concat(pots.stream().map(PlannedPot::candidate), planning.candidates().stream())
                .filter(candidate -> wish.asks().suits(candidate.variety()))
                .map(Candidate::forcing)
                .distinct()
                .flatMap(forcing -> more(forcing, each, wish.asks().pots()).stream())
                .min(Comparator.naturalOrder());
    }

    /** Whichever day it is: so long after they came in as suits them best. */
    private Optional<Integer> more(Forcing forcing, List<Double> each, int wanted) {
        return wanted > Spares.MOST_WANTED
                ? Optional.empty()
                : Spares.more(each, chances.spell(forcing), forcing.toFlower().typical(), wanted)
                        .map(spares -> spares.pulls().size());
    }

    /** Worked back for the quickest of the bulbs that suit and are still to be potted. */
    private Optional<LatestDays> latest(Wish wish, LocalDate day) {
        return planning.candidates().stream()
                .filter(candidate -> candidate.pot().isEmpty() && wish.asks().suits(candidate.variety()))
                .map(candidate -> latest(candidate, day))
                .max(Comparator.comparing(LatestDays::potBy));
    }

    private LatestDays latest(Candidate candidate, LocalDate day) {
        LocalDate in = day.minusDays(candidate.forcing().toFlower().typical());
        LocalDate potted = in.minusDays(candidate.forcing().usualCold());
        Optional<LocalDate> order =
                Optional.of(potted.minusDays(Supplies.DELIVERY_DAYS)).filter(none -> isToOrder(candidate));
        return new LatestDays(candidate.variety().id(), order, potted, in);
    }

    private boolean isToOrder(Candidate candidate) {
        return candidate
                .purchase()
                .flatMap(planning.journal().purchases()::find)
                .filter(purchase -> purchase.state() != Purchase.State.TO_ORDER)
                .isEmpty();
    }
}
