// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.list;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;

/** A choice by letter, asked in the foot: the order of a list, a rule to pick by. */
public interface LetterChoice extends Layer {

    /**
     * One thing to choose.
     *
     * @param letter in lower case
     * @param words what it chooses
     * @param then what choosing it does
     */
    record Letter(int letter, String words, Supplier<Step> then) {
        /** One that leads to a state. */
        public static Letter to(int letter, String words, Supplier<State> state) {
            return new Letter(letter, words, () -> Step.to(state.get()));
        }

        String shown() {
            return Character.toString(Character.toUpperCase(letter)) + " " + words;
        }
    }

    /** What the letters choose: {@code Order by}. */
    String asks();

    /**
     * The letters.
     *
     * @param beneath the state with this choice taken away again
     */
    List<Letter> letters(State beneath);

    @Override
    default Reach reach() {
        return Reach.FIELD;
    }

    @Override
    default Look look(State state, Size body) {
        List<String> shown = letters(state.lifted()).stream().map(Letter::shown).toList();
        return Look.foot(Aside.of(asks() + ": " + String.join(", ", shown) + "."))
                .withFoot(Action.BACK, Action.KEYS);
    }

    @Override
    default Optional<Step> type(State state, Key key) {
        if (!(key instanceof Key.Typed typed)) {
            return Optional.empty();
        }
        int pressed = Character.toLowerCase(typed.codePoint());
        Step chosen = letters(state.lifted()).stream()
                .filter(letter -> letter.letter() == pressed)
                .findFirst()
                .map(letter -> letter.then().get())
                .orElseGet(() -> Step.to(state));
        return Optional.of(chosen);
    }

    @Override
    default List<Offer> offers(State state) {
        return List.of();
    }
}
