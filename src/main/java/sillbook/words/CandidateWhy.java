// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import sillbook.model.Journal;
import sillbook.season.past.Candidate;
import sillbook.season.past.Choosing;
import sillbook.season.past.Reason;
import sillbook.text.Width;

/** Why a variety stands where it stands among those there are to choose from. */
public record CandidateWhy(Journal journal) {
    private static final String RULE =
            "The chosen come first, what is set aside last; among these the best mean score first, and what has none after it."
                    + " A reason stands here only while your entries, the handbook or a price bear it out.";
    private static final String FROM =
            "▪ your scores, prices and words of all winters; ▫ the handbook. Reasons do not move a line, they only speak.";
    private static final String EFFECTS =
            "The mean is a plain one: what place and winter did to it is taken out on Seasons, by V and E.";
    private static final String UNTRIED = "One pot of it, scored in full bloom, would say more than any reason here.";

    /** Of a reason and what it rests on, where they stand on one line. */
    private static final int MOST_COLUMNS = 60;

    public Explanation explain(Choosing choosing, Candidate candidate) {
        return new Explanation(
                "'" + candidate.variety().name() + "' for " + journal.nameOf(choosing.season()),
                RULE,
                List.of(FROM),
                Stream.concat(mean(candidate), candidate.reasons().stream().flatMap(this::reason))
                        .toList(),
                total(candidate),
                List.of(candidate.scores().isEmpty() ? UNTRIED : EFFECTS));
    }

    private static Stream<Explanation.Line> mean(Candidate candidate) {
        return candidate.mean().stream()
                .mapToObj(mean -> new Explanation.Line(
                        "plain mean",
                        "of " + Counts.of(candidate.scores().size(), "scored pot"),
                        Decimal.sayFixed(mean, 2)));
    }

    private Stream<Explanation.Line> reason(Reason reason) {
        String says = new ReasonWords(journal).say(reason);
        String basis = new ReasonBases().say(reason);
        List<Explanation.Line> lines = new ArrayList<>();
        if (Width.of(says) + Width.of(basis) <= MOST_COLUMNS) {
            lines.add(new Explanation.Line(says, basis, ""));
        } else {
            lines.add(new Explanation.Line(says, "", ""));
            lines.add(new Explanation.Line("", basis, ""));
        }
        return lines.stream();
    }

    private static String total(Candidate candidate) {
        return candidate
                .holding()
                .map(choice -> ChoiceWords.mark(choice.mark()))
                .orElse("undecided");
    }
}
