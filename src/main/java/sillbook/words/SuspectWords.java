// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.handbook.Source;
import sillbook.model.Cause;
import sillbook.model.Journal;
import sillbook.season.CauseFit;
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
        String fits = fits(suspect).map(said -> ". " + said).orElse("");
        return cause(suspect.cause()) + " (" + code(suspect.verdict()) + "): "
                + String.join("; ", clues(suspect)).replaceAll(" +", " ") + fits;
    }

    /** {@code Fits it: rot, roots brown (common practice).} and what speaks against it; empty where nothing found does either. */
    public static Optional<String> fits(Suspect suspect) {
        String said = Stream.of(fits("Fits it", true, suspect), fits("Speaks against it", false, suspect))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" "));
        return Optional.of(said).filter(words -> !words.isEmpty());
    }

    private static Optional<String> fits(String how, boolean speaksFor, Suspect suspect) {
        List<String> found = suspect.fits().stream()
                .filter(fit -> fit.speaksFor() == speaksFor)
                .map(fit -> found(fit) + OriginMarks.after(fit.sources()))
                .toList();
        return found.isEmpty() ? Optional.empty() : Optional.of(how + ": " + String.join(", ", found) + ".");
    }

    /**
     * What was found in the pot, each with how it bears on the cause and where that is written: {@code fits it: rot, New Mexico
     * State University}.
     */
    public static List<String> found(Suspect suspect, SourceWords sources) {
        return suspect.fits().isEmpty()
                ? List.of("nothing that was marked fits it or speaks against it")
                : suspect.fits().stream().map(fit -> found(fit, sources)).toList();
    }

    private static String found(CauseFit fit, SourceWords sources) {
        String how = fit.speaksFor() ? "fits it: " : "speaks against it: ";
        String mark = Source.isAnyPublished(fit.sources()) ? "▫ " : "";
        return how + found(fit) + ", " + mark + sources.names(fit.sources());
    }

    /** {@code rot}, {@code roots brown}. */
    public static String found(CauseFit fit) {
        return fit.sign()
                .map(Terms.SIGNS::say)
                .orElseGet(() -> fit.roots()
                        .map(roots -> "roots " + Terms.FAILED_ROOTS.say(roots))
                        .orElseThrow());
    }
}
