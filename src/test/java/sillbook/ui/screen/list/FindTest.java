// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.list;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;
import sillbook.ui.screen.Layer.Reach;
import sillbook.ui.screen.Message;

/** Finding is one thing on every page; the diary reads more into its words, and has its own test for these. */
class FindTest {
    private final Desk desk = Desk.over(GrowersWinter.told().journal());

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    private Desk find(String page, String words) {
        return desk.press(page, "f").type(words);
    }

    @Test
    void looksAsDrawnOnPots() {
        Golden.check("pots-find", find("2", "cellar tulip").state());
    }

    @Test
    void looksAsDrawnOnToday() {
        Golden.check("today-find", find("1", "inkwell").press("Enter").state());
    }

    @Test
    void looksAsDrawnOnPlaces() {
        Golden.check("places-find", find("3", "sill").state());
    }

    @ParameterizedTest
    @CsvSource({
        "1, inkwell, 'Inkwell'",
        "1, porch, 'Marrow Lane'",
        "2, INKWÉLL, 'Inkwell'",
        "2, trench snowdrop, 'Thimble Post'",
        "2, in bloom amaryllis, 'Umbrella Street'",
        "3, warm sill kitchen, kitchen sill",
        "4, grape, 'Night Marbles'",
        "4, mar lan, 'Marrow Lane'",
        "7, snowdrop, 'Thimble Post'",
    })
    void anyWordsInAnyOrderWithoutAccentsOrCase(String page, String words, String found) {
        find(page, words).press("Enter");

        assertThat(all(desk)).contains(found.replace("'", ""));
        assertThat(desk.line(4)).startsWith(" Find   " + words);
    }

    @Test
    void saysHowManyAndHidesTheOthers() {
        int lines = desk.press("2").lines().size();
        find("2", "inkwell");

        assertThat(desk.line(4)).endsWith(" 2 of 19 lines");
        assertThat(all(desk)).contains("H2 ", "H5-H22").doesNotContain("'Marrow Lane'");
        assertThat(desk.lines()).hasSize(lines);
    }

    @Test
    void aLabelIsMeantWhole() {
        assertThat(find("2", "t1").line(4)).endsWith(" 1 of 19 lines");
    }

    @Test
    void aPotInABatchFindsTheBatch() {
        assertThat(all(find("2", "h11"))).contains("H5-H22").contains(" 1 of 19 lines");
    }

    @Test
    void headingsWithoutLinesGo() {
        assertThat(all(find("1", "marrow")))
                .contains(" Late ")
                .doesNotContain(" Checks")
                .doesNotContain("In bloom");
    }

    @Test
    void enterGoesToTheListWhereKeysActAgain() {
        find("2", "inkwell");
        assertThat(desk.state().top().reach()).isEqualTo(Reach.FIELD);

        desk.press("Enter", "Down", "m");

        assertThat(all(desk)).contains("Move ");
        assertThat(desk.press("Esc").line(4)).contains("inkwell");
    }

    @Test
    void escShowsAllAgain() {
        desk.press("2");
        String before = all(desk);

        assertThat(all(find("2", "inkwell").press("Esc"))).isEqualTo(before);
        assertThat(all(find("2", "inkwell").press("Enter", "Esc"))).isEqualTo(before);
    }

    @Test
    void whatIsNotThereIsSaid() {
        assertThat(all(find("2", "zebra"))).contains("No line here has 'zebra'. Esc shows all.");
        assertThat(desk.press("Enter", "Enter").line(22)).contains("off just now");
    }

    @Test
    void theFieldOpensWithWhatStoodInIt() {
        find("2", "ink").press("Enter", "f").type("well");

        assertThat(desk.line(4)).contains("inkwell");
    }

    @Test
    void pastedTextIsLookedFor() {
        desk.press("2", "f").tell(new Message.Pasted("marrow\nlane"));

        assertThat(desk.line(4)).contains("marrow lane").endsWith(" 1 of 19 lines");
        desk.press("Enter").tell(new Message.Pasted("x"));
        assertThat(desk.line(4)).contains("marrow lane_");
    }

    @Test
    void goingElsewhereLeavesTheFindOpen() {
        find("2", "inkwell").press("Enter", "1", "2");

        assertThat(desk.line(4)).contains("inkwell");
    }
}
