// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import java.util.Locale;
import sillbook.model.Cause;
import sillbook.model.Journal;
import sillbook.season.Suspect;
import sillbook.season.Suspect.Verdict;

/** What the journal says of the causes a failure could have. */
public record SuspectWords(Journal journal) {
    private static final Vocabulary<Verdict> HEADINGS = Vocabulary.<Verdict>of("verdict on a cause")
            .with(Verdict.SPEAKS_FOR, "Causes your own entries speak for")
            .with(Verdict.CANNOT_BE_TOLD, "Cannot be told")
            .with(Verdict.NOTHING_SPEAKS_FOR, "Nothing speaks for");

    /** As a heading over the causes of which it holds. */
    public static String heading(Verdict verdict) {
        return HEADINGS.say(verdict);
    }

    /** As the name of a value: {@code speaks for}. */
    public static String code(Verdict verdict) {
        return verdict.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public static String cause(Cause cause) {
        return Terms.CAUSES.say(cause);
    }

    /** Each clue as a line of its own. */
    public List<String> clues(Suspect suspect) {
        ClueWords words = new ClueWords(journal);
        return suspect.clues().stream().map(words::say).toList();
    }

    /** All of it on one line: {@code frozen (speaks for): Sun 3 Jan trench: -1.4 C (reading); ...}. */
    public String line(Suspect suspect) {
        return cause(suspect.cause()) + " (" + code(suspect.verdict()) + "): "
                + String.join("; ", clues(suspect)).replaceAll(" +", " ");
    }
}
