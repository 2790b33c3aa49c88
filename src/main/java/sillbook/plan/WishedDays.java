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
import sillbook.reckon.dates.DaySpan;

/** Which days of a season a plan is judged by. */
final class WishedDays {
    /** From the first colour of a bud to its first open flower, and from that to most of them: a few days (common practice). */
    static final int COLOUR_BEFORE_OPEN = 3;

    static final int OPEN_BEFORE_FULL = 3;

    /** Some three weeks lie between coming in and the flower of most kinds, where nobody wished for days. */
    private static final int USUAL_DAYS_TO_FLOWER = 21;

    /** A judgement of ours: as many days as leave a short bloom its middle. */
    private static final int SLACK = 2;

    /** So many days of one wish are looked at singly. */
    private static final int SINGLE_DAYS = 40;

    private WishedDays() {}

    /** The days on which something should be in flower, as spans in order; those the rule brings pots in for, where no wish says so. */
    static List<DaySpan> everyDay(List<Wish> wishes, Rule rule) {
        List<DaySpan> said = DaySpan.joined(wishes.stream()
                .filter(wish -> wish.asks().isEveryDay())
                .map(wish -> DaySpan.ofInclusive(wish.from(), wish.to()))
                .toList());
        return said.isEmpty() && wishes.isEmpty() ? List.of(byRule(rule)) : said;
    }

    private static DaySpan byRule(Rule rule) {
        return DaySpan.ofInclusive(
                rule.from().plusDays(USUAL_DAYS_TO_FLOWER), rule.to().plusDays(USUAL_DAYS_TO_FLOWER));
    }

    /** From the first day that is wished for to the last. */
    static DaySpan hull(List<Wish> wishes, Rule rule) {
        List<DaySpan> every = everyDay(wishes, rule);
        Optional<LocalDate> first = wishes.stream().map(WishedDays::inFlowerOn).min(LocalDate::compareTo);
        Optional<LocalDate> last = wishes.stream()
                .map(wish -> Dates.later(inFlowerOn(wish), wish.asks().isEveryDay() ? wish.to() : inFlowerOn(wish)))
                .max(LocalDate::compareTo);
        LocalDate from = first.orElseGet(() -> every.get(0).start());
        LocalDate to =
                last.orElseGet(() -> every.get(every.size() - 1).endExclusive().minusDays(1));
        return DaySpan.ofInclusive(from, to);
    }

    /** The days between that nobody wished for, as spans in order. */
    static List<DaySpan> unwished(List<Wish> wishes, Rule rule) {
        List<DaySpan> left = new ArrayList<>();
        DaySpan hull = hull(wishes, rule);
        LocalDate from = hull.start();
        for (DaySpan wished : everyDay(wishes, rule)) {
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

    /** The days on which a wish asks for pots of its own: around the day of a dated one; of one for every day that asks for more than that anything is in bloom, each of its days, or of a long stretch one in a few. */
    static List<LocalDate> asked(Wish wish, DaySpan hull) {
        if (!wish.asks().isEveryDay()) {
            return about(wish, hull);
        }
        return wish.asks().isForAnyPot()
                ? List.of()
                : Stream.concat(
                                wish.from().datesUntil(wish.to().plusDays(1), Period.ofDays(apart(wish))),
                                Stream.of(wish.to()))
                        .distinct()
                        .toList();
    }

    private static int apart(Wish wish) {
        return 1 + Dates.between(wish.from(), wish.to()) / SINGLE_DAYS;
    }

    /** Days around that of a dated wish on which its pots should be in flower, so that neither early nor late ones miss it; of those a plan is judged by. */
    static List<LocalDate> about(Wish wish, DaySpan hull) {
        LocalDate day = inFlowerOn(wish);
        return Stream.of(day.minusDays(SLACK), day.plusDays(SLACK))
                .map(one -> Dates.earlier(
                        Dates.later(one, hull.start()), hull.endExclusive().minusDays(1)))
                .distinct()
                .toList();
    }

    /**
     * The day on which a flower should be open for a wish: for buds in colour a few days after the day wished for, for full flower a few days
     * before it.
     */
    static LocalDate inFlowerOn(Wish wish) {
        if (wish.asks().isEveryDay()) {
            return wish.from();
        }
        FlowerStage stage = wish.asks().stage().orElse(FlowerStage.FIRST_OPEN);
        return switch (stage) {
            case BUD_COLOUR -> wish.from().plusDays(COLOUR_BEFORE_OPEN);
            case FIRST_OPEN -> wish.from();
            case FULL -> wish.from().minusDays(OPEN_BEFORE_FULL);
        };
    }
}
