// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.choosing;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import sillbook.change.Choose;
import sillbook.change.OrderChosen;
import sillbook.model.Choice;
import sillbook.model.Choice.Chosen;
import sillbook.model.Choice.Mark;
import sillbook.model.Choice.SetAside;
import sillbook.model.Choice.Undecided;
import sillbook.model.Journal;
import sillbook.model.Purchase;
import sillbook.model.Settings;
import sillbook.ui.screen.Copy;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.State;

class ChoosingPageTest {
    private final Desk desk = choosing(GrowersChoice.told());

    private static Desk choosing(Journal journal) {
        return Desk.over(journal).press("6", "v", "c");
    }

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    private static String cursorLine(Desk desk) {
        return desk.lines().stream()
                .filter(line -> line.startsWith("▸"))
                .findFirst()
                .orElse("");
    }

    private static Desk on(Desk desk, String variety) {
        desk.press("Home");
        for (int i = 0; i < 20 && !cursorLine(desk).contains(variety); i++) {
            desk.press("Down");
        }
        assertThat(cursorLine(desk)).contains(variety);
        return desk;
    }

    private static Effect marks(Desk desk, String variety, Mark mark) {
        return new Effect.CarryOut(
                new Choose(GrowersChoice.find(desk.state().journal(), variety).id(), GrowersChoice.COMING, mark));
    }

    // What stands there

    @Test
    void looksAsDrawn() {
        Golden.check("choosing", desk.state());
    }

    @Test
    void theHeadingSumsWhatIsChosen() {
        assertThat(desk.line(4)).startsWith(" Choosing   for 2027-28").endsWith("2 chosen, 19 bulbs, about 14.04");
        assertThat(choosing(GrowersChoice.unmarked()).line(4)).endsWith("nothing chosen");
    }

    @Test
    void aLineSaysHowManyHowGoodAndWhy() {
        assertThat(desk.line(7)).isEqualTo(" +  'Lantern Row'       10     4.5    ▪2  fills your gap of 20-27 Feb");
        assertThat(desk.line(13))
                .as("why it was set aside, and no score")
                .startsWith("  - 'Goose Errand'")
                .contains("no data     -  both pots leaned");
        assertThat(desk.line(12))
                .as("set aside a season ago, without a word")
                .startsWith("  - 'Ninepenny Hat'")
                .endsWith("failed twice, in the cellar only");
    }

    @Test
    void theFootHasWhatTheLineHasNoRoomFor() {
        assertThat(desk.press("Down").line(22)).startsWith(" 'Lantern Row'  Did well here 2 winters running.");
        assertThat(on(desk, "Marrow Lane").line(22) + desk.line(23))
                .contains("30 in hand; last paid 0.20 each;")
                .contains("for 2026-27    chosen, 12 bulbs.");
        assertThat(on(desk, "Goose Errand").line(22)).contains("Floppy, 2 winters");
    }

    @Test
    void whatNothingSpeaksForSaysSo() {
        Desk bare = choosing(winter().of(2025)
                .pot("X1", "Soot and Honey", "fritillary")
                .potted("5 oct")
                .journal());
        assertThat(bare.line(6)).isEqualTo("▸   'Soot and Honey'       no data     -");
        assertThat(bare.line(22)).contains("No purchase, no price and no other reason is in the book.");
    }

    // Marks

    @Test
    void cChoosesAsManyAsUsualAndAgainLeavesItOpen() {
        on(desk, "Marrow Lane").press("c");
        assertThat(desk.effects()).containsExactly(marks(desk, "Marrow Lane", new Chosen(12)));
        assertThat(cursorLine(desk.kept())).startsWith("▸+  'Marrow Lane'       12");
        assertThat(desk.line(23)).contains("'Marrow Lane' chosen for 2027-28, 12 bulbs. U takes it back.");
        assertThat(desk.line(24)).contains("C undecided");

        assertThat(desk.press("c").effects()).containsExactly(marks(desk, "Marrow Lane", new Undecided()));
        assertThat(cursorLine(desk.kept())).startsWith("▸   'Marrow Lane'");
    }

    @Test
    void whatWasNeverGrownIsAskedForItsNumber() {
        Golden.check("choosing-how-many", on(desk, "Tin Starling").press("c").state());
        assertThat(desk.press("Enter").effects()).isEmpty();
        assertThat(all(desk)).contains("How many bulbs?");
        assertThat(desk.type("24").press("Enter").effects())
                .containsExactly(marks(desk, "Tin Starling", new Chosen(24)));
        assertThat(cursorLine(desk.kept())).startsWith("▸+  'Tin Starling'      24");
    }

    @Test
    void xSetsAsideForAReasonOrForNone() {
        on(desk, "Inkwell").press("x").type("too dear, and late (again)").press("Enter");
        assertThat(desk.effects()).containsExactly(marks(desk, "Inkwell", new SetAside("too dear, and late (again)")));
        assertThat(cursorLine(desk.kept())).startsWith("▸ - 'Inkwell'").endsWith("too dear, and late (again)");

        on(desk, "Tuesday Coat").press("x", "Enter");
        assertThat(desk.effects()).containsExactly(marks(desk, "Tuesday Coat", new SetAside("")));
    }

    @Test
    void theSlipForTheReasonLooksAsDrawn() {
        Golden.check("choosing-set-aside", on(desk, "Inkwell").press("x").state());
    }

    @Test
    void xAgainLeavesItOpenAlsoOverAnEarlierSeasonsMark() {
        assertThat(on(desk, "Ninepenny Hat").press("x").effects())
                .containsExactly(marks(desk, "Ninepenny Hat", new Undecided()));
        assertThat(cursorLine(desk.kept())).startsWith("▸   'Ninepenny Hat'");
    }

    @Test
    void aMarkedLineStaysWhereItIsUntilThePageIsOpenedAnew() {
        on(desk, "Marrow Lane").press("c");
        assertThat(desk.kept().line(10)).startsWith("▸+  'Marrow Lane'");
        assertThat(desk.press("Down").line(11)).startsWith("▸");
        assertThat(desk.press("Esc", "v", "c").line(8)).startsWith(" +  'Marrow Lane'");
    }

    @Test
    void plusAndMinusMeanOneBulbAndBracketsFive() {
        assertThat(desk.press("+").effects()).containsExactly(marks(desk, "Inkwell", new Chosen(10)));
        assertThat(desk.kept().press("]").effects()).containsExactly(marks(desk, "Inkwell", new Chosen(15)));
        assertThat(desk.kept().press("-").effects()).containsExactly(marks(desk, "Inkwell", new Chosen(14)));
        assertThat(desk.kept().press("[").effects()).containsExactly(marks(desk, "Inkwell", new Chosen(9)));
        assertThat(desk.kept().line(4)).endsWith("2 chosen, 19 bulbs, about 14.04");
    }

    @Test
    void fewerThanOneBulbIsNoNumber() {
        desk.press("[");
        desk.kept();
        assertThat(desk.press("[").effects()).isEmpty();
        assertThat(desk.line(22)).contains("Fewer than 1 is none: C takes the mark off, X sets it aside.");
        assertThat(on(desk, "Tuesday Coat").press("+").effects()).isEmpty();
        assertThat(desk.line(22)).contains("How many is off just now: it is not chosen, C chooses it.");
    }

    // Handing on

    @Test
    void whatIsChosenIsHandedOnInOneStepAndOnlyOnce() {
        assertThat(desk.press("h").effects())
                .containsExactly(new Effect.CarryOut(new OrderChosen(GrowersChoice.COMING)));
        assertThat(desk.kept().line(23))
                .contains("19 bulbs of 2 chosen varieties to order for 2027-28. U takes it back.");
        assertThat(all(desk)).contains("All that is chosen is to order, ordered or in hand.");
        assertThat(all(choosing(desk.state().journal())).replaceAll("\\s+", " "))
                .contains("9 in hand; 9 to order or ordered; last paid 1.06 each.");
        assertThat(desk.press("h").effects()).isEmpty();
        assertThat(desk.line(22)).contains("Hand on is off just now: all that is chosen is to order");

        assertThat(all(desk.press("4", "v", "p"))).containsPattern("'Lantern Row' +10 +\\? +to order");
    }

    @Test
    void onlyWhatIsMissingIsHandedOnLater() {
        desk.press("h");
        desk.kept().press("+");
        desk.kept();
        assertThat(all(desk)).contains("Not yet to order: 1 bulb of 'Inkwell'; H hands them on.");
        desk.press("h");
        assertThat(desk.kept().state().journal().purchases().all())
                .filteredOn(purchase -> purchase.state() == Purchase.State.TO_ORDER)
                .extracting(Purchase::count)
                .containsExactlyInAnyOrder(9, 10, 1);
    }

    @Test
    void muchIsAskedAboutBefore() {
        on(desk, "Tin Starling").press("c").type("90").press("Enter");
        Golden.check("choosing-order", desk.kept().press("h").state());
        assertThat(desk.effects()).isEmpty();
        assertThat(desk.press("Enter").effects())
                .containsExactly(new Effect.CarryOut(new OrderChosen(GrowersChoice.COMING)));
        assertThat(desk.kept().line(23)).contains("109 bulbs of 3 chosen varieties to order");
        assertThat(desk.line(4)).startsWith(" Choosing");
    }

    @Test
    void moreVarietiesThanFitAreCounted() {
        Journal many = GrowersChoice.unmarked().with(GrowersChoice.novelties(20, 10));
        Desk asked = choosing(many).press("h");
        assertThat(all(asked)).contains("and 8 more").contains("200 bulbs of 20 varieties, one purchase for each.");
    }

    @Test
    void withNothingChosenThereIsNothingToHandOn() {
        Desk none = choosing(GrowersChoice.unmarked());
        assertThat(all(none)).doesNotContain("to order");
        assertThat(none.press("h").line(22)).contains("nothing is chosen, C chooses");
    }

    // Around it

    @Test
    void whyNamesEachReasonAndWhatItRestsOn() {
        Golden.check("choosing-why", desk.press("w").state());
        assertThat(all(desk)).contains("plain mean        of 2 scored pots                          4.50");
    }

    @Test
    void enterOpensTheVarietysCard() {
        assertThat(all(desk.press("Down", "Enter"))).contains("'Lantern Row'  daffodil 6");
        assertThat(desk.press("Esc").line(7)).startsWith("▸+  'Lantern Row'");
    }

    @Test
    void findingLooksInNamesKindsAndReasons() {
        assertThat(all(desk.press("f").type("gap").press("Enter")))
                .contains("'Lantern Row'")
                .doesNotContain("'Inkwell' ");
        assertThat(desk.press("c").effects()).containsExactly(marks(desk, "Lantern Row", new Undecided()));
    }

    @Test
    void aVarietyWrittenMeanwhileStandsLast() {
        Journal more = desk.state().journal().with(GrowersChoice.novelties(1, 5));
        desk.tell(new Message.Changed(Desk.over(more).state().shown()));
        assertThat(desk.line(14)).startsWith(" +  'Novelty 1'");
        assertThat(all(desk.press("n"))).contains("New variety");
    }

    @Test
    void aJournalOfOneVariety() {
        Desk one = choosing(winter().of(2025)
                .pot("T1", "Marrow Lane", "tulip")
                .outcome("12 feb", 4)
                .journal());
        assertThat(one.line(4)).endsWith("nothing chosen");
        assertThat(one.line(6)).isEqualTo("▸   'Marrow Lane'              4.0    ▪1  one pot only: worth a second try");
    }

    @Test
    void anEmptyJournalSaysWhatWillStandHere() {
        Desk empty = choosing(Journal.empty(Settings.initial(ZoneOffset.UTC)));
        Golden.check("choosing-none", empty.state());
        assertThat(empty.press("c").line(22)).contains("no variety is under the cursor");
        assertThat(empty.press("+").line(22)).contains("there is no variety here");
        assertThat(empty.press("w").line(22)).contains("there is no variety here");
        assertThat(all(empty.press("n"))).contains("New variety");
    }

    @Test
    void aJournalThatIsReadOnlyKeepsItsMarks() {
        State state = desk.state();
        Desk locked = new Desk(new State(
                state.kit(),
                new Copy("winter.sillbook", false, true),
                state.shown(),
                state.almanac(),
                state.window(),
                state.layers(),
                state.picked(),
                state.timescale(),
                state.said(),
                state.layersAfterAnswer()));
        for (String key : new String[] {"c", "x", "+", "h", "n", "e"}) {
            assertThat(locked.press(key).line(22)).contains("the journal is read only");
        }
    }

    @Test
    void theMarkThatHoldsIsTheOneOfTheComingSeason() {
        Journal journal = desk.state().journal();
        assertThat(journal.choiceHolding(GrowersChoice.find(journal, "Inkwell").id(), GrowersChoice.COMING))
                .map(Choice::mark)
                .contains(new Chosen(9));
        assertThat(journal.choiceHolding(GrowersChoice.find(journal, "Inkwell").id(), GrowersChoice.COMING.previous()))
                .isEmpty();
    }
}
