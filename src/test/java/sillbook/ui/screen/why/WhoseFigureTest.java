// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import sillbook.change.Hand;
import sillbook.change.Step;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.season.FiveTulips;
import sillbook.season.Winter;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Snapshot;
import sillbook.ui.screen.card.PotCard;

/** The handbook's figure asked for by a key, and the pots' own again. */
class WhoseFigureTest {
    private final Winter winter = FiveTulips.sixth(FiveTulips.told());
    private final Desk desk = Desk.over(winter.journal());
    private final Id<Pot> sixth = winter.id("T6");

    private Desk card() {
        return desk.lay(PotCard.of(desk.state(), sixth));
    }

    private String page() {
        return String.join("\n", desk.lines());
    }

    /** Carries out what the last key asked for, as the shell does. */
    private void carryOut() {
        assertThat(desk.effects()).hasSize(1);
        Effect.CarryOut asked = (Effect.CarryOut) desk.effects().get(0);
        Hand hand = new Hand(Instant.EPOCH, Desk.TODAY, Desk.counting());
        Step step = (Step) asked.change().on(desk.state().journal(), hand);
        Journal after = desk.state().journal().with(step.edits());
        desk.tell(new Message.Kept(step.name() + ".", false, new Snapshot(after, Desk.TODAY, 413, 0)));
    }

    private void whyOfTheFlower() {
        desk.press("w");
        for (int i = 0; i < 9 && !page().contains("Why weeks to bloom"); i++) {
            desk.press("Right");
        }
    }

    @Test
    void looksAsDrawn() {
        card();
        whyOfTheFlower();
        Golden.check("why-learnt", desk.state());
        desk.press("h");
        carryOut();
        Golden.check("why-handbooks", desk.state());
    }

    @Test
    void theHandbooksIsAskedForAndTheOwnComeBack() {
        card();
        String own = page();
        whyOfTheFlower();
        assertThat(page()).contains("by your 5 pots").contains("H handbook's");

        desk.press("h");
        carryOut();
        assertThat(page()).contains("not those of your 5 pots").contains("H your pots'");
        String handbooks = String.join("\n", desk.press("Esc").lines());
        assertThat(handbooks).isNotEqualTo(own).contains("handbook");

        whyOfTheFlower();
        desk.press("h");
        carryOut();
        assertThat(String.join("\n", desk.press("Esc").lines())
                        .lines()
                        .limit(20)
                        .toList())
                .isEqualTo(own.lines().limit(20).toList());
    }

    @Test
    void theCardDoesTheSameOnTheLineOfAStage() {
        card();
        for (int i = 0; i < 9 && !desk.line(24).contains("H handbook's"); i++) {
            desk.press("Down");
        }
        assertThat(desk.line(24)).contains("H handbook's");
        desk.press("h");
        carryOut();

        assertThat(desk.line(24)).contains("H your pots'");
        assertThat(desk.state().journal().ownFigures().all()).hasSize(1);
    }

    @Test
    void whatNoPotTaughtCannotBeAskedFor() {
        card().press("h");

        assertThat(desk.effects()).isEmpty();
        assertThat(page()).contains("no pot of yours taught a figure here");
    }
}
