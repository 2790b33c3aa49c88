// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Variety;
import sillbook.season.past.Summary;
import sillbook.season.past.Summary.Cold;
import sillbook.season.past.Truth;

/** What a winter came to, in words; what nobody wrote is not said. */
public record SummaryWords(Journal journal) {
    private static final int MOST_NAMED = 3;
    private static final String NOT_WRITTEN = "?";

    /** {@code 2025-26}. */
    public String winter(Summary summary) {
        return journal.nameOf(summary.winter());
    }

    /** {@code 2025-26: 28 pots, 27 flowered; 20 well, 7 fair, 1 failed; ...}. */
    public String line(Summary summary, Truth truth) {
        return winter(summary) + ": "
                + Stream.concat(facts(summary).stream(), TruthWords.facts(truth).stream())
                        .collect(Collectors.joining("; "))
                + ".";
    }

    /** Each a phrase, from how many there were to what went wrong. */
    public List<String> facts(Summary summary) {
        List<String> facts = new ArrayList<>();
        String flowered = summary.flowered() == 0 ? "none" : Integer.toString(summary.flowered());
        facts.add(Counts.of(summary.pots(), "pot") + ", " + flowered + " flowered");
        if (summary.tally().pots() > 0) {
            facts.add(TallyWords.counts(summary.tally()));
        }
        MeritWords.flowered(summary.bulbs()).ifPresent(facts::add);
        summary.daysWithBloom().ifPresent(days -> facts.add(Counts.of(days, "day") + " with bloom"));
        summary.cold().ifPresent(cold -> facts.add("cold " + weeks(cold)));
        names(summary.best()).ifPresent(names -> facts.add("best " + names));
        names(summary.worst()).ifPresent(names -> facts.add("worst " + names));
        counted(summary.signs(), Terms.SIGNS).ifPresent(signs -> facts.add("signs: " + signs));
        counted(summary.causes(), Terms.CAUSES).ifPresent(causes -> facts.add("causes: " + causes));
        return facts;
    }

    /** {@code 41 of 52}; {@code ?} where nobody counted. */
    public static String bulbs(Summary summary) {
        return summary.bulbs().of() == 0
                ? NOT_WRITTEN
                : summary.bulbs().hits() + " of " + summary.bulbs().of();
    }

    /** With bloom; {@code ?} where no flower was written. */
    public static String days(Summary summary) {
        return summary.daysWithBloom().map(String::valueOf).orElse(NOT_WRITTEN);
    }

    /** {@code 11 to 16}, whole weeks of cold; {@code none} where no pot had any. */
    public static String span(Summary summary) {
        return summary.cold()
                .map(cold -> {
                    String least = whole(cold.least());
                    String most = whole(cold.most());
                    return least.equals(most) ? least : least + " to " + most;
                })
                .orElse("none");
    }

    /** {@code 11 to 16 weeks, half of the pots 14 or more}; {@code 14 weeks} where they agree. */
    static String weeks(Cold cold) {
        return number(cold.least()).equals(number(cold.most()))
                ? Weeks.sayDays((double) cold.most())
                : number(cold.least()) + " to " + Weeks.sayDays((double) cold.most()) + ", half of them "
                        + number(cold.middle()) + " or more";
    }

    private static String whole(long days) {
        return Long.toString(Math.round(Weeks.ofDays((double) days)));
    }

    private static String number(long days) {
        return Weeks.number(Weeks.ofDays((double) days));
    }

    private Optional<String> names(List<Id<Variety>> varieties) {
        if (varieties.isEmpty()) {
            return Optional.empty();
        }
        PotNames names = new PotNames(journal);
        List<String> said = varieties.stream()
                .limit(MOST_NAMED)
                .map(names::variety)
                .collect(Collectors.toCollection(ArrayList::new));
        if (varieties.size() > MOST_NAMED) {
            said.add(varieties.size() - MOST_NAMED + " more");
        }
        return Optional.of(Counts.and(said));
    }

    /** {@code floppy in 2, rot in 1}. */
    private static <T extends Enum<T>> Optional<String> counted(Map<T, Integer> counts, Vocabulary<T> words) {
        return Optional.of(counts.entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(one -> words.say(one.getKey()) + " in " + one.getValue())
                        .collect(Collectors.joining(", ")))
                .filter(said -> !said.isEmpty());
    }
}
