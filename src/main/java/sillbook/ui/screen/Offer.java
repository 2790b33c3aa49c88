// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import sillbook.text.Initial;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.KeyLine;

/**
 * An action as it stands just now.
 *
 * @param words what the foot says it does here
 * @param off why it cannot be done now, as it stands in brackets: {@code nothing was taken back}; empty when it can
 * @param act what a key makes of the state it was offered in
 */
public record Offer(Action action, String words, Optional<String> off, Function<Key, Step> act) {

    /** An action with one meaning, whichever of its keys is pressed. */
    public static Offer of(Action action, Supplier<Step> act) {
        return byKey(action, key -> act.get());
    }

    /** An action that looks at which of its keys was pressed. */
    public static Offer byKey(Action action, Function<Key, Step> act) {
        return new Offer(action, action.words(), Optional.empty(), act);
    }

    /** The keys that move a cursor: each leaves the top layer as it is with the cursor elsewhere. */
    public static Offer moving(State state, Function<Key, Layer> moved) {
        return byKey(Action.MOVE_CURSOR, key -> Step.to(state.withTop(moved.apply(key))));
    }

    /** The same, in the foot by other words. */
    public Offer saying(String otherWords) {
        return new Offer(action, otherWords, off, act);
    }

    /** The same, off for that reason if there is one. */
    public Offer offIf(Optional<String> reason) {
        return off.isPresent() ? this : new Offer(action, words, reason, act);
    }

    public Offer offIf(boolean isOff, String reason) {
        return isOff ? offIf(Optional.of(reason)) : this;
    }

    public boolean isOn() {
        return off.isEmpty();
    }

    /** The sentence that answers its key while it is off. */
    String refusal(String reason) {
        return Initial.large(words) + " is off just now: " + reason + ".";
    }

    KeyLine.Hint hint(boolean lettersAreText) {
        return new KeyLine.Hint(action.keysInFoot(lettersAreText), words);
    }

    /** The offer a key means, letters large and small alike. */
    public static Optional<Offer> find(List<Offer> offers, Key key) {
        return offers.stream()
                .filter(offer -> offer.action().keys().contains(key.anyCase()))
                .findFirst();
    }

    static Optional<Offer> find(List<Offer> offers, Action action) {
        return offers.stream().filter(offer -> offer.action() == action).findFirst();
    }
}
