// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.pots;

import java.util.List;
import java.util.stream.Stream;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.LetterChoice;

/** Asks for the order of the pots. */
record OrderChoice(PotsPage page) implements LetterChoice {
    @Override
    public String asks() {
        return "Order";
    }

    @Override
    public List<Letter> letters(State beneath) {
        return Stream.of(PotOrder.values())
                .map(order -> Letter.to(order.letter(), order.words(), () -> beneath.withTop(page.in(order))))
                .toList();
    }
}
