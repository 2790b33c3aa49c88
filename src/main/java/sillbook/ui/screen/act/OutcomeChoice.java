// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.List;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.ui.screen.State;
import sillbook.ui.screen.entry.Entry;
import sillbook.ui.screen.failed.FailedPage;
import sillbook.ui.screen.list.LetterChoice;

/** Asks whether to write how a pot did, or what went wrong with it. */
record OutcomeChoice(Id<Pot> pot) implements LetterChoice {
    @Override
    public String asks() {
        return "Write down";
    }

    @Override
    public List<Letter> letters(State beneath) {
        return List.of(
                Letter.to(
                        'o',
                        "outcome, done",
                        () -> beneath.laid(
                                Entry.outcome(List.of(beneath.journal().pots().get(pot)), WhatFailed::after))),
                Letter.to('f', "what failed", () -> beneath.laid(FailedPage.of(beneath, pot))));
    }
}
