// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.change.Remove;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Settings;
import sillbook.model.Variety;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.Message;

class BulbsPageTest {
    private final Desk desk = Desk.over(GrowersShelf.told()).press("4");

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    private static List<String> names(Desk desk) {
        return desk.lines().stream()
                .filter(line -> line.matches("[▸ ]   '.*"))
                .map(line -> line.substring(4, 22).strip())
                .toList();
    }

    @Test
    void looksAsDrawn() {
        Golden.check("bulbs", desk.press("Down").state());
    }

    @Test
    void whatSuitsForcingStandsByClass() {
        Golden.check("bulbs-forcing", desk.press("v", "s").state());
    }

    @Test
    void whatThePacketSaysStandsOverTheClass() {
        String forcing = all(desk.press("v", "s"));

        assertThat(forcing.indexOf(" Suit pots\n")).isLessThan(forcing.indexOf("'Marrow Lane'"));
        assertThat(forcing).contains(" Not for pots, by the packet or your mark\n    'Soot and Honey'");
        assertThat(forcing).contains(" Suit pots\n▸   'Inkwell'");
    }

    @Test
    void aClassNobodyWroteOfIsNeitherGoodNorBad() {
        assertThat(all(Desk.over(GrowersShelf.only("Goose Errand", new Kind("daffodil", "2")))
                        .press("4", "v", "s")))
                .contains(" Nothing published of the class\n");
        assertThat(all(Desk.over(GrowersShelf.only("Tuesday Coat", new Kind("tulip", "Single Late")))
                        .press("4", "v", "s")))
                .contains(" Tall for a pot\n");
    }

    @Test
    void purchasesAreAViewOfTheirOwn() {
        Golden.check("bulbs-purchases", desk.press("v", "p").state());
    }

    @Test
    void withoutAVarietyItSaysWhatBelongsHere() {
        Desk empty = Desk.over(Journal.empty(Settings.initial(ZoneOffset.UTC))).press("4");

        Golden.check("bulbs-none", empty.state());
        assertThat(empty.press("Enter").line(22)).isEqualTo(" ! Variety is off just now: there is no variety here.");
        assertThat(empty.press("e").line(22)).contains("there is nothing here yet");
        assertThat(all(empty.press("n"))).contains("New variety");
    }

    @Test
    void theScoresOfThreeWintersStandBesideTheirMean() {
        assertThat(desk.line(4)).contains("cm   in hand  23 24 25     mean pots");
        assertThat(desk.line(6)).startsWith("    'Marrow Lane'").contains(" 45        30   4  4  3     ▪3.5    4");
    }

    @Test
    void whatNobodyScoredHasNoDataNotZero() {
        assertThat(desk.line(8)).startsWith("    'Tin Starling'").endsWith(" ?         0   .  .  .  no data    -");
    }

    @Test
    void byRecordTheBestComesFirstAndNoDataLast() {
        assertThat(names(desk.press("v", "r")))
                .containsExactly(
                        "'Umbrella Street'", "'Inkwell'", "'Marrow Lane'", "'Soot and Honey'", "'Tin Starling'");
        assertThat(desk.line(21)).contains("by record, 1-5 of 5");
    }

    @Test
    void theCursorKeepsItsVarietyInAnotherView() {
        desk.press("Down", "v", "r");

        assertThat(desk.line(7)).startsWith("▸   'Marrow Lane'");
    }

    @Test
    void theFootTellsItsNeedsItsCautionAndTheLastNote() {
        desk.press("Down");

        assertThat(desk.line(22))
                .startsWith(" 'Marrow Lane'  Triumph suits pots (▫).")
                .contains("Needs ▫");
        assertThat(desk.line(23)).contains("▴ ").contains("Jotted: short in");
    }

    @Test
    void ownFiguresHaveTheirMark() {
        assertThat(all(desk.press("Down"))).contains("blooms ▪10");
    }

    @Test
    void enterOpensTheCardOfTheVarietyAlsoFromAPurchase() {
        assertThat(desk.press("Enter").state().top()).isInstanceOf(VarietyCard.class);
        assertThat(desk.press("Esc", "v", "p", "Enter").state().top()).isInstanceOf(VarietyCard.class);
    }

    @Test
    void correctMeansTheVarietyOrThePurchase() {
        assertThat(all(desk.press("e"))).contains("Correct 'Inkwell'");
        assertThat(all(desk.press("Esc", "v", "p", "e"))).contains("Correct the purchase of");
    }

    @Test
    void newOnesAreAKeyAway() {
        assertThat(all(desk.press("n"))).contains("New variety");
        assertThat(all(desk.press("Esc", "t"))).contains("New purchase").contains("'Inkwell'");
    }

    @Test
    void aNoteIsAboutTheVarietyOrThePurchase() {
        assertThat(all(desk.press("j"))).contains("Jot on 'Inkwell'");
        assertThat(all(desk.press("Esc", "v", "p", "j"))).contains("Jot on the purchase of '");
    }

    @Test
    void withoutAPurchaseThatViewSaysSo() {
        Desk none = Desk.over(GrowersShelf.only("Bluejar", Kind.of("squill"))).press("4", "v", "p");

        assertThat(none.line(7)).isEqualTo("        No purchase yet. T takes in the first.");
    }

    @Test
    void theCursorKeepsItsVarietyWhenOthersGo() {
        desk.press("Down");
        Journal journal = GrowersShelf.told();
        Desk fewer = Desk.over(GrowersShelf.only("Bluejar", Kind.of("squill")));
        desk.tell(new Message.Changed(Desk.over(journal).state().shown()));
        assertThat(desk.line(6)).startsWith("▸   'Marrow Lane'");

        desk.tell(new Message.Changed(fewer.state().shown()));
        assertThat(desk.line(5)).startsWith("▸   'Bluejar'");
    }

    @Test
    void aVarietyInUseStaysAndOneThatIsNotCanBeRemoved() {
        Desk used =
                Desk.over(winter().pot("T1", "Tuesday Coat", "tulip").journal()).press("4", "Delete");
        assertThat(String.join("\n", used.lines())).contains("still used by pot T1");

        Variety loose = Variety.of(new Id<>(9, 9), "Soot and Honey", Kind.of("tulip"));
        Desk unused = Desk.over(Journal.of(List.of(Settings.initial(ZoneOffset.UTC), loose)))
                .press("4", "Delete");
        assertThat(String.join("\n", unused.lines())).contains("Remove variety 'Soot and Honey'");
        assertThat(unused.press("Enter").effects()).containsExactly(new Effect.CarryOut(new Remove(loose)));
    }
}
