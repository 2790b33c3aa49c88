// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import sillbook.model.Journal;
import sillbook.model.Settings;
import sillbook.season.past.By;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.Message;

class SeasonsPageTest {
    private final Desk desk = Desk.over(PastWinters.journal()).press("6");

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    @Test
    void looksAsDrawn() {
        Golden.check("seasons", desk.state());
    }

    @Test
    void thePotsBehindALineStandWithWhereTheyHadTheirCold() {
        Golden.check("seasons-pots", desk.press("Down", "Enter").state());
        assertThat(all(desk)).contains("'Marrow Lane'  3 winters, 6 pots: 5 well, 1 fair");
    }

    @Test
    void aPotBehindALineOpensItsCardAndEscLeadsBack() {
        assertThat(all(desk.press("Enter", "Enter"))).contains("T1").contains("outcome 5 of 5");
        assertThat(desk.press("Esc").line(4)).startsWith(" 'Tuesday Coat'  3 winters, 3 pots: all well");
        assertThat(desk.press("Esc").line(4)).startsWith(" What did well");
    }

    @Test
    void theBestComesFirstAndWhatNobodyJudgedLastWithoutAFigure() {
        assertThat(desk.line(6)).startsWith("▸   'Tuesday Coat'        3     3     .       .  ?");
        assertThat(desk.line(7)).startsWith("    'Marrow Lane'         6     5     1       .");
        assertThat(desk.line(8)).startsWith("    'Goose Errand'        4     .     1       3");
        assertThat(desk.line(9)).startsWith("    'Inkwell'             -  no data");
    }

    @Test
    void theFootSaysThatOnePlaceMayHaveDoneIt() {
        assertThat(desk.line(22) + desk.line(23))
                .contains("3 pots in 3 winters, all well; but all 3 had their cold in the")
                .contains("garage fridge");
        assertThat(desk.press("Down").line(22)).contains("5 well, 1 fair.");
        assertThat(desk.press("Down", "Down").line(22)).contains("1 pot, none of them judged yet.");
    }

    @Test
    void placesAreAViewOfTheirOwnAndAPlaceIsNotBlamedOnItself() {
        assertThat(all(desk.press("v"))).contains("W what did well").contains("P places of cold");
        assertThat(desk.press("p").line(4)).startsWith(" Places of cold");
        assertThat(desk.line(6)).startsWith("▸   garage fridge         6     6");
        assertThat(desk.line(22)).doesNotContain("may have done it");
    }

    @Test
    void whatNobodyWroteIsSaid() {
        assertThat(all(desk.press("v", "m"))).contains("No pot says which potting mix it had.");
        assertThat(all(desk.press("v", "u"))).contains("No pot says which purchase it had.");
        assertThat(desk.press("Enter").line(22)).contains("there is no outcome yet");
    }

    @Test
    void findingKeepsOnlyWhatHasTheWords() {
        assertThat(all(desk.press("f").type("goose").press("Enter")))
                .contains("'Goose Errand'")
                .doesNotContain("'Inkwell'");
        assertThat(all(desk.press("Esc"))).contains("'Inkwell'");
    }

    // Journals with little in them

    @Test
    void withoutAnOutcomeItSaysWhatWillStandHere() {
        Desk empty = Desk.over(Journal.empty(Settings.initial(ZoneOffset.UTC))).press("6");
        Golden.check("seasons-none", empty.state());
        assertThat(empty.press("Enter").line(22)).contains("The pots is off just now: there is no outcome yet.");
    }

    @Test
    void onePotAloneIsCountedAndSaysNothingOfItsPlace() {
        Desk one = Desk.over(winter().of(2025)
                        .pot("T1", "Marrow Lane", "tulip")
                        .outcome("12 feb", 4)
                        .journal())
                .press("6");
        assertThat(one.line(4)).isEqualTo(" What did well  1 winter, 1 pot: 1 well");
        assertThat(one.line(22)).contains("1 pot in 1 winter, 1 well.");
        assertThat(all(one.press("Enter"))).containsPattern("2025-26 T1 +\\? +\\? ");
    }

    @Test
    void theListKeepsItsLineWhenTheJournalChanges() {
        desk.press("Down", "Down");
        assertThat(desk.line(8)).startsWith("▸");
        assertThat(desk.press("Enter", "Down").line(7)).startsWith("▸   2024-25 D1");
    }

    @Test
    void whatItOpensWithIsWorkedOutAheadOnceAllIsRead() {
        Desk desk = Desk.over(PastWinters.journal());
        desk.tell(new Message.Changed(desk.state().shown()));

        assertThat(desk.effects()).singleElement().satisfies(effect -> ((Effect.ReadAhead) effect).work());
        assertThat(desk.state().almanac().tallied(By.VARIETY)).isNotEmpty();
        assertThat(desk.press("6").line(4)).startsWith(" What did well");
    }
}
