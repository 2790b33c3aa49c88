// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Happening.End;
import sillbook.model.JobKind;
import sillbook.model.KeptWindow;
import sillbook.model.Place.Sort;
import sillbook.model.Season;
import sillbook.model.Stage;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Ahead.Ground;
import sillbook.season.Winter.Look;

class OutlookTest {
    private final Winter house =
            winter().place("cellar", Sort.CELLAR).place("stair", Sort.COOL_ROOM).place("sill", Sort.WARM_SILL);

    private LocalDate day(String told) {
        return house.day(told);
    }

    private Phase phase(Stage stage, String place, String from, String endExclusive, boolean happened) {
        Optional<String> where = Optional.of(place).filter(name -> !name.isEmpty());
        return new Phase(stage, where.map(house::placeId), DaySpan.of(day(from), day(endExclusive)), happened);
    }

    // Seasons

    @Test
    void lastWintersPotsStillCountUntilTheyAreDone() {
        house.of(2025)
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .moved("14 jan", "sill")
                .pastBloom("14 feb");
        house.pot("T2", "Tuesday Coat", "tulip").potted("1 oct", "cellar").closed("1 mar", End.FINISHED);
        house.of(2026).pot("T1", "Tuesday Coat", "tulip");
        Outlook outlook = house.on("1 aug");
        assertThat(outlook.today().due())
                .singleElement()
                .satisfies(job -> assertThat(job.kind()).isEqualTo(JobKind.WRITE_OUTCOME));
        assertThat(outlook.places().get(2).pots()).hasSize(1);
        assertThat(outlook.pots(new Season(2025))).hasSize(2);
        assertThat(outlook.job(house.id("T2"))).isEmpty();
        assertThat(outlook.pot(house.id("T2")).life().stage()).isEqualTo(Stage.DONE);
    }

    @Test
    void olderOnesAreReadButHaveNoJobs() {
        house.of(2024).pot("T1", "Tuesday Coat", "tulip").potted("1 oct", "cellar");
        house.of(2026);
        Outlook outlook = house.on("1 aug");
        assertThat(outlook.pot(house.id("T1")).life().stage()).isEqualTo(Stage.COLD);
        assertThat(outlook.pot(house.id("T1")).next()).isEmpty();
        assertThat(outlook.today().late()).isEmpty();
        assertThat(outlook.places().get(0).pots()).isEmpty();
        assertThat(outlook.lines(new Season(2024))).hasSize(1);
    }

    @Test
    void potsMadeForTheNextSeasonWaitTheirTime() {
        house.of(2027).pot("T1", "Tuesday Coat", "tulip");
        house.of(2026);
        assertThat(house.on("20 jun").today().later())
                .singleElement()
                .satisfies(job -> assertThat(job.on()).isEqualTo(LocalDate.of(2027, 10, 14)));
    }

    @Test
    void potsComeByLabel() {
        house.pot("T10", "Tuesday Coat", "tulip")
                .pot("T9", "Tuesday Coat", "tulip")
                .pot("H2", "Inkwell", "hyacinth");
        assertThat(house.on("1 aug").pots(house.season()))
                .extracting(pot -> pot.life().pot().label())
                .containsExactly("H2", "T9", "T10");
    }

    // Lines

    private List<Phase> line(String today) {
        return house.on(today).lines(house.season()).get(0).phases();
    }

    @Test
    void aLineTellsAWinterFromItsFirstDay() {
        house.pot("T1", "Tuesday Coat", "tulip").potted("1 oct", "cellar").moved("14 jan", "stair");
        assertThat(line("16 jan"))
                .containsExactly(
                        phase(Stage.WAITING, "", "1 jul", "1 oct", true),
                        phase(Stage.COLD, "cellar", "1 oct", "14 jan", true),
                        phase(Stage.COOL_ROOM, "stair", "14 jan", "17 jan", true),
                        phase(Stage.COOL_ROOM, "stair", "17 jan", "19 jan", false),
                        phase(Stage.WARM_ROOM, "", "19 jan", "4 feb", false),
                        phase(Stage.IN_BLOOM, "", "4 feb", "14 feb", false),
                        phase(Stage.AFTER_BLOOM, "", "14 feb", "28 mar", false));
    }

    @Test
    void whatIsDueTodayIsForetoldForTomorrow() {
        house.pot("T1", "Tuesday Coat", "tulip").potted("1 oct", "cellar");
        assertThat(line("20 jan").subList(1, 3))
                .containsExactly(
                        phase(Stage.COLD, "cellar", "1 oct", "21 jan", true),
                        phase(Stage.COOL_ROOM, "", "21 jan", "25 jan", false));
    }

    @Test
    void aWaitingPotIsDrawnToo() {
        house.pot("T1", "Tuesday Coat", "tulip");
        assertThat(line("1 aug").subList(0, 3))
                .containsExactly(
                        phase(Stage.WAITING, "", "1 jul", "2 aug", true),
                        phase(Stage.WAITING, "", "2 aug", "14 oct", false),
                        phase(Stage.COLD, "", "14 oct", "27 jan", false));
    }

    @Test
    void aLineEndsWithThePot() {
        house.pot("T1", "Tuesday Coat", "tulip").potted("1 oct", "cellar").closed("1 nov", End.BROKEN);
        assertThat(line("1 dec"))
                .containsExactly(
                        phase(Stage.WAITING, "", "1 jul", "1 oct", true),
                        phase(Stage.COLD, "cellar", "1 oct", "1 nov", true));
    }

    @Test
    void whatIsPastBloomIsDrawnToItsAftercare() {
        house.pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "sill")
                .flowered("1 feb")
                .pastBloom("10 feb");
        assertThat(line("12 feb").subList(3, 5))
                .containsExactly(
                        phase(Stage.AFTER_BLOOM, "sill", "10 feb", "13 feb", true),
                        phase(Stage.AFTER_BLOOM, "sill", "13 feb", "24 mar", false));
        assertThat(line("1 may")).last().isEqualTo(phase(Stage.AFTER_BLOOM, "sill", "10 feb", "2 may", true));
    }

    @Test
    void aBatchIsOneLineWhereMostOfItStands() {
        house.pots("H1-H5", "Inkwell", "hyacinth")
                .potted("1 oct", "cellar")
                .then("H1 H2")
                .moved("2 jan", "stair");
        house.then("H5").closed("3 jan", End.GIVEN);
        List<PotLine> lines = house.on("4 jan").lines(house.season());
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0).pots()).isEqualTo(house.ids("H1 H2 H3 H4"));
        assertThat(lines.get(0).batch().orElseThrow().isParted()).isTrue();
        assertThat(lines.get(0).phases())
                .as("on a tie where it is further on")
                .contains(phase(Stage.COOL_ROOM, "stair", "2 jan", "5 jan", true));
        assertThat(lines.get(0).next().orElseThrow().pots()).isEqualTo(house.ids("H1 H2"));
        assertThat(lines.get(1).pots()).isEqualTo(house.ids("H5"));
        assertThat(lines.get(1).batch()).isEmpty();
        assertThat(lines.get(1).next()).isEmpty();
        house.then("H3 H4").moved("4 jan", "sill");
        house.then("H4").moved("4 jan", "stair");
        assertThat(house.on("4 jan").lines(house.season()).get(0).phases())
                .contains(phase(Stage.COOL_ROOM, "stair", "2 jan", "5 jan", true));
    }

    @Test
    void theLastOfABatchIsAPotLikeAnyOther() {
        house.pots("H1-H2", "Inkwell", "hyacinth")
                .potted("1 oct", "cellar")
                .then("H1")
                .closed("3 jan", End.SOLD);
        assertThat(house.on("4 jan").lines(house.season()).get(1).batch()).isEmpty();
        assertThat(house.on("4 jan").job(house.id("H2")).orElseThrow().batch()).isEmpty();
    }

    // The sill

    @Test
    void theSillJoinsTheDaysInFlower() {
        house.pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "sill")
                .flowered("1 dec")
                .pastBloom("10 dec")
                .pot("T2", "Tuesday Coat", "tulip")
                .potted("1 oct", "sill")
                .flowered("8 dec")
                .pastBloom("15 dec")
                .pot("T3", "Tuesday Coat", "tulip")
                .potted("1 oct", "sill")
                .flowered("15 dec")
                .pastBloom("20 dec")
                .pot("T4", "Tuesday Coat", "tulip")
                .potted("1 oct", "sill")
                .flowered("2 jan")
                .pot("T5", "Tuesday Coat", "tulip")
                .potted("1 oct", "sill")
                .flowered("2 dec")
                .pastBloom("5 dec");
        assertThat(house.on("4 jan").sill(house.season()))
                .as("foretold by four own blooms of 9, 7, 5 and 3 days over 7, 10, 14 published: (2 x 10.2 + 24) / 6")
                .isEqualTo(new Sill(
                        List.of(DaySpan.of(day("1 dec"), day("20 dec")), DaySpan.of(day("2 jan"), day("5 jan"))),
                        List.of(DaySpan.of(day("5 jan"), day("9 jan")))));
    }

    // Places

    @Test
    void aPlaceTellsWhatStandsThereAndWillInTwoWeeks() {
        house.place("frame", Sort.COLD_FRAME)
                .room(3)
                .cold("1 nov", "1 mar")
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar")
                .moved("14 jan", "stair")
                .pot("T2", "Tuesday Coat", "tulip")
                .potted("3 oct", "cellar")
                .saw("12 jan", Look.roots())
                .pot("T3", "Tuesday Coat", "tulip")
                .potted("1 dec", "frame");
        List<PlaceNow> places = house.on("15 jan").places();
        assertThat(places).extracting(place -> place.inTwoWeeks().size()).containsExactly(0, 0, 2, 1);
        assertThat(places).extracting(place -> place.pots().size()).containsExactly(1, 1, 0, 1);
        assertThat(places)
                .extracting(PlaceNow::left)
                .containsExactly(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(2));
        assertThat(places.get(3).isCold()).isTrue();
        assertThat(house.on("1 mar").places().get(3).isCold()).isFalse();
        assertThat(house.on("15 jan").places().get(0).round()).isPresent();
    }

    // What is ahead

    @Test
    void eachStageAheadSaysWhatItRestsOn() {
        house.pot("T1", "Tuesday Coat", "tulip");
        assertThat(grounds("1 aug")).containsExactly(Ground.CALENDAR);
        house.potted("1 oct");
        assertThat(grounds("2 oct")).containsExactly(Ground.BEGUN);
        house.moved("2 oct", "cellar");
        assertThat(grounds("3 oct")).containsExactly(Ground.COLD);
        house.saw("3 dec", Look.noRoots());
        assertThat(grounds("4 dec")).containsExactly(Ground.COLD);
        house.saw("10 jan", Look.roots().shoot(5));
        assertThat(grounds("11 jan")).containsExactly(Ground.COLD, Ground.ROOTS, Ground.SHOOT);
        house.moved("14 jan", "stair");
        assertThat(grounds("15 jan")).containsExactly(Ground.BEGUN);
        assertThat(house.on("15 jan").pot(house.id("T1")).ahead().get(1).restsOn())
                .isEmpty();
    }

    private List<Ground> grounds(String today) {
        return house.on(today).pot(house.id("T1")).ahead().get(0).restsOn();
    }

    @Test
    void figuresStandWithTheStageTheyWereAddedFor() {
        house.pot("T1", "Tuesday Coat", "tulip").potted("1 oct", "cellar");
        assertThat(house.on("1 nov").pot(house.id("T1")).ahead())
                .extracting(ahead ->
                        ahead.figure().map(figure -> figure.name().key()).orElse("-"))
                .containsExactly("cold", "cool-room", "after-cold", "in-bloom");
        Winter without = winter().pot("T1", "Umbrella Street", "amaryllis").pot("T2", "Linen Parade", "paperwhite");
        assertThat(without.on("1 nov").pot(without.id("T1")).ahead())
                .extracting(ahead ->
                        ahead.figure().map(figure -> figure.name().key()).orElse("-"))
                .containsExactly("-", "after-cold", "in-bloom");
        assertThat(without.on("1 nov").pot(without.id("T2")).ahead())
                .extracting(ahead ->
                        ahead.figure().map(figure -> figure.name().key()).orElse("-"))
                .containsExactly("-", "cool-room", "after-cold", "in-bloom");
    }

    @Test
    void aDayOnlyAboutKnownMakesTheNextWindowWider() {
        house.pot("T1", "Tuesday Coat", "tulip").potted("1 oct", "cellar").moved("~14 jan", "stair");
        Ahead warm = house.on("14 jan").pot(house.id("T1")).ahead().get(0);
        assertThat(warm.window().earliest()).isEqualTo(day("15 jan"));
        assertThat(warm.window().likely()).isEqualTo(day("19 jan"));
        assertThat(warm.window().latest()).isEqualTo(day("24 jan"));
    }

    @Test
    void whatShouldHaveBegunBeginsTodayAtTheEarliest() {
        house.pot("T1", "Tuesday Coat", "tulip").potted("1 oct", "cellar");
        List<Ahead> ahead = house.on("20 jan").pot(house.id("T1")).ahead();
        assertThat(ahead.get(0).window().earliest()).as("since when").isEqualTo(day("24 dec"));
        assertThat(ahead.get(0).window().likely()).isEqualTo(day("20 jan"));
        assertThat(ahead.get(0).window().latest()).isEqualTo(day("28 jan"));
        assertThat(ahead.get(2).window().earliest()).isEqualTo(day("3 feb"));
        assertThat(ahead.get(2).window().likely()).isEqualTo(day("10 feb"));
        assertThat(ahead.get(2).window().latest()).isEqualTo(day("25 feb"));
        assertThat(house.on("10 feb")
                        .pot(house.id("T1"))
                        .ahead()
                        .get(0)
                        .window()
                        .latest())
                .isEqualTo(day("10 feb"));
    }

    @Test
    void theWindowsShownNowCanBeKept() {
        house.pot("T1", "Tuesday Coat", "tulip").potted("1 oct", "cellar").saw("10 jan", Look.roots());
        assertThat(house.on("11 jan").windowsToKeep(house.ids("T1")))
                .hasSize(4)
                .first()
                .isEqualTo(new KeptWindow(
                        house.id("T1"),
                        Stage.COOL_ROOM,
                        day("11 jan"),
                        day("24 dec"),
                        day("14 jan"),
                        day("28 jan"),
                        "cold, roots, cold (handbook)"));
        assertThat(house.on("11 jan").windowsToKeep(house.ids("T1")).get(3).basis())
                .isEqualTo("in-bloom (assumed)");
    }
}
