// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.season.Winter;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.Message;

class VarietyCardTest {
    private static final Journal JOURNAL = GrowersShelf.told();

    private static Desk card(String name) {
        return card(JOURNAL, name);
    }

    private static Desk card(Journal journal, String name) {
        return Desk.over(journal)
                .press("4")
                .lay(VarietyCard.of(GrowersShelf.find(journal, name).id()))
                .resize(80, 43);
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

    private static Desk on(Desk desk, String text) {
        desk.press("Home");
        for (int i = 0; i < 30 && !cursorLine(desk).contains(text); i++) {
            desk.press("Down");
        }
        assertThat(cursorLine(desk)).contains(text);
        return desk;
    }

    @Test
    void looksAsDrawn() {
        Golden.check("variety-card", card("Marrow Lane").state());
    }

    @Test
    void aKindThatNeedsNoCold() {
        Golden.check("variety-card-without-cold", card("Umbrella Street").state());
    }

    @Test
    void everyFigureSaysWhoseItIs() {
        assertThat(all(card("Marrow Lane")))
                .containsPattern("weeks of cold +▫\\d.* wk +handbook, tulip")
                .containsPattern("days in bloom +▪10 days +your own, for the variety");
    }

    @Test
    void whatNobodyPublishedIsNoData() {
        assertThat(all(card("Tin Starling"))).contains(" Record no data");
        assertThat(all(card(GrowersShelf.only("Bluejar", Kind.of("squill")), "Bluejar")))
                .containsPattern("height +no data");
    }

    @Test
    void theRecordIsToldWinterByWinter() {
        assertThat(all(card("Marrow Lane")))
                .contains(" Record ▪3.5 of 4 pots")
                .containsPattern("2025-26 +1 +3.0 ")
                .containsPattern("2024-25 +2 +3.5 ");
    }

    @Test
    void aWinterHasPotsScoreFlowersPlacesAndNotes() {
        Desk record = card(GrowersShelf.recorded(), "Marrow Lane");
        Golden.check("variety-card-record", record.state());
        assertThat(all(record))
                .containsPattern("2026-27 +1 +\\? +\\? +cellar")
                .containsPattern("2025-26 +2 +3\\.5 +9 of 10 +cellar, garage fridge +short in the cel\\.\\.")
                .containsPattern("2024-25 +1 +failed +\\? +\\?");
    }

    @Test
    void enterOnAWinterOpensItsPotsAmongAll() {
        Desk record = on(card(GrowersShelf.recorded(), "Marrow Lane"), "2025-26");
        assertThat(record.line(43)).contains("Enter the pots");
        assertThat(all(record.press("Enter"))).contains("'Marrow Lane'  2 winters, 3 pots: 1 well, 1 fair, 1 failed");
        assertThat(cursorLine(record)).contains("2025-26 T1");
        assertThat(all(record.press("Enter"))).contains("outcome 4 of 5");
        assertThat(cursorLine(record.press("Esc", "Esc"))).contains("2025-26");
    }

    @Test
    void whatNeverGrewHasNoPotsBehindIt() {
        Desk never = card("Tin Starling");
        assertThat(never.press("Enter").line(41)).contains("The pots is off just now: no pot of it grew yet.");
    }

    @Test
    void cautionsStandOnIt() {
        assertThat(all(card("Marrow Lane"))).contains(" Beware ▴ ").contains("(▫)");
    }

    @Test
    void aKindWithoutCautionsOfItsOwnHasThoseOfEveryBulb() {
        Journal own = GrowersShelf.only("Tuesday Coat", Kind.of("sill lily"));

        assertThat(all(card(own, "Tuesday Coat"))).contains(" Beware ▴ ");
    }

    @Test
    void correctIsTheVarietysOnItsOwnLine() {
        assertThat(all(card("Marrow Lane").press("e"))).contains("Correct 'Marrow Lane'");
    }

    @Test
    void onAFigureAnOwnOneIsTypedOverIt() {
        Desk figure = on(card("Marrow Lane"), "weeks to bloom");
        assertThat(figure.line(43)).contains("E own figure");

        figure.press("e");
        assertThat(all(figure)).contains("weeks to bloom of 'Marrow Lane'");

        figure.type("4").press("Enter");
        assertThat(figure.effects()).singleElement().isInstanceOf(Effect.CarryOut.class);
    }

    @Test
    void purchasesAndNotesAreCorrectedWhereTheyStand() {
        assertThat(all(on(card("Marrow Lane"), "20 Aug 2026").press("e")))
                .contains("Correct the purchase of 'Marrow Lane'");
        assertThat(all(on(card("Marrow Lane"), "short in the cellar").press("e")))
                .contains("Correct an entry");
    }

    @Test
    void aPurchaseIsToldWholeInTheFoot() {
        Desk bought = on(card("Marrow Lane"), "20 Aug 2026");

        assertThat(bought.line(41)).startsWith(" 'Marrow Lane'  30 bulbs, in hand; Thu 20 Aug 2026; 9.50;");
        assertThat(bought.line(42)).contains("cooled 6 weeks before");
    }

    @Test
    void itIsAPageOfItsOwnAndEscGoesBack() {
        assertThat(card("Marrow Lane").press("Esc").state().top()).isInstanceOf(BulbsPage.class);
        assertThat(card("Marrow Lane").press("1").line(1)).contains("1 TODAY");
    }

    @Test
    void aVarietyThatIsGoneLeavesAnEmptyCard() {
        Desk desk = card("Marrow Lane").press("Down");
        desk.tell(
                new Message.Changed(Desk.over(Winter.winter().journal()).state().shown()));

        assertThat(all(desk)).doesNotContain("Marrow Lane");
        assertThat(desk.press("e").line(41)).contains("there is nothing here yet");
    }
}
