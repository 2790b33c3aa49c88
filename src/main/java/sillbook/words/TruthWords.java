// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Stage;
import sillbook.reckon.effects.Proportion;
import sillbook.season.past.Truth;

/** How true the dates were, in words. */
public final class TruthWords {
    /** What may begin, as it is foretold. */
    public static final Vocabulary<Stage> BEGINNINGS = Vocabulary.<Stage>of("beginning")
            .with(Stage.IN_BLOOM, "first flower")
            .with(Stage.AFTER_BLOOM, "end of bloom");

    private TruthWords() {}

    /** {@code first flower 9 of 12, end of bloom 8 of 10}; empty where there are too few of any. */
    public static Optional<String> byStage(Truth truth) {
        return Optional.of(truth.byStage().entrySet().stream()
                        .map(one -> BEGINNINGS.say(one.getKey()) + " " + of(one.getValue()))
                        .collect(Collectors.joining(", ")))
                .filter(said -> !said.isEmpty());
    }

    /** {@code dates held 17 of 22 (57-90 %); 4 came late and 1 early, half of them by 4 days or more}. */
    public static List<String> facts(Truth truth) {
        return truth.held()
                .interval(MeritWords.SHARE_CHANCE)
                .map(range -> {
                    List<String> facts = new ArrayList<>();
                    facts.add("dates held " + of(truth.held()) + " (" + MeritWords.percent(range) + ")");
                    truth.middleMiss().ifPresent(days -> facts.add(missed(truth, days)));
                    return facts;
                })
                .orElse(List.of("no kept window whose day came"));
    }

    private static String missed(Truth truth, long days) {
        String count = Stream.of(came(truth.late(), "late"), came(truth.early(), "early"))
                .filter(said -> !said.isEmpty())
                .collect(Collectors.joining(" and "));
        String by = Counts.of(days, "day");
        int missed = truth.late() + truth.early();
        return count + (missed == 1 ? ", by " + by : ", half of them by " + by + " or more");
    }

    private static String came(int count, String when) {
        return count == 0 ? "" : count + " " + when;
    }

    /** {@code 17 of 22}. */
    static String of(Proportion share) {
        return share.hits() + " of " + share.of();
    }
}
