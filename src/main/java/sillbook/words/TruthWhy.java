// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sillbook.model.Journal;
import sillbook.model.Season;
import sillbook.reckon.stages.Widening;
import sillbook.season.Figures;
import sillbook.season.past.Foretelling;
import sillbook.season.past.Truth;
import sillbook.words.Explanation.Line;

/** Why the dates of a winter are said to have been so true: which windows were missed, and by how much. */
public record TruthWhy(Journal journal) {
    private static final String RULE =
            "Of one pot the window counts that was kept as the stage before began; pots made together, foretold the same, "
                    + "count once.";
    private static final String WILSON = "Wilson 1927: the range holds the true share 19 times in 20.";
    private static final String NO_DATA = "What has not come, or is only about known, is no data.";

    /** As many as a page has room for. */
    private static final int MOST_LINES = 5;

    private static final Comparator<Foretelling> FARTHEST_FIRST = Comparator.comparing(one -> -Math.abs(one.daysOff()));

    public Explanation explain(Season winter, Truth truth) {
        return new Explanation(
                "the dates of " + journal.nameOf(winter) + " held " + TruthWords.of(truth.held()),
                RULE,
                List.of(WILSON, NO_DATA),
                sum(winter, truth),
                TruthWords.facts(truth).get(0),
                List.of(
                        "A day that was written wrongly can be corrected. Next winter learnt windows are widened where they held too seldom."));
    }

    private List<Line> sum(Season winter, Truth truth) {
        List<Line> sum = new ArrayList<>();
        truth.byStage()
                .forEach((stage, share) ->
                        sum.add(new Line(TruthWords.BEGINNINGS.say(stage), "in its window", TruthWords.of(share))));
        widened(winter).ifPresent(sum::add);
        List<Foretelling> missed = truth.missed();
        missed.stream()
                .sorted(FARTHEST_FIRST)
                .limit(MOST_LINES)
                .map(this::missed)
                .forEach(sum::add);
        if (missed.size() > MOST_LINES) {
            sum.add(new Line("and", missed.size() - MOST_LINES + " more", ""));
        }
        return sum;
    }

    private Optional<Line> widened(Season winter) {
        Widening widening = Figures.widening(journal, winter);
        return Optional.of(widening.by())
                .filter(by -> by > 1)
                .map(by -> new Line("widened", "those that were learnt", "x " + Decimal.say(by, 1)));
    }

    private Line missed(Foretelling one) {
        String days = Counts.of(Math.abs(one.daysOff()), "day") + (one.daysOff() < 0 ? " early" : " late");
        return new Line(
                new PotNames(journal).labels(one.pots()) + " "
                        + TruthWords.BEGINNINGS.say(one.window().stage()),
                Days.span(one.window().earliest(), one.window().latest()) + ", came " + Days.date(one.came()),
                days);
    }
}
