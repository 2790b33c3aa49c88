// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.SeasonPlan.Rule;
import sillbook.model.Wish;
import sillbook.model.WishedFor.FlowerStage;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DaySpan;

/** Which days of a season a plan is judged by; those before today are past changing. */
record WishedDays(List<Wish> wishes, Rule rule, LocalDate today) {
    /** From the first colour of a bud to its first open flower, and from that to most of them: a few days (common practice). */
    static final int COLOUR_BEFORE_OPEN = 3;

    static final int OPEN_BEFORE_FULL = 3;

    /** Some three weeks lie between coming in and the flower of most kinds, where nobody wished for days. */
    private static final int USUAL_DAYS_TO_FLOWER = 21;

    /** So often the day of a dated wish is asked for, those beside it once. */
    private static final int WEIGHT = 3;

    /** So many days of one wish are looked at singly. */
    private static final int SINGLE_DAYS = 40;

    static WishedDays of(Planning planning, Rule rule) {
        return new WishedDays(planning.wishes(), rule, planning.today());
    }

    /** The days on which something should be in flower, as spans in order; those the rule brings pots in for, where no wish says so. */
    List<DaySpan> everyDay() {
        Stream<DaySpan> said = wishes.isEmpty()
                ? Stream.of(byRule())
                : wishes.stream()
                        .filter(wish -> wish.asks().isEveryDay())
                        .map(wish -> DaySpan.ofInclusive(wish.from(), wish.to()));
        return DaySpan.joined(said.flatMap(span -> ahead(span).stream()).toList());
    }

    private DaySpan byRule() {
        return DaySpan.ofInclusive(
                rule.from().plusDays(USUAL_DAYS_TO_FLOWER), rule.to().plusDays(USUAL_DAYS_TO_FLOWER));
    }

    /** What of some days is not past. */
    Optional<DaySpan> ahead(DaySpan span) {
        return span.endExclusive().isAfter(today)
                ? Optional.of(DaySpan.of(Dates.later(today, span.start()), span.endExclusive()))
                : Optional.empty();
    }

    /** From the first day to come that is wished for to the last; today where there is none. */
    DaySpan hull() {
        List<LocalDate> days = new ArrayList<>();
        everyDay().forEach(span -> {
            days.add(span.start());
            days.add(span.last());
        });
        wishes.stream()
                .filter(wish -> !wish.asks().isEveryDay())
                .map(WishedDays::inFlowerOn)
                .filter(day -> !day.isBefore(today))
                .forEach(days::add);
        LocalDate first = days.stream().min(LocalDate::compareTo).orElse(today);
        LocalDate last = days.stream().max(LocalDate::compareTo).orElse(today);
        return DaySpan.ofInclusive(first, last);
    }

    /** The days between that nobody wished for, as spans in order. */
    List<DaySpan> unwished() {
        List<DaySpan> left = new ArrayList<>();
        DaySpan hull = hull();
        LocalDate from = hull.start();
        for (DaySpan wished : everyDay()) {
            if (from.isBefore(wished.start())) {
                left.add(DaySpan.of(from, wished.start()));
            }
            from = Dates.later(from, wished.endExclusive());
        }
        if (from.isBefore(hull.endExclusive())) {
            left.add(DaySpan.of(from, hull.endExclusive()));
        }
        return left;
    }

    /**
     * The days on which the search is asked for pots of a wish, the weightier ones oftener: a dated one's and those about it; else its {@link
     * #own}.
     */
    List<LocalDate> asked(Wish wish) {
        Stream<LocalDate> days = wish.asks().isEveryDay() ? own(wish).stream() : about(inFlowerOn(wish));
        return days.filter(day -> !day.isBefore(today)).toList();
    }

    /**
     * The days on which a wish asks for pots of its own: that of a dated one; of one for every day that asks for more than that anything is
     * in bloom, each of its days, or of a long stretch one in a few.
     */
    List<LocalDate> own(Wish wish) {
        Stream<LocalDate> days = Stream.of();
        if (!wish.asks().isEveryDay()) {
            days = Stream.of(inFlowerOn(wish));
        } else if (!wish.asks().isForAnyPot()) {
            days = Stream.concat(
                    wish.from().datesUntil(wish.to().plusDays(1), Period.ofDays(apart(wish))), Stream.of(wish.to()));
        }
        return days.filter(day -> !day.isBefore(today)).distinct().toList();
    }

    private static int apart(Wish wish) {
        return 1 + Dates.between(wish.from(), wish.to()) / SINGLE_DAYS;
    }

    /** The day of a wish, heavier than both beside it together; these so that neither early nor late pots miss it. Of the days a plan is judged by. */
    private Stream<LocalDate> about(LocalDate day) {
        DaySpan hull = hull();
        Stream<LocalDate> beside = Stream.of(day.minusDays(WishMet.SLACK_DAYS), day.plusDays(WishMet.SLACK_DAYS))
                .map(one -> Dates.earlier(Dates.later(one, hull.start()), hull.last()));
        return hull.contains(day) ? Stream.concat(Stream.generate(() -> day).limit(WEIGHT), beside) : Stream.of();
    }

    /**
     * The day on which a flower should be open for a wish: for buds in colour a few days after the day wished for, for full flower a few days
     * before it. Of several days the first is aimed at.
     */
    static LocalDate inFlowerOn(Wish wish) {
        return wish.from().plusDays(shift(wish));
    }

    /** From the days wished for to those on which a flower should be open. */
    static int shift(Wish wish) {
        if (wish.asks().isEveryDay()) {
            return 0;
        }
        FlowerStage stage = wish.asks().stage().orElse(FlowerStage.FIRST_OPEN);
        return switch (stage) {
            case BUD_COLOUR -> COLOUR_BEFORE_OPEN;
            case FIRST_OPEN -> 0;
            case FULL -> -OPEN_BEFORE_FULL;
        };
    }
}
