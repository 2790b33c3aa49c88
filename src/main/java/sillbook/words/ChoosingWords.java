// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import sillbook.model.Choice;
import sillbook.model.Journal;
import sillbook.season.past.Candidate;
import sillbook.season.past.Choosing;
import sillbook.season.past.Reason;

/** What there is to choose from, as it is said. */
public record ChoosingWords(Journal journal) {

    /** All of it: what is chosen in one line, a line for each variety, then what is still to be ordered. */
    public List<String> lines(Choosing choosing) {
        if (choosing.candidates().isEmpty()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        lines.add("For season " + season(choosing) + ": " + sum(choosing) + ".");
        choosing.candidates().stream().map(this::line).forEach(lines::add);
        toOrder(choosing, "sillbook write 'order all chosen' writes them down").ifPresent(lines::add);
        return lines;
    }

    private String season(Choosing choosing) {
        return journal.nameOf(choosing.season());
    }

    /** {@code 4 chosen, 57 bulbs, about 38.40}. */
    public static String sum(Choosing choosing) {
        int chosen = choosing.chosen().size();
        if (chosen == 0) {
            return "nothing chosen";
        }
        String cost = choosing.cost().stream().map(Prices::say).collect(Collectors.joining(" and "));
        String without = choosing.withoutPrice() > 0 && !cost.isEmpty()
                ? ", " + choosing.withoutPrice() + " without a price"
                : "";
        return chosen + " chosen, " + Counts.of(choosing.bulbs(), "bulb")
                + (cost.isEmpty() ? ", no price known" : ", about " + cost + without);
    }

    /**
     * What is chosen and stands on no order yet: {@code Not yet to order: 52 bulbs of 3 varieties; H hands them on.} Empty
     * where nothing is chosen.
     *
     * @param how what to do about it
     */
    public Optional<String> toOrder(Choosing choosing, String how) {
        List<Candidate> missing = choosing.toOrder();
        if (missing.isEmpty()) {
            return choosing.chosen().isEmpty()
                    ? Optional.empty()
                    : Optional.of("All that is chosen is to order, ordered or in hand.");
        }
        String whose =
                missing.size() == 1 ? "'" + missing.get(0).variety().name() + "'" : missing.size() + " varieties";
        return Optional.of(
                "Not yet to order: " + Counts.of(choosing.bulbsToOrder(), "bulb") + " of " + whose + "; " + how + ".");
    }

    /** {@code 'Lantern Row': chosen, 10 bulbs; ▪4.2 of 8 pots; did well here 3 winters running; last paid 0.55 each}. */
    public String line(Candidate candidate) {
        List<String> facts = new ArrayList<>();
        facts.add(candidate
                .choice()
                .map(choice -> ChoiceWords.mark(choice.mark()))
                .orElse("undecided"));
        if (candidate.choice().isEmpty()) {
            candidate.before().map(this::marked).ifPresent(facts::add);
        }
        facts.add(record(candidate));
        candidate.reasons().stream().map(this::reason).forEach(facts::add);
        if (candidate.inHand() > 0) {
            facts.add(Counts.of(candidate.inHand(), "bulb") + " in hand");
        }
        if (candidate.onOrder() > 0) {
            facts.add(Counts.of(candidate.onOrder(), "bulb") + " to come");
        }
        candidate.each().ifPresent(each -> facts.add("last paid " + Prices.say(each) + " each"));
        return "'" + candidate.variety().name() + "': " + String.join("; ", facts);
    }

    private String reason(Reason reason) {
        return new ReasonWords(journal).say(reason);
    }

    /** What is marked, and for which season: {@code for 2026-27 set aside: floppy}. */
    public String marked(Choice choice) {
        return "for " + journal.nameOf(choice.season()) + " " + ChoiceWords.mark(choice.mark());
    }

    /** {@code ▪4.2 of 8 pots}; where there is none, that there is none. */
    public static String record(Candidate candidate) {
        return candidate.mean().isPresent()
                ? "▪" + Decimal.sayFixed(candidate.mean().getAsDouble(), 1) + " of "
                        + Counts.of(candidate.scores().size(), "pot")
                : "no data";
    }
}
