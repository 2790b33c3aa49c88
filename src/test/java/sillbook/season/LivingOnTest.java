// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Day;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.JobKind;
import sillbook.model.Outcome;
import sillbook.model.Place.Sort;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.Stage;

/**
 * One plant over years. The rest of 8 to 10 weeks, outdoors from late May and in by the middle or end of September are from Iowa State
 * University Extension (Logan Herald; Quad-City Times, 11 October 2020), the 4 to 12 weeks to the flower from the University of Missouri
 * (2023) and Iowa State (2018).
 */
class LivingOnTest {
    private final Winter house = Winter.winter()
            .place("sill", Sort.WARM_SILL)
            .place("loft", Sort.OTHER)
            .pot("A1", "Lantern Row", "amaryllis");

    private Winter bloomed() {
        return house.potted("20 nov", "sill")
                .flowered("10 jan")
                .pastBloom("10 feb")
                .outcome("10 feb", 4);
    }

    private PotNow on(String day) {
        return house.on(day).pot(house.id("A1"));
    }

    private Optional<JobKind> asked(String day) {
        return on(day).next().map(Job.OfPots::kind);
    }

    @Test
    void threeYearsOfOnePlantAskForEachThingOnceADayAndTakeEachAnswer() {
        house.potted("20 nov", "sill");
        Map<JobKind, List<LocalDate>> answered = new LinkedHashMap<>();
        LocalDate day = house.day("20 nov");
        for (int lived = 0; lived < 3 * 365 + 10; lived++, day = day.plusDays(1)) {
            String told = tell(day);
            List<Job.OfPots> due = house.on(told).today().due();
            assertThat(due).as("on " + day).hasSizeLessThanOrEqualTo(1);
            for (Job.OfPots job : due) {
                answer(job.kind(), told);
                answered.computeIfAbsent(job.kind(), none -> new ArrayList<>()).add(day);
                Optional<Job.OfPots> next = on(told).next();
                assertThat(next.filter(one -> one.kind() == job.kind() && one.due() == Due.TODAY))
                        .as(job.kind() + " answered on " + day)
                        .isEmpty();
            }
        }
        assertThat(answered.keySet())
                .containsExactlyInAnyOrder(
                        JobKind.WATCH_FOR_FLOWER,
                        JobKind.PAST_BLOOM,
                        JobKind.WRITE_OUTCOME,
                        JobKind.FEED,
                        JobKind.PUT_OUTDOORS,
                        JobKind.TAKE_INDOORS,
                        JobKind.START_REST,
                        JobKind.WAKE,
                        JobKind.REPOT);
        assertThat(answered.get(JobKind.WAKE)).hasSize(3);
        assertThat(answered.get(JobKind.WRITE_OUTCOME)).hasSize(3);
        assertThat(answered.get(JobKind.REPOT)).hasSize(1);
        assertThat(first(answered, JobKind.WAKE))
                .isEqualTo(first(answered, JobKind.START_REST).plusWeeks(9));
        assertThat(answered.get(JobKind.FEED)).hasSizeGreaterThan(15);
    }

    private static LocalDate first(Map<JobKind, List<LocalDate>> answered, JobKind kind) {
        return answered.getOrDefault(kind, List.of()).get(0);
    }

    /** A day as the winter tells it, in the season it lies in. */
    private String tell(LocalDate day) {
        house.of(Season.of(day, MonthDay.of(7, 1)).year());
        return day.getDayOfMonth() + " "
                + day.getMonth().name().toLowerCase(Locale.ROOT).substring(0, 3);
    }

    private void answer(JobKind kind, String day) {
        switch (kind) {
            case WATCH_FOR_FLOWER -> house.flowered(day);
            case PAST_BLOOM -> house.pastBloom(day);
            case WRITE_OUTCOME -> house.outcome(day, 4);
            case FEED -> house.cared(day, Care.FED);
            case PUT_OUTDOORS -> house.cared(day, Care.OUTDOORS);
            case TAKE_INDOORS -> house.cared(day, Care.BROUGHT_IN);
            case START_REST -> house.cared(day, Care.RESTED);
            case WAKE -> house.cared(day, Care.WOKEN);
            case REPOT -> house.cared(day, Care.REPOTTED);
            default -> throw new AssertionError("not asked of a plant that lives on: " + kind);
        }
    }

    @Test
    void itStandsInEverySeasonItLivesInWithItsHistory() {
        bloomed().of(2027).cared("16 sep", Care.RESTED).cared("18 nov", Care.WOKEN);
        Outlook outlook = house.on("20 nov");
        assertThat(labels(outlook, 2026)).containsExactly("A1");
        assertThat(labels(outlook, 2027)).containsExactly("A1");
        assertThat(labels(outlook, 2028)).as("nobody knows yet").isEmpty();
        assertThat(labels(outlook, 2025)).as("before it was").isEmpty();
        Years years = on("20 nov").life().years();
        assertThat(years.number()).isEqualTo(2);
        assertThat(years.past().get(0).bloom().pot().firstFlower()).contains(Day.on(LocalDate.of(2027, 1, 10)));
        assertThat(outlook.livingOn().pots()).extracting(Pot::label).containsExactly("A1");
        assertThat(outlook.livingOn()
                        .seasonOf(outlook.pot(house.id("A1")).life().pot()))
                .isEqualTo(new Season(2027));
    }

    @Test
    void itStandsThereToTheSeasonItEndsIn() {
        bloomed().of(2027).cared("18 nov", Care.WOKEN).of(2028).closed("3 oct", End.GIVEN);
        house.of(2029);
        Outlook outlook = house.on("3 nov");
        assertThat(labels(outlook, 2028)).containsExactly("A1");
        assertThat(labels(outlook, 2029)).isEmpty();
        assertThat(outlook.livingOn().pots()).isEmpty();
    }

    private static List<String> labels(Outlook outlook, int year) {
        return outlook.pots(new Season(year)).stream()
                .map(pot -> pot.life().pot().label())
                .toList();
    }

    @Test
    void aTulipOfAnEarlierSeasonDoesNotLiveOn() {
        house.pot("T1", "Marrow Lane", "tulip").potted("1 oct", "loft").of(2027);
        assertThat(labels(house.on("20 nov"), 2027)).isEmpty();
    }

    @Test
    void wokenItFlowersInFourToTwelveWeeks() {
        bloomed().of(2027).cared("16 sep", Care.RESTED).cared("18 nov", Care.WOKEN);
        PotNow now = on("20 nov");
        assertThat(now.life().stage()).isEqualTo(Stage.WARM_ROOM);
        Ahead bloom = now.ahead().get(0);
        assertThat(bloom.stage()).isEqualTo(Stage.IN_BLOOM);
        assertThat(bloom.window().earliest()).isEqualTo(house.day("18 nov").plusWeeks(4));
        assertThat(bloom.window().likely()).isEqualTo(house.day("18 nov").plusWeeks(7));
        assertThat(bloom.window().latest()).isEqualTo(house.day("18 nov").plusWeeks(12));
    }

    @Test
    void whatRestsIsLeftDry() {
        bloomed().of(2027).cared("16 sep", Care.RESTED).moved("16 sep", "loft");
        Outlook outlook = house.on("10 oct");
        assertThat(outlook.pot(house.id("A1")).life().stage()).isEqualTo(Stage.AFTER_BLOOM);
        assertThat(outlook.pot(house.id("A1")).life().restingSince()).contains(Day.on(house.day("16 sep")));
        assertThat(outlook.today().checks()).isEmpty();
        house.then("A1").cared("20 nov", Care.WOKEN);
        assertThat(house.on("10 dec").today().checks()).hasSize(1);
    }

    @Test
    void itMayBeKeptGrowingAndFlowersInItsNextWinterAllTheSame() {
        bloomed().of(2027).leftOut("20 sep", JobKind.START_REST).leftOut("20 sep", JobKind.PUT_OUTDOORS);
        assertThat(asked("21 sep")).contains(JobKind.FEED);
        house.flowered("3 jan");
        PotNow now = on("4 jan");
        assertThat(now.life().stage()).isEqualTo(Stage.IN_BLOOM);
        assertThat(now.life().years().number()).isEqualTo(2);
        assertThat(now.life().answers().isLeftOut(JobKind.START_REST)).isFalse();
    }

    @Test
    void aSecondStalkInTheSameWinterIsNoNewWinter() {
        bloomed().flowered("1 mar");
        assertThat(on("2 mar").life().years().number()).isEqualTo(1);
        assertThat(on("2 mar").life().stage()).isEqualTo(Stage.AFTER_BLOOM);
    }

    @Test
    void whoeverRestsIsPastBloomThoughNobodyWroteIt() {
        house.potted("20 nov", "sill").flowered("10 jan").of(2027).cared("16 sep", Care.RESTED);
        assertThat(on("17 sep").life().stage()).isEqualTo(Stage.AFTER_BLOOM);
        assertThat(on("17 sep").life().bloom().isPast()).isTrue();
    }

    @Test
    void aWinterWithoutAFlowerIsAWinterTooAndEachHasItsOwnScore() {
        house.potted("20 nov", "sill").of(2027).cared("16 sep", Care.RESTED);
        assertThat(on("17 sep").life().bloom().isPast()).isFalse();
        assertThat(asked("17 sep")).contains(JobKind.WRITE_OUTCOME);
        house.outcome("17 sep", 1);
        assertThat(asked("17 sep")).contains(JobKind.WAKE);
        house.cared("20 nov", Care.WOKEN).flowered("12 jan").pastBloom("12 feb");
        assertThat(asked("13 feb")).contains(JobKind.WRITE_OUTCOME);
    }

    @Test
    void theRecordOfTheVarietyCountsEachWinterByItself() {
        bloomed().of(2027).outcome("3 jul", 2);
        house.cared("18 nov", Care.WOKEN).flowered("3 jan").outcome("5 jan", 5);
        assertThat(house.on("6 jan").varieties().get(0).winters())
                .containsExactly(
                        new VarietyNow.Winter(new Season(2026), List.of(4, 2)),
                        new VarietyNow.Winter(new Season(2027), List.of(5)));
    }

    @Test
    void whatIsWrittenOfAnEarlierWinterIsFoundByItsDay() {
        bloomed().of(2027).cared("18 nov", Care.WOKEN).flowered("3 jan").outcome("5 jan", 5);
        LivingOn plants = house.on("6 jan").livingOn();
        assertThat(plants.outcomes(house.id("A1"))).extracting(Outcome::score).containsExactly(Optional.of(5));
        assertThat(plants.outcomes(house.id("A1"), house.day("6 jan")))
                .extracting(Outcome::score)
                .containsExactly(Optional.of(5));
        assertThat(plants.outcomes(house.id("A1"), LocalDate.of(2027, 3, 1)))
                .extracting(Outcome::score)
                .containsExactly(Optional.of(4));
    }

    @Test
    void theWintersOfAPlantThatIsGoneAreStillToldApart() {
        bloomed().of(2027).cared("18 nov", Care.WOKEN).outcome("5 jan", 5).closed("9 jan", End.GIVEN);
        house.of(2029);
        LivingOn plants = house.on("6 jan").livingOn();
        assertThat(plants.outcomes(house.id("A1"))).extracting(Outcome::score).containsExactly(Optional.of(5));
    }

    @Test
    void whatWasPlantedOutAsksForNothingMore() {
        bloomed().cared("1 may", Care.PLANTED_OUT);
        assertThat(asked("2 may")).isEmpty();
    }
}
