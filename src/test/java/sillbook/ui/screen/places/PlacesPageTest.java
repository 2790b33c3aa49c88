// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import sillbook.model.Journal;
import sillbook.model.Place.Hazard;
import sillbook.model.Place.Sort;
import sillbook.model.Settings;
import sillbook.season.Winter;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Role;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Screens;

class PlacesPageTest {
    private final Desk desk = Desk.over(GrowersWinter.told().journal()).press("3");

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    private static Desk over(Winter told) {
        return Desk.over(told.journal()).press("3");
    }

    @Test
    void looksAsDrawn() {
        Golden.check("places", desk.state());
    }

    @Test
    void aFullPlaceIsDrawnAsFarAsThereIsRoom() {
        Golden.check("places-cellar", desk.press("Down").state());
    }

    @Test
    void withoutAPlaceItSaysWhatBelongsHere() {
        Desk empty = Desk.over(Journal.empty(Settings.initial(ZoneOffset.UTC))).press("3");

        Golden.check("places-none", empty.state());
        assertThat(empty.press("Enter").line(22)).isEqualTo(" ! Place is off just now: there is no place yet.");
        assertThat(all(empty.press("n"))).contains("New place");
    }

    @Test
    void theTitleNamesThePageOnItsDigit() {
        assertThat(desk.line(1)).contains("3 PLACES");
    }

    @Test
    void whatStandsAtThePlaceFollowsTheCursor() {
        assertThat(desk.line(22)).contains("Round due since Mon 19 Oct. Stand here: H2 T1.");

        desk.press("Down", "Down");

        assertThat(desk.line(22)).startsWith(" trench  Stand here: C2 S1 T3 T8.");
        assertThat(all(desk))
                .contains("trench  Never read. T takes a reading, I reads a file.")
                .contains("T8  'Ninepenny Hat'");
    }

    @Test
    void aPlaceOverItsRoomSaysSo() {
        Desk over = over(winter().place("frame", Sort.COLD_FRAME)
                .room(1)
                .pots("T1-T2", "Tuesday Coat", "tulip")
                .potted("11 jan", "frame"));

        assertThat(over.line(5)).startsWith("▸ ! frame").contains("2 of  1");
        assertThat(over.line(23)).contains("Frame: 2 pots, room for 1.");
    }

    @Test
    void whereItIsNotColdNowIsSaid() {
        Desk late = over(winter().place("frame", Sort.COLD_FRAME)
                .cold("15 oct", "1 jan")
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("16 oct", "frame"));

        assertThat(late.line(5)).startsWith("▸ ☼ frame");
        assertThat(late.line(23)).contains("Frame: not cold now, 1 pot.");
    }

    @Test
    void aCautionHasItsSignAndItsSentence() {
        Desk fruit =
                over(winter().place("fridge", Sort.FRIDGE).beside(Hazard.FRUIT).place("loft", Sort.OTHER));

        assertThat(fruit.line(5)).startsWith("▸   fridge        ▴ ");
        assertThat(fruit.line(6)).doesNotContain("▴");
        assertThat(fruit.line(23)).contains("▴ ").contains("fruit");
    }

    @Test
    void aDueRoundHasASign() {
        Desk due = over(winter().place("cellar", Sort.CELLAR)
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("2 jan", "cellar"));

        assertThat(due.line(5)).startsWith("▸ » cellar");
        assertThat(due.line(22)).contains("Round due today.");
        assertThat(due.resize(120, 40).line(5)).contains("cold        2 Jan");
    }

    @Test
    void placesThatAreAskedForOtherwiseSayHow() {
        Desk ways = over(winter().place("trench", Sort.TRENCH)
                        .place("porch", Sort.PORCH)
                        .place("cellar", Sort.CELLAR))
                .resize(120, 40);

        assertThat(ways.line(5)).endsWith("  never");
        assertThat(ways.line(6)).endsWith("  daily");
        assertThat(ways.line(7)).doesNotContain("never").doesNotContain("daily");
    }

    @Test
    void whatStandsThereInTwoWeeksIsInRustWhereSomeOfItIsKeptForWantOfRoomElsewhere() {
        Cells picture = Screens.view(desk.state(), desk.state().window().size()).cells();

        assertThat(desk.line(7)).endsWith("4");
        assertThat(picture.style(76, 6)).isEqualTo(Style.RUST);
        assertThat(desk.line(10)).endsWith("6");
        assertThat(picture.style(76, 9)).isEqualTo(Style.INK);
    }

    @Test
    void anOverfullPlaceIsInRustNowAndInTwoWeeks() {
        Desk ledge = over(winter().place("ledge", Sort.WARM_SILL)
                .room(1)
                .pots("P1-P2", "Linen Parade", "paperwhite")
                .potted("10 jan", "ledge"));
        Cells picture =
                Screens.view(ledge.state(), ledge.state().window().size()).cells();

        assertThat(ledge.line(5)).endsWith("2 of  1        2");
        assertThat(picture.style(61, 4).role()).isEqualTo(Role.RUST);
        assertThat(picture.style(76, 4).role()).isEqualTo(Role.RUST);
    }

    @Test
    void potsThatFindNoRoomOnThePageAreCounted() {
        Winter full = winter().place("cellar", Sort.CELLAR);
        for (int i = 1; i <= 20; i++) {
            full.pot("T" + i, "Tuesday Coat", "tulip").potted("2 jan", "cellar");
        }

        assertThat(over(full).line(19)).startsWith("    T12 ");
        assertThat(over(full).line(20)).isEqualTo("    and 8 lines more");
    }

    @Test
    void theRoundOfThePlaceIsAKeyAway() {
        assertThat(all(desk.press("c"))).contains("garage fridge");
        assertThat(desk.state().top()).isNotInstanceOf(PlacesPage.class);
    }

    @Test
    void whereNothingStandsThereIsNoRound() {
        Desk bare = over(winter().place("cellar", Sort.CELLAR));

        assertThat(bare.press("c").line(22)).isEqualTo(" ! Round is off just now: nothing stands here.");
        assertThat(bare.press("a").line(22)).contains("no round is asked for here");
        assertThat(bare.press("w").line(22)).contains("nothing of it is reckoned");
    }

    @Test
    void whyExplainsTheDayOfTheRound() {
        assertThat(all(desk.press("w"))).contains("Why");
    }

    @Test
    void correctAndJotAreAboutThePlace() {
        assertThat(all(desk.press("e"))).contains("Correct garage fridge");
        assertThat(all(desk.press("Esc", "j"))).contains("Jot on garage fridge");
    }

    @Test
    void theCursorScrollsThroughMorePlacesThanFit() {
        Winter many = winter();
        for (int i = 1; i <= 14; i++) {
            many.place("shelf " + i, Sort.OTHER);
        }
        Desk shelves = over(many);

        assertThat(shelves.line(21)).contains("1-11 of 14");
        shelves.press("End");
        assertThat(shelves.line(21)).contains("4-14 of 14");
        assertThat(shelves.line(15)).startsWith("▸   shelf 14");
        assertThat(shelves.line(17)).startsWith(" shelf 14");
    }

    @Test
    void aPlaceThatIsGoneElsewhereLeavesTheCursorOnAnother() {
        desk.press("End");
        Desk fewer = over(winter().place("cellar", Sort.CELLAR));
        desk.tell(new Message.Changed(fewer.state().shown()));

        assertThat(desk.line(5)).startsWith("▸   cellar");
    }
}
