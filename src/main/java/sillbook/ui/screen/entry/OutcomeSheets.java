// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Edit;
import sillbook.model.Failure;
import sillbook.model.Impression;
import sillbook.model.Impression.Evenness;
import sillbook.model.Journal;
import sillbook.model.Labels;
import sillbook.model.Outcome;
import sillbook.model.Outcome.Again;
import sillbook.model.Pot;
import sillbook.model.Variety.Scent;
import sillbook.ui.screen.form.Answers;
import sillbook.words.Days;
import sillbook.words.Lengths;
import sillbook.words.OutcomeTerms;
import sillbook.words.Terms;

/** Forms of how pots did. */
final class OutcomeSheets {
    private static final Part VARIETY = Part.of(
                    "Variety", 30, "", "Which of those in the pot; left empty, the pot as a whole.")
            .following();
    private static final Part SCORE = Part.of("Score", 4, "score ", "1 to 5, as you saw it at its best.");
    private static final Part FLOWERS =
            Part.of("Flowers", 4, "", "How many of the bulbs flowered.").with(" flowers");
    private static final Part HEIGHT = Part.of("Height", 10, "", "How tall it grew: 45 cm.");
    private static final Part GOOD =
            Part.of("Good", 40, "good ", "From its first good day to its last: 26 dec to 8 jan.");
    private static final Part EVENNESS = Part.of("Evenness", 20, "", "How its flowers came: even, spread or ragged.");
    private static final Part SCENT = Part.of("Scent", 12, "scent ", "As you found it: none, light or strong.");
    private static final Part SIGNS = Part.of(
            "Signs", 40, "", "What was wrong: leaves only, brown bud, short and stuck, floppy, rot, nothing came.");
    private static final Part AGAIN = Part.of("Again", 12, "again ", "Would you do it again: yes, no or differently.");
    private static final Part HOW = Part.of(
                    "How", 40, "differently ", "What you would do differently, if so: in the fridge.")
            .phrase();
    private static final Part ENDED =
            Part.of("Ended", 12, "", "If its winter is over: done, sold, given, broken, used up or failed.");
    private static final Part WRITTEN = Part.of("Written", 24, "", "The day it was written; its winter is told by it.");
    private static final Part NOTE = Part.of("Note", 50, "note ", "In your own words, as long as you like.");

    private OutcomeSheets() {}

    /** How some pots did, and how their winter ended. */
    static LineSheet fresh(Collection<Pot> pots) {
        String labels = Labels.say(pots.stream().map(Pot::label).toList());
        boolean anyMixed = pots.stream().anyMatch(Pot::isMixed);
        List<Part> parts = new ArrayList<>(anyMixed ? List.of(VARIETY) : List.of());
        parts.addAll(List.of(SCORE, FLOWERS, HEIGHT, GOOD, EVENNESS, SCENT, SIGNS, AGAIN, HOW, ENDED, NOTE));
        return LineSheet.of("Outcome of " + labels, "outcome of " + labels, labels, parts);
    }

    /**
     * What was written of how a pot did, or one variety in it, put right. What the form does not ask, the roots, a cut bud
     * and the cause, stays as it is.
     */
    static LineSheet correct(Journal journal, Outcome written) {
        Pot pot = journal.pots().get(written.pot());
        String variety = written.variety()
                .map(of -> " '" + journal.varieties().get(of).name() + "'")
                .orElse("");
        return LineSheet.of(
                        "Correct the outcome of " + pot.label() + variety,
                        "correct outcome " + written.id(),
                        pot.label() + variety + " outcome",
                        List.of(SCORE, FLOWERS, HEIGHT, GOOD, EVENNESS, SCENT, SIGNS, AGAIN, HOW, WRITTEN, NOTE))
                .filled(answers(journal, written))
                .over(new Edit.Put(bare(written)));
    }

    private static Answers answers(Journal journal, Outcome written) {
        Impression impression = written.impression();
        return Answers.NONE
                .with(SCORE.blank(), written.score().map(String::valueOf).orElse(""))
                .with(FLOWERS.blank(), written.flowers().map(String::valueOf).orElse(""))
                .with(
                        HEIGHT.blank(),
                        written.height()
                                .map(height ->
                                        Lengths.say(height, journal.settings().lengths()))
                                .orElse(""))
                .with(GOOD.blank(), good(written))
                .with(
                        EVENNESS.blank(),
                        impression.evenness() == Evenness.NOT_SAID
                                ? ""
                                : OutcomeTerms.EVENNESSES.say(impression.evenness()))
                .with(
                        SCENT.blank(),
                        impression.scent() == Scent.NOT_SAID ? "" : OutcomeTerms.SCENTS_FOUND.say(impression.scent()))
                .with(SIGNS.blank(), signs(written.failure()))
                .with(AGAIN.blank(), impression.again() == Again.NOT_SAID ? "" : Terms.AGAINS.say(impression.again()))
                .with(HOW.blank(), impression.how())
                .with(WRITTEN.blank(), Days.full(written.day()))
                .with(NOTE.blank(), written.note());
    }

    private static String good(Outcome written) {
        return Stream.of(written.firstGood(), written.lastGood())
                .flatMap(Optional<LocalDate>::stream)
                .map(Days::full)
                .collect(Collectors.joining(" to "));
    }

    private static String signs(Failure failure) {
        return failure.signs().stream().sorted().map(Terms.SIGNS::say).collect(Collectors.joining(", "));
    }

    /** What is left of it when every blank of the form is empty. */
    private static Outcome bare(Outcome written) {
        return Outcome.notJudged(written.id(), written.pot(), written.variety(), written.day())
                .withFailure(written.failure().withSigns(Set.of()));
    }
}
