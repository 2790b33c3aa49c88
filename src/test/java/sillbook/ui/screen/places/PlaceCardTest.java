// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.Instant;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sillbook.change.Remove;
import sillbook.model.DateOrder;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Journal;
import sillbook.model.LoggerFormat;
import sillbook.model.LoggerProfile;
import sillbook.model.Place;
import sillbook.model.Place.Hazard;
import sillbook.model.Place.Sort;
import sillbook.model.ReadingSource;
import sillbook.season.Winter;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.card.PotCard;

class PlaceCardTest {
    private final Desk desk = Desk.over(GrowersWinter.told().journal()).press("3");

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    private static Desk over(Winter told) {
        return Desk.over(told.journal()).press("3", "Enter");
    }

    @Test
    void looksAsDrawn() {
        Golden.check("place-card", desk.press("Enter").state());
    }

    @Test
    void aPlaceWithFrostAndMice() {
        Golden.check("place-card-trench", desk.press("Down", "Down", "Enter").state());
    }

    @Test
    void enterOnAPotOpensItsCard() {
        desk.press("Enter", "Down", "Enter");

        assertThat(desk.state().top()).isInstanceOf(PotCard.class);
        assertThat(desk.line(4)).contains("H2  'Inkwell'");
        assertThat(all(desk.press("Esc"))).contains(" Beware ");
    }

    @Test
    void aBatchThatPartedIsDrawnAsItStandsHere() {
        desk.press("Down", "Down", "Down", "Enter");

        assertThat(all(desk)).contains("H5-H7 'Inkwell'").doesNotContain("cool ⋅");
    }

    @Test
    void onAPotTheKeysAreAboutThePot() {
        assertThat(all(desk.press("Enter", "Down", "m"))).contains("Move H2");
    }

    @Test
    void onThePlaceTheyAreAboutThePlace() {
        assertThat(all(desk.press("Enter", "e"))).contains("Correct garage fridge");
    }

    @Test
    void whatWasWrittenOfThePlaceCanBeCorrected() {
        Desk put = over(winter().place("cellar", Sort.CELLAR)
                .roundPutOff("2 jan", JobKind.CHECK, "20 jan")
                .roundLeftOut("5 jan", JobKind.CHECK));

        assertThat(all(put)).contains("Nothing stands here.").contains(" So far");
        assertThat(all(put)).contains("Tue  5 Jan 2027  ");
        assertThat(all(put).indexOf("Tue  5 Jan 2027  ")).isLessThan(all(put).indexOf("Sat  2 Jan 2027  "));
        assertThat(all(put.press("Down", "e"))).contains("Correct an entry");
    }

    @Test
    void whereNothingIsPublishedOfAHazardCommonPracticeIsSaid() {
        assertThat(all(over(winter().place("garage", Sort.GARAGE).beside(Hazard.FUMES))))
                .contains("▴ Smoke and fumes can hold the same gas as ripening fruit", "(common practice)");
    }

    @Test
    void whatCanGoWrongWithAFridgeIsSaid() {
        assertThat(all(over(winter().place("fridge", Sort.FRIDGE)
                        .beside(Hazard.COLD_WALL, Hazard.DOOR_AJAR, Hazard.UNHEATED_ROOM, Hazard.ROTTING_BULBS))))
                .contains("▴ Rotting bulbs give off the same gas as ripening fruit")
                .contains("▴ The back wall freezes what stands against it")
                .contains("▴ A door ajar lets it warm up unseen")
                .contains("▴ Where the room is colder than its label allows, a fridge may stop");
    }

    @Test
    void aPlaceThatIsGoneLeavesAnEmptyCard() {
        desk.press("Enter");
        desk.tell(new Message.Changed(Desk.over(winter().journal()).state().shown()));

        assertThat(desk.line(4)).isEmpty();
        assertThat(desk.press("c").line(22)).contains("no pot is under the cursor");
        assertThat(desk.press("Esc").line(7)).contains("No place yet.");
    }

    @Test
    void bulbsThatWaitThereAreNamedUntilTheyArePotted() {
        Desk fridge = over(winter().place("fridge", Sort.FRIDGE)
                .pot("T1", "Tuesday Coat", "tulip")
                .bought("1 dec", "fridge")
                .pots("H1-H2", "Inkwell", "hyacinth")
                .bought("5 jan", "fridge")
                .then("H1")
                .potted("10 jan", "fridge"));

        assertThat(all(fridge))
                .contains(" Waiting")
                .contains("10 'Tuesday Coat', came Tue 1 Dec 2026, 6 weeks of it cold")
                .contains("5 'Inkwell' of 10, came Tue 5 Jan 2027, 1 week of it cold")
                .contains("Keep dry bulbs where air gets at them");
        assertThat(all(fridge.press("Down", "Down")))
                .contains(" 'Tuesday Coat'  6 weeks of dry cold; at most ▫10 weeks count");
        assertThat(all(fridge.press("e"))).contains("Correct");
        assertThat(all(over(winter().place("sill", Sort.WARM_SILL)))).doesNotContain("Waiting");
    }

    @Test
    void aPlaceNobodyIsAskedToLookAtSaysWhenAnybodyDid() {
        Winter buried = winter().place("trench", Sort.TRENCH)
                .pots("T1-T2", "Tuesday Coat", "tulip")
                .potted("1 oct", "trench");

        assertThat(all(over(buried))).contains(" never asked for\n");
        assertThat(all(over(buried.then("T2").checked("20 dec")))).contains("never asked for; last look Sun 20 Dec");
    }

    @Test
    void howPotsStandBuriedIsWrittenCorrectedAndRemovedOnItsLine() {
        Winter told = winter().place("trench", Sort.TRENCH);
        Desk none = over(told);
        assertThat(all(none)).contains("Ground not written down; E here writes it");
        assertThat(all(none.press("Down", "e")))
                .contains("Ground of the trench")
                .contains("How deep");

        Desk desk = over(told.ground(25, Optional.of(Winter.straw(10)), -2, -1, 3, 8, 13, 17, 19, 18, 14, 9, 3, -1));
        assertThat(all(desk)).contains("Ground 25 cm deep in garden soil, under straw 10 cm; months from Jan:");
        assertThat(all(desk.press("Down", "e"))).contains("25 cm", "straw 10 cm", "-2 -1 3 8 13 17 19 18 14 9 3 -1 C");
        desk.press("Esc", "Delete");
        assertThat(all(desk)).contains("Remove ground of trench");
        assertThat(desk.press("Enter").effects())
                .containsExactly(new Effect.CarryOut(new Remove(
                        desk.state().journal().trenches().all().iterator().next())));
    }

    @Test
    void groundUnderAThermometerNamesIt() {
        Desk desk = over(winter().place("frame", Sort.COLD_FRAME)
                .place("gate", Sort.OTHER)
                .place("bed", Sort.OTHER)
                .groundUnder("gate", 15)
                .place("bank", Sort.COLD_FRAME)
                .groundUnder("gate", 15));
        assertThat(all(desk)).contains("Ground not written down");
        desk.press("Esc", "Down", "Enter");
        assertThat(all(desk)).doesNotContain("Ground ");
        desk.press("Esc", "Down", "Enter");
        assertThat(all(desk)).contains("Ground 15 cm deep in garden soil, bare; air as read at the gate");
        assertThat(all(desk.press("Down", "e"))).contains("Or air at", "gate");
    }

    @Test
    void aPlaceNothingRefersToIsRemovedOnceAgreed() {
        Desk desk = Desk.over(winter().place("loft", Sort.OTHER).journal()).press("3", "Delete");

        assertThat(all(desk)).contains("Remove place loft").contains("Nothing in the journal refers to it.");
        Place loft = desk.state().journal().places().all().iterator().next();
        assertThat(desk.press("Enter").effects()).containsExactly(new Effect.CarryOut(new Remove(loft)));
    }

    @Test
    void aPlaceInUseStaysAndSaysWhatRefersToIt() {
        Desk desk = Desk.over(winter().place("cellar", Sort.CELLAR)
                        .pot("T1", "Tuesday Coat", "tulip")
                        .potted("1 oct", "cellar")
                        .journal())
                .press("3", "Delete");

        assertThat(all(desk)).contains("still used by entry of T1").doesNotContain("Remove place");
    }

    private static ReadingSource file(Id<Place> place, String name, String first, String last) {
        return new ReadingSource(
                ReadingSource.idOf(place, (name.startsWith("w") ? "ab" : "cd").repeat(32)),
                place,
                name,
                (name.startsWith("w") ? "ab" : "cd").repeat(32),
                1440,
                3,
                Instant.parse(first + "T08:00:00Z"),
                Instant.parse(last + "T08:00:00Z"));
    }

    private static Journal cellarWith(Entity<?>... files) {
        Journal journal = winter().place("cellar", Sort.CELLAR).journal();
        return journal.with(Stream.of(files).<Edit>map(Edit.Put::new).toList());
    }

    private static Id<Place> cellar() {
        return cellarWith().places().all().iterator().next().id();
    }

    @Test
    void filesThatWereTakenInAreListedAndGoByTheKeyThatRemoves() {
        LoggerProfile profile = new LoggerProfile(
                new Id<>(9, 9),
                cellar(),
                new LoggerProfile.Mark("Date,Temp", LoggerFormat.Separator.COMMA, 2),
                LoggerFormat.OPEN.withDates(DateOrder.DAY_MONTH_YEAR).withColumn(2));
        ReadingSource winter = file(cellar(), "winter.csv", "2026-11-02", "2027-01-02");
        Desk card = Desk.over(cellarWith(file(cellar(), "autumn.csv", "2026-09-02", "2026-11-01"), winter, profile))
                .press("3", "Enter");
        Golden.check("place-card-files", card.state());

        card.press("Down", "Delete");
        assertThat(all(card))
                .contains("Remove readings of cellar from winter.csv")
                .contains("What it read goes with it: 1440 readings.");
        assertThat(card.press("Enter").effects()).containsExactly(new Effect.CarryOut(new Remove(winter)));
    }

    @Test
    void whatWasToldOfFilesGoesByItself() {
        LoggerProfile profile = new LoggerProfile(
                new Id<>(9, 9),
                cellar(),
                new LoggerProfile.Mark("", LoggerFormat.Separator.TAB, 3),
                LoggerFormat.OPEN.withDevice("box A"));
        Desk card = Desk.over(cellarWith(profile)).press("3", "Enter");

        assertThat(all(card)).contains("files of 3 columns, tabs between: of box A");
        assertThat(all(card.press("Down", "Delete"))).contains("Remove file format of cellar");
    }

    @Test
    void aFileAmongWhoseReadingsOthersLieStays() {
        Desk card = Desk.over(cellarWith(
                        file(cellar(), "autumn.csv", "2026-09-02", "2026-12-01"),
                        file(cellar(), "winter.csv", "2026-11-02", "2027-01-02")))
                .press("3", "Enter", "Down", "Delete");

        assertThat(all(card))
                .contains("its readings lie among those of autumn.csv")
                .doesNotContain("Remove readings");
    }
}
