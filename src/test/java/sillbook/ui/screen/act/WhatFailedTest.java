// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.change.Hand;
import sillbook.change.Step;
import sillbook.model.Journal;
import sillbook.model.Place.Sort;
import sillbook.model.Pot;
import sillbook.season.Winter;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Snapshot;
import sillbook.ui.screen.entry.Entry;
import sillbook.ui.screen.failed.FailedPage;
import sillbook.ui.screen.form.Form;

/** The form of an outcome, in which a pot is said to have failed. */
class WhatFailedTest {
    private final Winter told = winter().place("trench", Sort.TRENCH)
            .pot("T8", "Ninepenny Hat", "tulip")
            .potted("19 oct", "trench")
            .pot("T9", "Ninepenny Hat", "tulip")
            .potted("19 oct", "trench");
    private final Desk desk = Desk.over(told.journal());

    private Desk outcome(String... labels) {
        List<Pot> pots = Arrays.stream(labels)
                .map(label -> told.journal().pots().get(told.id(label)))
                .toList();
        return desk.lay(Entry.outcome(pots, WhatFailed::after));
    }

    private Desk ended(String signs, String end) {
        return desk.press("Tab", "Tab", "Tab", "Tab", "Tab", "Tab")
                .type(signs)
                .press("Tab", "Tab", "Tab")
                .type(end)
                .press("Enter");
    }

    private void kept() {
        if (desk.effects().isEmpty()) {
            desk.press("Enter");
        }
        Effect.CarryOut asked = (Effect.CarryOut) desk.effects().get(0);
        Journal before = desk.state().journal();
        Hand hand = new Hand(Desk.TODAY.atStartOfDay(ZoneOffset.UTC).toInstant(), Desk.TODAY, Desk.counting());
        Step step = (Step) asked.change().on(before, hand);
        desk.tell(new Message.Kept("written", false, new Snapshot(before.with(step.edits()), Desk.TODAY, 1, 0)));
    }

    private String shown() {
        return String.join("\n", desk.lines());
    }

    @Test
    void onceItIsRecordedThePageOfItsCausesOpensWithItsSignsMarked() {
        outcome("T8");
        ended("rot", "failed");
        kept();

        assertThat(desk.state().top()).isInstanceOf(FailedPage.class);
        assertThat(shown()).contains("What went wrong?").contains("+ rot");
        assertThat(desk.press("Esc").state().layers().over()).isEmpty();
    }

    @Test
    void anyOtherEndGoesBackToWhereItCameFrom() {
        outcome("T8");
        ended("floppy", "done");
        kept();

        assertThat(desk.state().layers().over()).isEmpty();
    }

    @Test
    void ofSeveralPotsNoneIsSingledOut() {
        outcome("T8", "T9");
        ended("rot", "failed");
        kept();

        assertThat(desk.state().layers().over()).isEmpty();
    }

    @Test
    void aFormThatWasRefusedStaysOnTopAndThePageWaitsOnce() {
        outcome("T8");
        ended("rot", "failed");
        if (desk.effects().isEmpty()) {
            desk.press("Enter");
        }
        desk.tell(new Message.Refused("Not now."));
        assertThat(desk.state().top()).isInstanceOf(Form.class);

        desk.press("Enter");

        assertThat(desk.state().layers().over()).hasSize(2);
    }
}
