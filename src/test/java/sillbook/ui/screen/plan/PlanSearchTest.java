// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.ui.screen.plan.RibbonViewTest.found;

import org.junit.jupiter.api.Test;
import sillbook.model.Journal;
import sillbook.plan.Seeking;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Snapshot;

/** What lies over the plan while the search goes on, and what a journal that changes makes of it. */
class PlanSearchTest {
    private final Desk desk = Desk.over(ComingWinter.wished()).press("5", "v");

    private void findsSoFar(int pots) {
        desk.tell(new Message.FoundSoFar(1, found(desk, pots, false)));
    }

    private void finds(int pots) {
        desk.tell(new Message.Sought(1, new Seeking.Best(found(desk, pots, true))));
    }

    private void changed(Journal journal) {
        desk.tell(new Message.Changed(new Snapshot(journal, Desk.TODAY, 0, 0)));
    }

    // What lies over it follows

    @Test
    void theCardTurnsToTheLastPotWhereFewerAreFound() {
        desk.press("v", "b", "End", "Enter");
        assertThat(desk.line(21)).contains("pot 12 of 12");
        findsSoFar(3);
        assertThat(desk.line(21)).contains("pot 3 of 3");
        finds(2);
        assertThat(desk.line(21)).contains("pot 2 of 2");
    }

    @Test
    void theCursorStaysOnThePlanAndWhatCameOfItIsStillSaid() {
        desk.press("b", "End");
        finds(8);
        assertThat(desk.line(23)).contains("The best there is: 7 days without bloom");
        assertThat(desk.press("Enter").line(21)).contains("pot 8 of 8");
    }

    @Test
    void plansSideBySideFollow() {
        desk.press("b", "p");
        findsSoFar(9);
        assertThat(desk.line(6)).startsWith("▸ + not kept yet ").contains(" 9 ");
        finds(4);
        assertThat(desk.line(6)).startsWith("▸ + not kept yet ").contains(" 4 ");
        assertThat(desk.press("Enter").line(21)).contains("as found, not kept, 4 pots");
    }

    @Test
    void suppliesAndWhyFollow() {
        desk.press("b", "i", "End");
        findsSoFar(4);
        assertThat(desk.line(22)).isEqualTo(" To buy  4 labels.");
        assertThat(desk.lines()).as("the cursor is on the list").anyMatch(line -> line.startsWith("▸"));

        String all = desk.press("Esc", "w", "End").line(21);
        findsSoFar(1);
        assertThat(desk.line(21)).contains("why, ").isNotEqualTo(all);
        assertThat(desk.lines()).as("the cursor is on the list").anyMatch(line -> line.startsWith("▸"));
    }

    // The hand waits

    @Test
    void noPlaceIsChosenMeanwhile() {
        desk.press("b", "Enter", "Down", "Enter");
        assertThat(desk.line(22)).contains("Stand it there is off just now: the search goes on, B stops it.");
    }

    @Test
    void noOtherPlanIsShownMeanwhile() {
        desk.press("k").kept().press("+", "b", "p", "Down", "Enter");
        assertThat(desk.line(22)).contains("Show it is off just now: the search goes on, B stops it.");
    }

    // The journal changes

    @Test
    void aJournalThatChangesStopsIt() {
        desk.press("b", "2");
        changed(ComingWinter.bulbs());
        assertThat(desk.effects()).first().isEqualTo(new Effect.StopSeeking(1));
        assertThat(desk.press("5").line(24)).doesNotContain("B stop");
        assertThat(desk.line(23)).contains("The search was stopped, since the journal changed; B looks anew.");
        assertThat(desk.press("Down").line(23)).doesNotContain("stopped");
        changed(ComingWinter.places());
        assertThat(desk.effects()).singleElement().isInstanceOf(Effect.ReadAhead.class);
    }

    @Test
    void whatAPlanIsNotMadeOfLetsItGoOn() {
        Journal before = desk.press("b").state().journal();
        desk.press("l").type("note: hello").press("Enter").kept();
        assertThat(desk.state().journal()).isNotEqualTo(before);
        assertThat(desk.effects()).isEmpty();
        assertThat(desk.line(24)).contains("B stop");
        changed(before);
        assertThat(desk.effects()).singleElement().isInstanceOf(Effect.ReadAhead.class);
    }

    // Stopped by hand, or looked for while another page is open

    @Test
    void whatCameOfOneThatIsOverIsToldNoMoreOnceTheJournalIsAnother() {
        desk.press("b");
        finds(8);
        assertThat(desk.line(23)).contains("The best there is");
        changed(ComingWinter.bulbs());
        assertThat(desk.line(22) + desk.line(23)).doesNotContain("The best there is");
    }

    @Test
    void stoppedItSaysHowFarItCame() {
        desk.press("b");
        findsSoFar(9);
        desk.press("b");
        assertThat(desk.line(22) + desk.line(23))
                .contains("Stopped; the best so far: 7 days without bloom, 9 pots; cannot be under 5")
                .endsWith("days.");
        assertThat(desk.press("b", "Esc").line(23)).contains("Stopped; nothing was found yet.");
    }

    @Test
    void onOtherPagesItSaysThatItIsLookedFor() {
        assertThat(desk.press("b").line(21)).doesNotContain("looking for");
        Message best = new Message.Sought(1, new Seeking.Best(found(desk, 8, true)));
        assertThat(desk.press("1").line(21)).contains("looking for the best plan");
        desk.tell(best);
        assertThat(desk.line(21)).doesNotContain("looking for");
    }

    @Test
    void soDoesWhatIsKeptHereButNotTheSameJournalReadAgain() {
        Journal same = desk.press("b").state().journal();
        changed(same);
        assertThat(desk.effects()).singleElement().isInstanceOf(Effect.ReadAhead.class);
        assertThat(desk.line(24)).contains("B stop");
        desk.tell(new Message.Kept("A wish is gone.", false, new Snapshot(ComingWinter.bulbs(), Desk.TODAY, 1, 0)));
        assertThat(desk.effects()).containsExactly(new Effect.StopSeeking(1));
        desk.press("b").tell(new Message.Kept("It is back.", true, new Snapshot(same, Desk.TODAY, 0, 1)));
        assertThat(desk.effects()).containsExactly(new Effect.StopSeeking(2));
    }
}
