// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.List;
import sillbook.ui.draw.Size;
import sillbook.words.Counts;

/** Asks whether to leave the program. */
public record Quitting() implements Layer {

    @Override
    public Look look(State state, Size body) {
        return Look.foot(Aside.of(sentence(state))).withFoot(Action.AGREE, Action.BACK);
    }

    @Override
    public List<Offer> offers(State state) {
        return List.of(
                Offer.of(Action.AGREE, () -> Step.to(state, new Effect.Quit())).saying("leave"));
    }

    private static String sentence(State state) {
        List<String> unkept = state.unkept();
        String but = unkept.isEmpty() ? "" : " but " + Counts.and(unkept) + "; that would be lost";
        return "All is kept" + but + ". Enter leaves, Esc stays.";
    }
}
