// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.util.List;
import java.util.Optional;
import sillbook.model.SeasonPlan.Rule;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.Said;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.words.Heard;

/** What can be done while the fields of the hand rule are typed in. */
record RuleOffers(PlanPage page, State state) {

    List<Offer> offers() {
        return List.of(
                Offer.byKey(Action.NEXT_BLANK, this::step).saying("next figure"),
                Offer.of(Action.RECORD, this::done).saying("to the pots"),
                Offer.of(Action.BACK, () -> Step.to(state.withTop(page.typing(Optional.empty()))))
                        .saying("to the pots"));
    }

    private Step step(Key key) {
        int by = key.equals(Keys.TAB) || key.equals(Keys.DOWN) ? 1 : -1;
        return Step.to(state.withTop(page.typing(page.typed().map(fields -> fields.step(by)))));
    }

    /** What makes no sense is said, and stays to be mended. */
    private Step done() {
        return read().complaint()
                .map(why -> Step.to(state.saying(Said.problem(why.sentence()))))
                .orElseGet(() -> Step.to(state.withTop(page.typing(Optional.empty()))));
    }

    private Heard<Rule> read() {
        Rule rule = page.drawn().plan(state).rule();
        return RuleTexts.in(state, page.drawn())
                .read(page.typed().map(RuleTyped::texts).orElseGet(() -> RuleTexts.of(rule)), rule);
    }

    /** Said while it is typed, where it makes no sense as it stands. */
    Optional<String> problem() {
        return read().complaint().map(why -> why.sentence());
    }
}
