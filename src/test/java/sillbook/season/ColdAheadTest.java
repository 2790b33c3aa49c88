// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.JobKind;
import sillbook.model.Place.Sort;
import sillbook.model.Stage;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Window;
import sillbook.season.Winter.Look;

/** Tulips need 12 to 17 weeks, usually 15: 84, 105, 119 days. */
class ColdAheadTest {
    private static final LocalDate DAY = LocalDate.of(2027, 1, 1);

    private static Winter cellar() {
        return Winter.winter().place("cellar", Sort.CELLAR);
    }

    private static Winter tulip(Winter house) {
        return house.pot("T1", "Marrow Lane", "tulip").potted("1 oct", "cellar");
    }

    private static PotNow on(Winter house, String day) {
        return house.on(day).pot(house.id("T1"));
    }

    private static ColdAhead ahead(Winter house, String day) {
        return on(house, day).coldAhead().orElseThrow();
    }

    @Test
    void byTheCalendarADayIsADay() {
        Winter house = tulip(cellar());
        ColdAhead ahead = ahead(house, "1 jan");
        assertThat(ahead.isRead()).isFalse();
        assertThat(ahead.pace()).isEqualTo(ColdPace.CALENDAR);
        assertThat(ahead.reaches(0)).isEqualTo(house.day("1 oct"));
        assertThat(ahead.reaches(105)).isEqualTo(house.day("14 jan"));
        assertThat(ahead.between(105)).isEqualTo(Window.on(house.day("14 jan")));
    }

    @Test
    void aWarmCellarHoldsThePotBackAndAllThatFollows() {
        Winter house = tulip(cellar().logged("1 oct", "31 dec", 10));
        PotNow pot = on(house, "1 jan");
        assertThat(pot.life().cold().daysIn()).isEqualTo(92);
        assertThat(pot.life().cold().daysColdEnough()).isEqualTo(69);
        assertThat(pot.readiness().orElseThrow().coldEnoughOn()).isEqualTo(house.day("18 feb"));
        assertThat(pot.useBy()).contains(house.day("9 mar"));
        assertThat(pot.ahead().get(0).stage()).isEqualTo(Stage.COOL_ROOM);
        assertThat(pot.ahead().get(0).window())
                .isEqualTo(new Window(house.day("21 jan"), house.day("18 feb"), house.day("9 mar")));
        assertThat(pot.next().orElseThrow().on()).isEqualTo(house.day("18 feb"));
        assertThat(pot.concerns())
                .contains(new Concern.HeldBack(house.placeId("cellar"), 23, true, 92, 69, house.day("18 feb")));
    }

    /** At 10 C three quarters of a day count: of 92 days 23 are lost, and 18 Feb would have been 26 Jan. */
    @Test
    void theDaysListSaysOfAPotHeldBackThatItIsToCome() {
        Winter house = tulip(cellar().logged("1 oct", "31 dec", 10));
        Outlook late = house.on("31 dec");
        Job.OfPots job = late.pot(house.id("T1")).next().orElseThrow();
        assertThat(job.due()).isEqualTo(Due.LATER);
        assertThat(job.heldBack()).isPresent();
        assertThat(late.today().soon()).isEmpty();
        assertThat(late.today().later()).contains(job);

        Today inTime = house.logged("1 jan", "20 jan", 10).on("16 jan").today();
        assertThat(inTime.soon()).extracting(Job.OfPots::due).containsExactly(Due.LATER);
        assertThat(inTime.later()).isEmpty();

        Winter putOff = tulip(cellar().logged("1 oct", "20 jan", 10)).putOff("15 jan", JobKind.BRING_IN, "1 mar");
        assertThat(putOff.on("16 jan").today().soon()).isEmpty();
    }

    @Test
    void enoughForTheEarliestThoughByTheCalendarMostIsStillToCome() {
        Winter house = tulip(cellar().cold("1 oct", "5 oct").logged("1 oct", "31 dec", 5));
        assertThat(on(house, "20 mar").ahead().get(0).window().earliest()).isEqualTo(house.day("24 dec"));
        assertThat(on(house, "20 mar").ahead()).extracting(Ahead::stage).startsWith(Stage.COOL_ROOM, Stage.WARM_ROOM);
    }

    @Test
    void coldNearFreezingHoldsBackToo() {
        Winter house = tulip(cellar().logged("1 oct", "31 dec", -1));
        assertThat(on(house, "1 jan").concerns()).extracting(Concern::code).contains("held-back");
        assertThat(on(house, "1 jan").concerns())
                .filteredOn(Concern.HeldBack.class::isInstance)
                .singleElement()
                .isInstanceOfSatisfying(
                        Concern.HeldBack.class,
                        held -> assertThat(held.ranWarm()).isFalse());
    }

    @Test
    void lessThanHalfAWeekIsNotSaidAndNothingWhereNothingWasRead() {
        Winter house = tulip(cellar().logged("1 oct", "3 oct", 15).logged("4 oct", "31 dec", 5));
        assertThat(on(house, "1 jan").life().cold().daysColdEnough()).isEqualTo(89);
        assertThat(on(house, "1 jan").concerns()).extracting(Concern::code).doesNotContain("held-back");
    }

    @Test
    void theRangeIsThatOfSingleDaysAndOfWhatMayCount() {
        Winter house = tulip(cellar());
        for (int i = 18; i <= 30; i += 2) {
            house.then("T1");
            house.logged(i + " dec", i + " dec", 9).logged((i + 1) + " dec", (i + 1) + " dec", 11);
        }
        ColdAhead ahead = ahead(house, "1 jan");
        assertThat(ahead.pace().likely()).isCloseTo(0.75, within(1e-9));
        assertThat(ahead.pace().slow()).isCloseTo(0.5, within(1e-9));
        assertThat(ahead.pace().fast()).isCloseTo(1, within(1e-9));
        assertThat(ahead.pace().days()).isEqualTo(14);
        assertThat(ahead.had().likely()).isCloseTo(78 + 10.5, within(1e-9));
        assertThat(ahead.between(105)).isEqualTo(new Window(DAY.plusDays(17), DAY.plusDays(22), DAY.plusDays(33)));
    }

    @Test
    void whatWasHadLongAgoKeepsItsDay() {
        Winter house = tulip(cellar().logged("1 oct", "10 feb", 10)).saw("1 feb", Look.roots());
        Readiness then = on(house, "9 feb").readiness().orElseThrow();
        assertThat(on(house, "18 feb").life().cold().daysColdEnough()).isEqualTo(106);
        assertThat(then.coldEnoughOn()).isEqualTo(house.day("18 feb"));
        Winter longer = tulip(cellar().logged("1 oct", "20 mar", 10)).saw("1 feb", Look.roots());
        assertThat(on(longer, "1 mar").readiness().orElseThrow().since()).contains(house.day("18 feb"));
        assertThat(on(longer, "20 mar").readiness().orElseThrow().since()).contains(house.day("18 feb"));
        assertThat(ahead(longer, "20 mar").between(105)).isEqualTo(Window.on(house.day("18 feb")));
    }

    @Test
    void aPlaceThatGivesNothingIsReckonedToGiveAQuarter() {
        ColdAhead ahead = ahead(tulip(cellar().logged("1 oct", "31 oct", 5).logged("1 nov", "31 dec", 15)), "1 jan");
        assertThat(ahead.pace()).isEqualTo(new ColdPace(0.25, 0.25, 0.25, 14));
        assertThat(ahead.reaches(41)).isEqualTo(DAY.plusDays(40));
    }

    @Test
    void beforeTheColdHasBegunTheDaysToComeAreByTheCalendar() {
        ColdAhead ahead = ahead(tulip(cellar().logged("1 oct", "14 oct", 15)), "15 oct");
        assertThat(ahead.pace()).isEqualTo(ColdPace.CALENDAR);
        assertThat(ahead.reaches(105)).isEqualTo(LocalDate.of(2026, 10, 15).plusDays(105));
    }

    @Test
    void aPlaceThatIsReadToBeColdCountsBeforeItsDaysDo() {
        Winter house = tulip(cellar().cold("1 nov", "1 apr").logged("1 oct", "14 oct", 5));
        PotNow pot = on(house, "15 oct");
        assertThat(pot.life().cold().daysColdEnough()).isEqualTo(14);
        assertThat(pot.readiness().orElseThrow().coldEnoughOn())
                .isEqualTo(LocalDate.of(2026, 10, 15).plusDays(91));
        assertThat(pot.concerns()).extracting(Concern::code).doesNotContain("not-cold");
    }

    @Test
    void onceReadToBeWarmItsNextColdDayIsWaitedFor() {
        Winter house = tulip(
                cellar().cold("1 nov", "1 apr").logged("1 oct", "2 oct", 5).logged("3 oct", "14 oct", 15));
        ColdAhead ahead = ahead(house, "15 oct");
        assertThat(ahead.countedTo()).isEqualTo(house.day("1 nov"));
        assertThat(ahead.pace()).isEqualTo(ColdPace.CALENDAR);
        assertThat(ahead.reaches(3)).isEqualTo(house.day("2 nov"));
    }

    @Test
    void aPotThatIsBroughtInHasHadWhatTheLedgerSays() {
        Winter house = tulip(cellar().logged("1 oct", "31 dec", 10))
                .place("stair", Sort.COOL_ROOM)
                .moved("1 jan", "stair");
        assertThat(on(house, "10 jan").coldAhead()).isEmpty();
        assertThat(on(house, "10 jan").concerns()).extracting(Concern::code).contains("too-little-cold");
    }

    @Test
    void aNeedOfNothingIsMetWhenTheCountBegan() {
        ColdAhead ahead = new ColdAhead(DAY, ColdCount.assumed(3, 3), List.of(), ColdPace.CALENDAR);
        assertThat(ahead.of(DayCount.of(0, 3, 5))).isEqualTo(new Window(DAY.minusDays(3), DAY, DAY.plusDays(2)));
        assertThat(Optional.of(ColdPace.of(List.of()))).contains(ColdPace.CALENDAR);
    }
}
