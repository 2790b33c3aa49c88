// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.diary;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.change.CorrectEvent;
import sillbook.change.Together;
import sillbook.model.Happening.End;
import sillbook.model.Journal;
import sillbook.model.Place.Sort;
import sillbook.model.Settings;
import sillbook.ui.draw.Cells;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Screens;
import sillbook.ui.screen.bulbs.VarietyCard;
import sillbook.ui.screen.card.PotCard;
import sillbook.ui.screen.places.PlaceCard;
import sillbook.words.Shelves;

class DiaryPageTest {
    private static final Journal WRITTEN = Shelves.after(List.of(
                    "T1-T3 moist, roots, 10 jan",
                    "T4 frost, 10 jan, note two noses soft",
                    "note cellar: one mouse",
                    "note Marrow Lane: short in the cellar",
                    "note: Écru ribbons bought",
                    "note: frost all week, 6 jan",
                    "cellar 3 to 8 C, since 2 jan",
                    "bought 5 Inkwell, 6.50, from Harbour Seeds",
                    "D1 score 4, 3 of 5 flowers, 22 cm, good 1 jan to 9 jan, floppy, again yes, note stands well"))
            .journal();

    private final Desk desk = Desk.over(WRITTEN).press("7");

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    private static Desk winters() {
        return Desk.over(GrowersWinter.told()
                        .of(2024)
                        .pot("D3", "Lantern Row", "daffodil/6")
                        .potted("30 sep", "trench")
                        .jotted("3 jan", "the box by the wall is frost free")
                        .outcome("11 jan", 4)
                        .closed("11 jan", End.FINISHED)
                        .of(2025)
                        .pot("T2", "Ninepenny Hat", "tulip/Single Early")
                        .potted("~5 oct", "trench")
                        .jotted("20 jan", "frost, two stems short")
                        .outcome("12 feb", 2)
                        .closed("12 feb", End.FINISHED)
                        .journal())
                .press("7");
    }

    /** Moves down to the first line that has this text. */
    private static Desk on(Desk desk, String text) {
        desk.press("Home");
        for (int i = 0; i < 60 && !cursorLine(desk).contains(text); i++) {
            desk.press("Down");
        }
        assertThat(cursorLine(desk)).contains(text);
        return desk;
    }

    private static String cursorLine(Desk desk) {
        return desk.lines().stream()
                .filter(line -> line.startsWith("▸"))
                .findFirst()
                .orElse("");
    }

    @Test
    void looksAsDrawn() {
        Golden.check("diary", winters().state());
    }

    @Test
    void whatIsFoundIsUnderlinedAndCounted() {
        Golden.check(
                "diary-find", winters().press("f").type("frost").press("Enter").state());
    }

    @Test
    void whileItIsTypedTheCursorIsInTheField() {
        Golden.check(
                "diary-typing",
                winters().press("f").type("since 1 dec -inkwell tri").state());
    }

    @Test
    void withoutAnEntryItSaysWhichKeyMakesOne() {
        Desk empty = Desk.over(Journal.empty(Settings.initial(ZoneOffset.UTC))).press("7");

        Golden.check("diary-none", empty.state());
        assertThat(empty.press("Enter").line(22)).isEqualTo(" ! Open is off just now: there is no entry here.");
        assertThat(empty.press("e").line(22)).contains("there is no entry here");
        assertThat(all(empty.press("j"))).contains("Jot on this season");
    }

    @ParameterizedTest
    @CsvSource({
        "ECRU, '1 entry, 1 winter'",
        "mouse cellar, '1 entry, 1 winter'",
        "t4, '3 entries, 1 winter'",
        "2025-26, no entry",
        "outcome -floppy, no entry"
    })
    void findLooksForWordsLabelsSeasonsAndLeavesOut(String sought, String found) {
        assertThat(desk.press("f").type(sought).line(4)).endsWith(found);
    }

    @Test
    void findGoesThroughTheWinters() {
        Desk winters = winters().press("f").type("frost");

        assertThat(winters.line(4)).endsWith("2 entries, 2 winters");
        assertThat(winters.press("Ctrl-U").type("2025-26").line(4)).endsWith(", 1 winter");
    }

    @Test
    void theFoundWordIsUnderlinedALabelOnlyWhole() {
        Desk found = desk.press("f").type("t4 frost").press("Enter");
        Cells cells = Screens.view(found.state(), found.state().window().size()).cells();

        assertThat(found.line(6)).startsWith("▸ Sun 10 Jan 2027  T4   trouble seen: frost, two noses soft");
        assertThat(cells.styles().lines().skip(5).findFirst().orElseThrow())
                .startsWith("BBBBBBBBBBBBBBBBBBBUUBBBBBBBBBBBBBBBBBUUUUUBB");
    }

    @Test
    void nothingFoundSaysSo() {
        assertThat(desk.press("f").type("moss").line(8)).isEqualTo("        No entry has 'moss'. Esc shows all.");
    }

    @Test
    void escShowsAllAgain() {
        desk.press("f").type("mouse").press("Esc");

        assertThat(desk.line(4)).startsWith(" day");
        assertThat(desk.state().top()).isEqualTo(DiaryPage.OPEN);
        assertThat(desk.press("Esc").line(22)).contains("Back is off just now");
    }

    @Test
    void enterLeavesTheFieldAndFGoesBackIntoIt() {
        desk.press("f").type("mou").press("Enter", "f").type("se");

        assertThat(desk.line(4)).startsWith(" Find   mouse___");
    }

    @Test
    void pastedTextIsLookedFor() {
        assertThat(desk.press("f").tell(new Message.Pasted("one\nmouse")).line(4))
                .startsWith(" Find   one mouse_");
        assertThat(desk.press("Esc").tell(new Message.Pasted("mouse")).line(4)).startsWith(" day");
    }

    @Test
    void theDayWrittenIsShownWhereItIsAnother() {
        assertThat(all(desk)).containsPattern("Sun 10 Jan 2027  T4   trouble seen: frost, two noses soft +Tue 12 Jan");
        assertThat(on(desk, "two noses").line(23)).contains("On Sun 10 Jan 2027, written down Tue 12 Jan 2027.");
        assertThat(on(desk, "one mouse").line(22)).contains("written down the same day.");
    }

    @Test
    void anEntryWithoutRoomStandsWholeInTheFoot() {
        on(desk, "D1");

        assertThat(cursorLine(desk)).contains("..");
        assertThat(desk.line(22)).startsWith(" D1  outcome 4 of 5: 3 flowered");
        assertThat(desk.line(22)).endsWith("again: yes,");
        assertThat(desk.line(23)).isEqualTo("     \"stands well\"");
    }

    @Test
    void severalPotsAreNamedByTheirVarieties() {
        assertThat(on(winters(), "H5-H22 T4").line(22)).isEqualTo(" H5-H22 T4  19 pots of 'Inkwell', 'Marrow Lane'.");
        assertThat(all(winters().press("f").type("tulip shoot 3"))).contains("H5-H22 T4");
    }

    @Test
    void enterOpensThePotAtThisEntry() {
        on(desk, "two noses").press("Enter");

        assertThat(desk.state().top()).isInstanceOf(PotCard.class);
        assertThat(cursorLine(desk)).contains("two noses soft");
        assertThat(desk.press("Esc").state().top()).isInstanceOf(DiaryPage.class);
    }

    @Test
    void enterOnAnOutcomeOpensThePot() {
        assertThat(on(desk, "outcome 4").press("Enter").state().top()).isInstanceOf(PotCard.class);
    }

    @Test
    void enterOnAReadingOrANoteOfAPlaceOpensThePlace() {
        assertThat(on(desk, "(reading)").press("Enter").state().top()).isInstanceOf(PlaceCard.class);
        assertThat(on(desk.press("Esc"), "one mouse").press("Enter").state().top())
                .isInstanceOf(PlaceCard.class);
    }

    @Test
    void enterOnAVarietysNoteOrAPurchaseOpensTheVariety() {
        assertThat(on(desk, "short in").press("Enter").state().top()).isInstanceOf(VarietyCard.class);
        assertThat(on(desk.press("Esc"), "6.50").press("Enter").state().top()).isInstanceOf(VarietyCard.class);
        assertThat(all(on(desk.press("Esc"), "short in").press("j"))).contains("Jot on 'Marrow Lane'");
    }

    @Test
    void aNoteOfTheSeasonHasNothingToOpen() {
        assertThat(on(desk, "ribbons").press("Enter").line(22)).contains("it is about the whole season");
    }

    @Test
    void whatOneActWroteIsCorrectedTogether() {
        on(desk, "T1-T3").press("e");
        assertThat(all(desk)).contains("Correct an entry of T1-T3");

        desk.press("Ctrl-U").type("9 jan").press("Enter");
        assertThat(desk.effects())
                .singleElement()
                .isInstanceOfSatisfying(
                        Effect.CarryOut.class,
                        asked -> assertThat(asked.change())
                                .isInstanceOfSatisfying(
                                        Together.class,
                                        together -> assertThat(together.changes())
                                                .hasSize(3)
                                                .allMatch(CorrectEvent.class::isInstance)));
    }

    @Test
    void outcomesAndPurchasesHaveTheirOwnForms() {
        assertThat(all(on(desk, "outcome 4").press("e"))).contains("Correct the outcome of D1");
        assertThat(all(on(desk.press("Esc"), "6.50").press("e"))).contains("Correct the purchase of 'Inkwell'");
        assertThat(on(desk.press("Esc"), "(reading)").press("e").line(22)).contains("off just now");
    }

    @Test
    void aNoteIsAboutWhatTheEntryIsAbout() {
        assertThat(all(on(desk, "two noses").press("j"))).contains("Jot on T4");
        assertThat(all(on(desk.press("Esc"), "one mouse").press("j"))).contains("Jot on cellar");
    }

    @ParameterizedTest
    @CsvSource({"c, T1-T3, mouse", "j, mouse, 6.50", "o, outcome 4, mouse", "t, 6.50, mouse", "m, cold, mouse"})
    void viewShowsOneSortOfEntry(String letter, String shown, String hidden) {
        desk.press("v");
        assertThat(desk.line(22)).startsWith(" Show: A all, M moves, C checks, ");

        assertThat(all(desk.press(letter))).contains(shown).doesNotContain(hidden);
        assertThat(all(desk.press("Esc"))).contains("mouse");
    }

    @Test
    void aSortWithoutAnEntrySaysSo() {
        assertThat(all(desk.press("v", "b"))).contains("No bloom and care written yet. Esc shows all.");
    }

    @Test
    void theCursorKeepsItsEntryWhenMoreIsWrittenElsewhere() {
        Desk before = Desk.over(winter().place("cellar", Sort.CELLAR)
                        .pot("T1", "Tuesday Coat", "tulip")
                        .potted("1 oct", "cellar")
                        .jotted("3 dec", "dry")
                        .journal())
                .press("7", "Down");
        String line = cursorLine(before);
        Desk after = Desk.over(winter().place("cellar", Sort.CELLAR)
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .jotted("3 dec", "dry")
                .jotted("4 dec", "wet")
                .journal());

        before.tell(new Message.Changed(after.state().shown()));

        assertThat(cursorLine(before)).isEqualTo(line);
    }

    @Test
    void allOtherPagesAreADigitAway() {
        assertThat(desk.press("f").type("1").line(4)).startsWith(" Find   1_");
        assertThat(desk.press("Enter", "1").line(1)).contains("1 TODAY");
    }
}
