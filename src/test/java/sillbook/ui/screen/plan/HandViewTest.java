// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.model.Edit;
import sillbook.model.Journal;
import sillbook.model.Purchase;
import sillbook.model.SeasonPlan;
import sillbook.plan.Seeking;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Snapshot;

class HandViewTest {
    private final Desk desk = Desk.over(ComingWinter.bulbs()).press("5");

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    private SeasonPlan kept(Desk with) {
        return SeasonPlan.of(ComingWinter.SEASON, with.state().journal()).get(0);
    }

    // What stands there

    @Test
    void looksAsDrawn() {
        Golden.check("plan-by-hand", desk.state());
        Golden.check("plan-by-hand", desk.state(), new Size(120, 40));
    }

    @Test
    void theFieldsLookAsDrawn() {
        Golden.check("plan-rule", desk.press("Tab", "Tab").type("x").state(), new Size(80, 24));
    }

    @Test
    void itIsOfTheSeasonBulbsAreChosenForAndTheOtherPagesStayInTheirs() {
        assertThat(desk.line(3)).startsWith(" season 2027-28");
        assertThat(desk.press("2").line(3)).startsWith(" season 2026-27");
        assertThat(desk.press("5", "<").line(3)).startsWith(" season 2026-27");
        assertThat(desk.press(">", ">").line(3)).startsWith(" season 2028-29");
    }

    @Test
    void withoutBulbsItSaysWhatIsMissing() {
        Desk bare = Desk.over(ComingWinter.places()).press("5");
        Golden.check("plan-nothing", bare.state(), new Size(80, 24));
        assertThat(bare.line(7)).contains("Nothing to plan with: no bulbs of 2027-28 are bought or chosen.");
    }

    @Test
    void withoutAPotItAsksForTheRule() {
        desk.press("Tab", "Tab", "Tab", "Ctrl-U")
                .type("20 jun")
                .press("Tab", "Ctrl-U")
                .type("30 jun")
                .press("Enter");
        assertThat(desk.line(7)).contains("Nothing planned yet. Say how many pots, every how many days; V is");
        assertThat(desk.line(21)).contains("by hand, 0 pots");
    }

    @Test
    void whatIsNotByTheRuleSaysSoUntilTheRuleIsTyped() {
        assertThat(desk.press("+").line(4)).isEqualTo(" Not by the rule: 2 pots every 12 days, from 23 Dec to 2 Mar");
        assertThat(desk.press("-").line(4)).startsWith(" Bring in 2____ pots every 12___ days");
        assertThat(desk.press("+", "Tab").line(4)).startsWith(" Bring in 2____ pots every 12___ days");
    }

    @Test
    void whatWasFoundIsNotByTheRule() {
        desk.press("b").tell(new Message.Sought(1, new Seeking.Best(RibbonViewTest.found(desk, 8, true))));
        assertThat(desk.line(4)).isEqualTo(" As found, not by the rule: 2 pots every 12 days, from 23 Dec to 2 Mar");
    }

    @Test
    void aDayInAnotherSeasonHasItsYear() {
        for (int week = 0; week < 60; week++) {
            desk.press("]");
        }
        assertThat(desk.line(6))
                .startsWith("▸   Fri 30 Jun   'Pewter Choir' x3")
                .endsWith("     21 Jul 2028");
        assertThat(desk.line(23)).contains("comes in Fri 30 Jun, flowers about 21 Jul 2028.");
    }

    @Test
    void tooSmallAWindowSaysSo() {
        assertThat(all(desk.resize(60, 12)))
                .contains("Sillbook wants a little more room:")
                .contains("80 columns by 24 lines; this is 60 by 12.");
    }

    // The rule

    @Test
    void aFigureOfTheRuleIsFollowedAtOnce() {
        assertThat(desk.line(21)).contains("by hand, 12 pots");
        desk.press("Tab", "Ctrl-U").type("1");
        assertThat(desk.line(4)).startsWith(" Bring in 1____ pots every 12___ days, from 23 dec______ to 2 mar");
        assertThat(desk.line(21)).contains("by hand, 6 pots");
        assertThat(desk.press("Enter").line(24)).contains("+ - a day");
    }

    @Test
    void aDayIsSoughtInTheSeason() {
        desk.press("Tab", "Tab", "Tab", "Ctrl-U").type("1 jan").press("Enter");
        assertThat(desk.line(4)).contains("from 1 jan");
        assertThat(desk.line(6)).startsWith("▸   Sat  1 Jan");
    }

    @Test
    void whatMakesNoSenseIsSaidAndChangesNothing() {
        String pots = desk.line(6);
        desk.press("Tab", "Ctrl-U").type("0");
        assertThat(desk.line(23)).contains("'0' is no number of pots from 1 to 60");
        assertThat(desk.line(6)).isEqualTo(pots);
        assertThat(desk.press("Enter").line(22)).startsWith(" ! '0' is no number of pots");
        desk.press("Esc", "Tab", "Tab", "Ctrl-U").type("181");
        assertThat(desk.line(23)).contains("no number of days from 1 to 180");
        desk.press("Esc", "Tab", "Tab", "Tab", "Ctrl-U").type("1 jan 2040");
        assertThat(desk.line(23)).contains("'1 jan 2040' is not in this season, Thu 1 Jul 2027 to");
        desk.press("Ctrl-U").type("sometime");
        assertThat(desk.line(23)).contains("'sometime' is no day");
        desk.press("Ctrl-U").type("1 may");
        assertThat(desk.line(23)).contains("From 1 May to 2 Mar ends before it begins.");
        assertThat(desk.press("Esc").line(4)).as("as it made sense last").contains("from 1 jan");
    }

    @Test
    void tabGoesAroundTheFieldsAndPasteIsText() {
        desk.press("Tab", "Shift-Tab", "Ctrl-U");
        desk.tell(new Message.Pasted("15 feb"));
        assertThat(desk.press("Enter").line(4)).contains("to 15 feb");
        desk.tell(new Message.Pasted("nothing"));
        assertThat(desk.line(4)).contains("to 15 feb");
    }

    // By hand

    @Test
    void aPotIsMovedByADayOrAWeek() {
        desk.press("+");
        assertThat(desk.line(6)).startsWith("▸   Fri 24 Dec   'Pewter Choir' x3");
        assertThat(desk.line(23)).contains("a 'Pewter Choir' comes in Fri 24 Dec, flowers about 14 Jan.");
        assertThat(desk.press("]").line(6)).startsWith("▸ ! Fri 31 Dec");
        assertThat(desk.press("[", "-").line(6)).startsWith("▸   Thu 23 Dec");
    }

    @Test
    void aPotIsLeftOutAndAnotherPutIn() {
        desk.press("Delete");
        assertThat(desk.line(23)).contains("a 'Pewter Choir' is left out.");
        assertThat(desk.line(21)).contains("by hand, 11 pots");
        assertThat(desk.press("End", "Delete").line(21)).contains("10 pots");
        assertThat(desk.press("n").line(21)).contains("11 pots");
    }

    @Test
    void withNothingLeftToPutInItSaysSo() {
        desk.press("Tab", "Ctrl-U").type("60").press("Enter", "End");
        assertThat(desk.press("n").line(22)).startsWith(" ! No bulbs are left that can come in on");
    }

    // Keeping

    @Test
    void kKeepsWhatIsShownUnderTheNextLetter() {
        desk.press("+", "k").kept();
        assertThat(desk.line(21)).contains("plan A of 1, 12 pots");
        assertThat(kept(desk).pots()).hasSize(12);
        assertThat(desk.press("k").line(22)).contains("plan A is kept as it stands here");
        assertThat(desk.press("+").line(21)).contains("by hand, 12 pots");
        assertThat(desk.press("k").kept().line(21)).contains("plan B of 2, 12 pots");
    }

    @Test
    void whatIsAKeptPlanAgainIsThatPlan() {
        desk.press("k").kept().press("+");
        assertThat(desk.line(21)).contains("by hand, 12 pots");
        assertThat(desk.press("-").line(21)).contains("plan A of 1, 12 pots");
        assertThat(desk.press("k").line(22)).contains("plan A is kept as it stands here");
        assertThat(all(desk.press("p"))).contains("+ A").doesNotContain("not kept yet");
    }

    @Test
    void whoLeavesIsToldWhatIsNotKept() {
        assertThat(desk.press("q").line(22)).isEqualTo(" All is kept. Enter leaves, Esc stays.");
        desk.press("Esc", "+", ">", "Tab").type("3").press("Enter", "1", "q");
        assertThat(desk.line(22) + desk.line(23))
                .isEqualTo(
                        " All is kept but the plans of 2027-28 and 2028-29 as drawn; that would be lost. Enter leaves, Esc stays.");
        assertThat(desk.press("Esc").resize(60, 12).press("q").effects())
                .as("nor is it lost unasked where nothing can be seen")
                .isEmpty();
        desk.resize(80, 24).press("Esc", "5", "<", "k").kept();
        assertThat(desk.press("q").line(22)).startsWith(" All is kept but the plan of 2028-29 as drawn;");
    }

    @Test
    void whatIsKeptAndAdoptedIsKept() {
        desk.press("+", "k").kept().press("t", "Enter").kept();
        assertThat(desk.line(21)).contains("adopted");
        assertThat(desk.press("q").line(22)).startsWith(" All is kept. Enter");
    }

    @Test
    void theCursorStaysOnTheListInAnotherSeason() {
        desk.press("End");
        assertThat(desk.line(6)).doesNotStartWith("▸");
        assertThat(desk.press("<", ">").line(6)).startsWith("▸");
    }

    @Test
    void takenBackWhatWasKeptIsStillThere() {
        Journal before = desk.state().journal();
        desk.press("+", "k").kept();
        desk.tell(new Message.Kept("Taken back.", true, new Snapshot(before, Desk.TODAY, 0, 1)));
        assertThat(desk.line(21)).contains("by hand, 12 pots");
        assertThat(desk.line(6)).startsWith("▸   Fri 24 Dec");
    }

    @Test
    void whatGoesFromTheJournalGoesFromWhatIsNotKept() {
        desk.press("+", "Down");
        Purchase first = desk.state().journal().purchases().all().iterator().next();
        Journal after = desk.state().journal().with(List.of(new Edit.Remove(first)));
        desk.tell(new Message.Changed(new Snapshot(after, Desk.TODAY, 0, 0)));
        assertThat(desk.line(21)).contains("by hand, 11 pots");
        assertThat(desk.line(6)).contains("'Penny Gloaming'");
    }
}
