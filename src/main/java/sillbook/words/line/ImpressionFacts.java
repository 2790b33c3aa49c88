// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.model.Impression;
import sillbook.model.Impression.Evenness;
import sillbook.model.Outcome.Again;
import sillbook.model.Variety.Scent;
import sillbook.text.Fold;
import sillbook.words.Complaint;
import sillbook.words.OutcomeTerms;
import sillbook.words.Terms;
import sillbook.words.Vocabulary;

/** What a line says of what a pot was like in flower, and of doing it again. */
record ImpressionFacts(Filled filled) {
    private static final Slot<Evenness> EVENNESS =
            Slot.one("word for the flowers", Senses.oneOf(OutcomeTerms.EVENNESSES));
    private static final Slot<Scent> SCENT = Slot.one("scent", answer("scent", OutcomeTerms.SCENTS_FOUND));
    private static final Slot<Again> AGAIN = Slot.one("answer to again", Senses.oneOf("again", Terms.AGAINS));

    /** Says by itself that it would be done differently. */
    private static final Slot<String> HOW =
            Slot.one("way to do it differently", Senses.phraseAfter("again differently", "differently"));

    static final List<Slot<?>> SLOTS = List.of(EVENNESS, SCENT, AGAIN, HOW);

    /** One of these after a word that leads to it; another word there is wrong, and is told what would be right. */
    private static <T> Sense<T> answer(String lead, Vocabulary<T> vocabulary) {
        Sense<T> wrong =
                Senses.longest((words, bench) -> Optional.of(Fold.of(words).split(" ", -1))
                        .filter(said -> said.length == 2 && said[0].equals(lead))
                        .map(said -> vocabulary.parse(said[1]))
                        .filter(heard -> heard.complaint().isPresent()));
        return Senses.any(List.of(Senses.oneOf(lead, vocabulary), wrong));
    }

    /** The impression with what is written put over what it was. */
    Impression over(Impression before) {
        Again again = again().orElse(before.again());
        return new Impression(
                filled.get(EVENNESS).orElse(before.evenness()),
                filled.get(SCENT).orElse(before.scent()),
                again,
                again == Again.DIFFERENTLY ? filled.get(HOW).orElse(before.how()) : "");
    }

    private Optional<Again> again() {
        return filled.get(AGAIN).or(() -> filled.get(HOW).map(how -> Again.DIFFERENTLY));
    }

    /** Another answer than differently, and yet a way to do it differently. */
    Optional<Complaint> atOdds() {
        return filled.get(AGAIN)
                .filter(again -> again != Again.DIFFERENTLY && filled.has(HOW))
                .map(again -> new Complaint(
                        "yes, no or differently",
                        "Again is " + Terms.AGAINS.say(again) + ", and then something would be done differently. "
                                + "Write again differently, or put the words in the note."));
    }

    void say(Draft draft) {
        filled.get(EVENNESS).ifPresent(even -> draft.means("flowers: " + OutcomeTerms.EVENNESSES.say(even)));
        filled.get(SCENT).ifPresent(scent -> draft.means(Terms.SCENTS.say(scent)));
        String how = filled.get(HOW).map(words -> ": " + words).orElse("");
        again().ifPresent(again -> draft.means("again: " + Terms.AGAINS.say(again) + how));
    }
}
