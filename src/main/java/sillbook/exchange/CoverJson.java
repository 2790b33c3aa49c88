// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import sillbook.reckon.cover.Plan;
import sillbook.reckon.cover.Pull;
import sillbook.reckon.cover.Tally;
import sillbook.reckon.cover.Task;
import sillbook.words.CoverFigures;
import sillbook.words.Provisos;

/** The days to bring pots in, as JSON. */
public final class CoverJson {
    private CoverJson() {}

    /** The document of {@code sillbook reckon cover --json}. */
    public static String write(Task task, Plan plan, Provisos provisos) {
        List<Optional<Pull>> pots = CoverFigures.pots(task, plan);
        Fields fields = tally(plan.tally())
                .number("longestGap", plan.longestGap())
                .flag("proven", plan.isProven())
                .object("bound", tally(plan.bound()))
                .wholes("pulls", each(pots, pull -> Optional.of(pull.day())))
                .wholes("sites", each(pots, pull -> Optional.of(pull.site() + 1)))
                .wholes(
                        "cold",
                        each(
                                pots,
                                pull -> pull.cold().isPresent()
                                        ? Optional.of(pull.cold().getAsInt() + 1)
                                        : Optional.empty()));
        return Answer.write(fields, provisos);
    }

    private static Fields tally(Tally tally) {
        return new Fields()
                .number("unmet", tally.unmet())
                .number("gapDays", tally.gapDays())
                .number("used", tally.used())
                .number("overlap", tally.overlap());
    }

    private static List<Optional<Integer>> each(List<Optional<Pull>> pots, Function<Pull, Optional<Integer>> what) {
        return pots.stream().map(pull -> pull.flatMap(what)).toList();
    }
}
