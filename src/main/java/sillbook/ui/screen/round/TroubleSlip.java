// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.round;

import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.ui.draw.Field;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.form.OneField;

/**
 * Asks what else is wrong with pots, or bulbs, of a round.
 *
 * @param labels what they are called
 */
record TroubleSlip(List<Id<?>> those, String labels, Field words) implements OneField {

    TroubleSlip {
        those = List.copyOf(those);
    }

    static TroubleSlip of(String called, List<Id<?>> those) {
        return new TroubleSlip(those, called, Field.EMPTY);
    }

    @Override
    public Optional<String> draftName() {
        return Optional.of("trouble of " + labels);
    }

    @Override
    public boolean isHalfDone() {
        return !words.isEmpty();
    }

    @Override
    public String title() {
        return "Trouble with " + labels;
    }

    @Override
    public String label() {
        return "What";
    }

    @Override
    public Field field() {
        return words;
    }

    @Override
    public TroubleSlip with(Field typed) {
        return new TroubleSlip(those, labels, typed);
    }

    @Override
    public String place() {
        return "nothing is kept yet";
    }

    @Override
    public Aside aside(State state) {
        return Aside.of("", "In a few words of your own, or none: leaning, grey spots on the leaves.", "");
    }

    @Override
    public List<Offer> offers(State state) {
        return List.of(Offer.of(Action.AGREE, () -> mark(state)).saying("mark"));
    }

    private Step mark(State state) {
        State beneath = state.droppingDraft().lifted();
        return Step.to(
                beneath.top() instanceof RoundPage round
                        ? beneath.withTop(round.troubled(those, words.text()))
                        : beneath);
    }
}
