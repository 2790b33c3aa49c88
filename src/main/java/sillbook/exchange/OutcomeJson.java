// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.Optional;
import sillbook.model.Impression;
import sillbook.model.Impression.Evenness;
import sillbook.model.Length;
import sillbook.model.Outcome;
import sillbook.model.Outcome.Again;
import sillbook.model.Variety.Scent;
import sillbook.words.OutcomeTerms;
import sillbook.words.Terms;
import sillbook.words.Vocabulary;

/** How a pot did, as JSON. */
final class OutcomeJson {
    private OutcomeJson() {}

    static Fields of(Named named, Outcome outcome) {
        Impression impression = outcome.impression();
        return new Fields()
                .happened("day", outcome.day())
                .text("variety", outcome.variety().map(named::variety))
                .whole("score", outcome.score())
                .whole("flowers", outcome.flowers())
                .decimal("heightCm", outcome.height().map(Length::centimetres))
                .day("firstGood", outcome.firstGood())
                .day("lastGood", outcome.lastGood())
                .texts(
                        "signs",
                        outcome.failure().signs().stream()
                                .sorted()
                                .map(Terms.SIGNS::say)
                                .toList())
                .text("roots", outcome.failure().roots().map(Terms.FAILED_ROOTS::say))
                .written("cutBud", outcome.failure().cutBud())
                .text("cause", outcome.failure().cause().map(Terms.CAUSES::say))
                .text("evenness", said(Evenness.NOT_SAID, impression.evenness(), OutcomeTerms.EVENNESSES))
                .text("scent", said(Scent.NOT_SAID, impression.scent(), Terms.SCENTS))
                .text("again", said(Again.NOT_SAID, impression.again(), Terms.AGAINS))
                .written("how", impression.how())
                .written("note", outcome.note());
    }

    private static <T> Optional<String> said(T notSaid, T value, Vocabulary<T> words) {
        return Optional.of(value).filter(one -> !one.equals(notSaid)).map(words::say);
    }
}
