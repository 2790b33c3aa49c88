// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Purchase.Money;
import sillbook.plan.PlanNow;
import sillbook.plan.Supplies;
import sillbook.words.Counts;
import sillbook.words.Prices;

/** A plan in one line, to stand beside others. */
public record PlanSum(PlanNow now, Supplies supplies) {
    /** {@code plan A: 7 days without bloom, longest gap 7 days, 14 pots, 4 at once at most, to buy 38.40, proven best: yes}. */
    public String line() {
        return "plan " + now.plan().name() + adopted() + ": "
                + Counts.of(now.ribbon().gapDays(), "day") + " without bloom, longest gap " + longest() + ", "
                + Counts.of(now.pots().size(), "pot") + ", " + now.ribbon().mostAtOnce() + " at once at most, to buy "
                + toBuy()
                + ", proven best: " + SeekingWords.proven(now);
    }

    private String adopted() {
        return now.plan().adopted().isPresent() ? ", adopted" : "";
    }

    private String longest() {
        int longest = now.ribbon().longestGap();
        return longest == 0 ? "none" : Counts.of(longest, "day");
    }

    /** {@code 38.40}, {@code 38.40 and 2 sorts without a price}; {@code no bulbs} where all are in hand or ordered. */
    private String toBuy() {
        if (supplies.wanting() == 0) {
            return "no bulbs";
        }
        String without =
                supplies.withoutPrice() == 0 ? "" : Counts.of(supplies.withoutPrice(), "sort") + " without a price";
        return Stream.of(cost(supplies.cost()), without)
                .filter(said -> !said.isEmpty())
                .collect(Collectors.joining(" and "));
    }

    /** {@code 38.40}, {@code EUR 12.00 and 4.50}; empty where nothing has a price. */
    static String cost(List<Money> cost) {
        return cost.stream().map(Prices::say).collect(Collectors.joining(" and "));
    }
}
