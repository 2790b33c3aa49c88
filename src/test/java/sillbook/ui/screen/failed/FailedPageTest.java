// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.failed;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.ZoneOffset;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sillbook.change.Hand;
import sillbook.change.Step;
import sillbook.handbook.Handbook;
import sillbook.model.Cause;
import sillbook.model.Failure;
import sillbook.model.Failure.Roots;
import sillbook.model.Failure.Sign;
import sillbook.model.Findings;
import sillbook.model.Findings.Trouble;
import sillbook.model.Journal;
import sillbook.model.Outcome;
import sillbook.model.Place.Sort;
import sillbook.season.Outlook;
import sillbook.season.Winter;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Snapshot;

class FailedPageTest {
    private final Winter told = told();
    private final Desk desk = open(told.journal());

    /** A tulip in a trench that froze, and others beside it. */
    private static Winter told() {
        return winter().place("fridge", Sort.FRIDGE)
                .place("trench", Sort.TRENCH)
                .read("29 dec", "3 jan", -1.4, 4)
                .noted("6 jan", "frost all week, more straw on the trench")
                .pot("T8", "Ninepenny Hat", "tulip")
                .potted("19 oct", "fridge")
                .moved("1 dec", "trench")
                .pot("T3", "Ninepenny Hat", "tulip")
                .potted("19 oct", "trench")
                .pot("S1", "Thimble Post", "squill")
                .potted("12 oct", "trench")
                .pot("H1", "Inkwell", "hyacinth")
                .potted("12 oct", "fridge")
                .then("T8")
                .saw(
                        "10 jan",
                        new Winter.Look(Findings.NOTHING.with(Trouble.FROST).withNote("two noses soft")));
    }

    private Desk open(Journal journal) {
        Desk over = Desk.over(journal);
        return over.lay(FailedPage.of(over.state(), told.id("T8")));
    }

    private Desk marked() {
        return desk.press("Left", "Left", "Space", "Down", "Right", "Space", "Down")
                .type("soft and grey to the base")
                .press("Enter");
    }

    private Outcome written() {
        assertThat(desk.effects()).hasSize(1);
        Effect.CarryOut asked = (Effect.CarryOut) desk.effects().get(0);
        Journal before = desk.state().journal();
        Hand hand = new Hand(Desk.TODAY.atStartOfDay(ZoneOffset.UTC).toInstant(), Desk.TODAY, Desk.counting());
        Step step = (Step) asked.change().on(before, hand);
        Journal after = before.with(step.edits());
        assertThat(Outlook.of(after, Handbook.standard(), Desk.TODAY)
                        .pot(told.id("T8"))
                        .life()
                        .isFailed())
                .isTrue();
        desk.tell(new Message.Kept("written", false, new Snapshot(after, Desk.TODAY, 1, 0)));
        return after.outcomes().all().iterator().next();
    }

    private String all() {
        return String.join("\n", desk.lines());
    }

    @Test
    void looksAsDrawn() {
        Golden.check("failed-pot", marked().state());
    }

    @Test
    void showsTheCausesWithTheirEntriesAndWhoStoodThroughTheSame() {
        marked();

        assertThat(all())
                .contains("+ rot")
                .contains("+ brown")
                .contains("frozen          Sun  3 Jan  trench: -1.4 C (reading)")
                .contains("Wed  6 Jan  jotted: frost all week, more straw on the trench")
                .contains("3 entries. The same nights stood there: S1 T3; check them.");
    }

    @Test
    void enterConfirmsTheCauseAndEndsItsWinterInOneStep() {
        marked().press("Enter");

        Failure failure = written().failure();
        assertThat(failure.signs()).isEqualTo(Set.of(Sign.ROT));
        assertThat(failure.roots()).contains(Roots.BROWN);
        assertThat(failure.cutBud()).isEqualTo("soft and grey to the base");
        assertThat(failure.cause()).contains(Cause.FROZEN);
    }

    @Test
    void theLastLineLeavesItOpen() {
        marked().press("End", "Enter");

        assertThat(written().failure().cause()).isEmpty();
    }

    @Test
    void whatWasWrittenIsMarkedWhenItIsOpenedAgain() {
        marked().press("Enter");
        written();

        Desk again = open(desk.state().journal());

        assertThat(String.join("\n", again.lines()))
                .contains("+ rot")
                .contains("+ brown")
                .contains("soft and grey");
        assertThat(again.state().unkept()).isEmpty();
    }

    @Test
    void theSameKeyTakesAMarkAway() {
        desk.press("Space", "Space", "Down", "Space", "Space");

        assertThat(all()).doesNotContain("+ leaves only").doesNotContain("+ none");
        assertThat(desk.state().unkept()).isEmpty();
    }

    @Test
    void aCauseNothingSpeaksForMayBeKnownAllTheSame() {
        marked().press("Down", "Down");

        assertThat(all()).contains("No entry speaks for it. You may know better.");
        assertThat(desk.press("Space").lines().toString()).contains("is off just now");
    }

    @Test
    void pastedTextIsTextOnlyWhereTextBelongs() {
        desk.tell(new Message.Pasted("grey"));
        assertThat(all()).doesNotContain("grey");

        desk.press("Down", "Down").tell(new Message.Pasted("grey"));
        assertThat(all()).contains("grey");
    }

    @Test
    void aPotThatIsGoneAsksForNothing() {
        desk.tell(new Message.Changed(new Snapshot(winter().journal(), Desk.TODAY, 1, 0)));

        assertThat(desk.press("Enter").effects()).isEmpty();
    }

    @Test
    void whyOnACauseShowsTheEntriesAndTheSourceOfEachPair() {
        marked().press("W");

        assertThat(all())
                .contains("Why frozen")
                .contains("Causes your own entries speak for")
                .contains("Wed  6 Jan  jotted: frost all week, more straw on the trench")
                .contains("fits it: rot, ▫ New Mexico State University")
                .contains("fits it: roots brown, common practice");
        Golden.check("why-cause", desk.state());
    }

    @Test
    void whyOnACauseThatNothingFitsSaysSo() {
        marked().press("End", "Up", "W");

        assertThat(all()).contains("nothing that was marked fits it or speaks against it");
        assertThat(desk.press("Esc").state().top()).isInstanceOf(FailedPage.class);
    }

    @Test
    void whyOnTheSignsExplainsTheFiguresOfThePot() {
        assertThat(String.join("\n", desk.press("W").lines())).contains("Why ").contains("weeks in");
    }
}
