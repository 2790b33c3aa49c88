// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.List;
import java.util.Optional;
import sillbook.model.Wish;
import sillbook.reckon.dates.DaySpan;

/**
 * How a plan stands to a wish.
 *
 * @param pots those that meet it, by their number in the plan from 0
 * @param gaps of a wish for every day, the days without
 * @param chance that it is met, 0 to 1: of a wish for every day, the least of its days
 * @param spares how many pots more, brought in a few days apart, would meet a dated wish in nine winters of ten; empty where no number does
 * @param latest of a dated wish, how late its pots may be potted and brought in
 */
public record WishMet(
        Wish wish,
        List<Integer> pots,
        List<DaySpan> gaps,
        double chance,
        Optional<Integer> spares,
        Optional<LatestDays> latest) {
    /** So long before and after a wished day its pots should flower too. A judgement of ours: it leaves a short bloom its middle. */
    public static final int SLACK_DAYS = 2;

    public WishMet {
        pots = List.copyOf(pots);
        gaps = List.copyOf(gaps);
    }

    public boolean isMet() {
        return wish.asks().isEveryDay()
                ? gaps.isEmpty()
                : pots.size() >= wish.asks().pots();
    }

    /** How many pots it lacks; days without bloom of a wish for every day. */
    public int lacks() {
        return wish.asks().isEveryDay()
                ? (int) gaps.stream().mapToLong(DaySpan::days).sum()
                : Math.max(0, wish.asks().pots() - pots.size());
    }
}
