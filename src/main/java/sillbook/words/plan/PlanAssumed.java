// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.util.List;
import java.util.stream.Stream;
import sillbook.handbook.FigureName;
import sillbook.handbook.Origin;
import sillbook.plan.PlanNow;
import sillbook.plan.PlannedPot;
import sillbook.plan.Planning;
import sillbook.plan.Supplies;
import sillbook.plan.WishMet;
import sillbook.words.Counts;
import sillbook.words.Terms;

/** What a plan takes for granted, a phrase each. */
public final class PlanAssumed {
    private static final List<String> ALWAYS = List.of(
            "the usual lengths; the chances go by their spread",
            Counts.of(Supplies.DELIVERY_DAYS, "day") + " from an order to the bulbs (common practice)",
            "pots for a wished day flower " + Counts.of(WishMet.SLACK_DAYS, "day")
                    + " before and after it too, where they can (a judgement of ours)");

    private PlanAssumed() {}

    public static List<String> of(Planning planning, PlanNow now) {
        return Stream.concat(ALWAYS.stream(), now.pots().stream().flatMap(pot -> figures(planning, pot)))
                .distinct()
                .toList();
    }

    private static Stream<String> figures(Planning planning, PlannedPot pot) {
        return Stream.of(FigureName.COLD, FigureName.AFTER_COLD, FigureName.IN_BLOOM)
                .filter(name -> planning.outlook()
                        .figures()
                        .find(pot.candidate().variety(), name)
                        .filter(figure -> figure.origin() == Origin.ASSUMED)
                        .isPresent())
                .map(name -> Terms.FIGURES.say(name) + " of "
                        + pot.candidate().variety().kind());
    }
}
