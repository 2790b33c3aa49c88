// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import sillbook.model.Failure;
import sillbook.model.Impression;
import sillbook.model.Impression.Evenness;
import sillbook.model.Journal;
import sillbook.model.Outcome;
import sillbook.model.Outcome.Again;
import sillbook.model.Variety.Scent;

/** How a pot did, as the diary and its card say it. */
public record OutcomeWords(Journal journal) {

    /** {@code outcome 4 of 5: 5 flowered, 38 cm, again: yes, "short in the cellar"}; only what was written. */
    public String say(Outcome outcome) {
        String score = outcome.score().map(given -> " " + given + " of 5").orElse("");
        List<String> facts = facts(outcome);
        return "outcome" + score + (facts.isEmpty() ? "" : ": " + String.join(", ", facts));
    }

    /** {@code rot, roots brown, cut bud "soft and grey", cause: frozen}; only what was written. */
    public static List<String> failure(Failure failure) {
        List<String> facts = new ArrayList<>();
        failure.signs().stream().sorted().map(Terms.SIGNS::say).forEach(facts::add);
        failure.roots().ifPresent(roots -> facts.add("roots " + Terms.FAILED_ROOTS.say(roots)));
        if (!failure.cutBud().isEmpty()) {
            facts.add("cut bud \"" + failure.cutBud() + "\"");
        }
        failure.cause().ifPresent(cause -> facts.add("cause: " + Terms.CAUSES.say(cause)));
        return facts;
    }

    private List<String> facts(Outcome outcome) {
        List<String> facts = new ArrayList<>();
        outcome.variety()
                .ifPresent(one -> facts.add("'" + journal.varieties().get(one).name() + "'"));
        outcome.flowers().ifPresent(flowers -> facts.add(flowers + " flowered"));
        outcome.height()
                .ifPresent(height ->
                        facts.add(Lengths.say(height, journal.settings().lengths())));
        outcome.firstGood()
                .ifPresent(from -> outcome.lastGood().ifPresent(to -> facts.add("good " + Days.fromTo(from, to))));
        facts.addAll(impression(outcome.impression()));
        facts.addAll(failure(outcome.failure()));
        facts.addAll(again(outcome.impression()));
        if (!outcome.note().isEmpty()) {
            facts.add("\"" + outcome.note() + "\"");
        }
        return facts;
    }

    private static List<String> impression(Impression impression) {
        List<String> facts = new ArrayList<>();
        if (impression.evenness() != Evenness.NOT_SAID) {
            facts.add(OutcomeTerms.EVENNESSES.say(impression.evenness()));
        }
        if (impression.scent() != Scent.NOT_SAID) {
            facts.add(Terms.SCENTS.say(impression.scent()));
        }
        return facts;
    }

    private static List<String> again(Impression impression) {
        String how = impression.how().isEmpty() ? "" : ", \"" + impression.how() + "\"";
        return impression.again() == Again.NOT_SAID
                ? List.of()
                : List.of("again: " + Terms.AGAINS.say(impression.again()) + how);
    }
}
