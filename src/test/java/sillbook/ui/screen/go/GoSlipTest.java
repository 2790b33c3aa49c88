// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.go;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.model.Season;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.PageName;

class GoSlipTest {
    private final Desk desk = Desk.over(GrowersWinter.told()
            .of(2025)
            .pot("T4", "Tuesday Coat", "tulip/Double Early")
            .potted("5 oct", "cellar")
            .journal());

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    private Desk go(String name) {
        return desk.press("g").type(name).press("Enter");
    }

    private PageName open() {
        return desk.state().layers().open();
    }

    @Test
    void looksAsDrawn() {
        Golden.check("go", desk.press("g").type("t").state());
    }

    @Test
    void askedForNothingItSaysWhatItWants() {
        Golden.check("go-empty", desk.press("g").state());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "2", "3", "4", "7"})
    void aPotIsOpenedFromEveryPage(String page) {
        desk.press(page);
        go("d1");

        assertThat(open()).isEqualTo(PageName.POTS);
        assertThat(desk.line(4)).contains("D1  'Lantern Row'");
        assertThat(desk.press("Esc").lines()).anyMatch(line -> line.startsWith("▸ » D1 "));
    }

    @Test
    void alsoFromACard() {
        desk.press("2", "Enter");

        assertThat(go("cellar").line(4)).contains("cellar");
        assertThat(desk.press("Esc").state().layers().over()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"inkwell,Inkwell", "INKW,Inkwell", "lane,Marrow Lane", "penny g,Penny Gloaming"})
    void aVarietyByAnyBeginningOfAWord(String typed, String name) {
        go(typed);

        assertThat(open()).isEqualTo(PageName.BULBS);
        assertThat(desk.line(4)).contains(name);
        assertThat(desk.press("Esc").lines()).anyMatch(line -> line.startsWith("▸") && line.contains(name));
    }

    @Test
    void aPlaceWithTheCursorThere() {
        go("fridge");

        assertThat(open()).isEqualTo(PageName.PLACES);
        assertThat(desk.line(4)).contains("garage fridge");
        assertThat(go("kitchen").press("Esc").lines()).anyMatch(line -> line.startsWith("▸   kitchen sill"));
    }

    @Test
    void aDayInTheDiary() {
        go("4 jan");

        assertThat(open()).isEqualTo(PageName.DIARY);
        assertThat(desk.lines()).anyMatch(line -> line.startsWith("▸ Mon  4 Jan"));
    }

    @Test
    void aLabelOfAnotherSeasonTakesTheRulerThere() {
        desk.press("g").type("t4");
        assertThat(all(desk)).contains("1 of 2").contains("season 2025-26");

        desk.press("Down", "Enter");

        assertThat(desk.state().timescale().season()).isEqualTo(new Season(2025));
        assertThat(desk.line(4)).contains("'Tuesday Coat'");
    }

    @Test
    void whatIsNamedWholeComesFirst() {
        desk.press("g").type("h2");

        assertThat(desk.lines()).anyMatch(line -> line.startsWith("  ▸ H2 "));
    }

    @Test
    void tabCompletesTheName() {
        desk.press("g").type("marr").press("Tab");

        assertThat(all(desk)).contains("    Marrow Lane___");
        assertThat(desk.press("Enter").line(4)).contains("'Marrow Lane'");
    }

    @Test
    void aBatchIsOneGoalAndEachOfItsPotsStillHasItsOwn() {
        desk.press("g").type("h");
        assertThat(desk.lines()).anyMatch(line -> line.contains("H5-H22")).noneMatch(line -> line.contains(" H12 "));
        desk.type("12");
        assertThat(desk.lines()).anyMatch(line -> line.startsWith("  ▸ H12 "));
    }

    @Test
    void theListScrollsWithItsCursor() {
        desk.press("g").type("t");
        for (int i = 0; i < 30; i++) {
            desk.press("Down");
        }

        assertThat(desk.line(21)).contains(" 10 of 10 ");
        assertThat(desk.press("Up").line(21)).contains(" 9 of 10 ");
    }

    @Test
    void whatIsNotThereIsSaid() {
        desk.press("g").type("zz");

        assertThat(desk.line(22)).isEqualTo(" No label, variety, place or day begins with 'zz'.");
        assertThat(desk.press("Enter").line(22)).isEqualTo(" ! Go is off just now: there is no such name.");
        assertThat(desk.press("Esc").state().layers().over()).isEmpty();
    }

    @Test
    void pastedTextIsTyped() {
        desk.press("g").tell(new Message.Pasted("trench\n")).press("Enter");

        assertThat(desk.line(4)).contains("trench");
    }

    @Test
    void itsCursorStaysInTheListWhenPotsGo() {
        desk.press("g").type("h").press("Down", "Down", "Down");
        desk.tell(new Message.Changed(Desk.over(winter().journal()).state().shown()));

        assertThat(desk.line(22)).contains("No label");
    }
}
