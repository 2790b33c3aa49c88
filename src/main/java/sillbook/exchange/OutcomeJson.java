// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.Optional;
import sillbook.model.Length;
import sillbook.model.Outcome;
import sillbook.words.Terms;

/** How a pot did, as JSON. */
final class OutcomeJson {
    private OutcomeJson() {}

    static Fields of(Named named, Outcome outcome) {
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
                .text(
                        "again",
                        Optional.of(outcome.again())
                                .filter(again -> again != Outcome.Again.NOT_SAID)
                                .map(Terms.AGAINS::say))
                .written("note", outcome.note());
    }
}
