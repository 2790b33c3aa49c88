// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.GroundForetoldTest.VALLEY;
import static sillbook.season.Winter.straw;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.handbook.Handbook;
import sillbook.model.DayRead;
import sillbook.model.DaysRead;
import sillbook.model.Happening.Care;
import sillbook.model.JobKind;
import sillbook.model.Place.Sort;
import sillbook.model.Trench.Cover;

/** The routine of a trench. Its table is held by {@link JobsPageTest}. */
class GroundJobsTest {
    private static final Optional<Cover> STRAW = Optional.of(straw(10));

    private final Winter house = winter().place("cellar", Sort.CELLAR)
            .place("trench", Sort.TRENCH)
            .ground(25, STRAW, VALLEY)
            .pots("T1-T2", "Tuesday Coat", "tulip")
            .potted("1 oct");

    private static List<Job.OfGround> jobs(Winter told, String today) {
        return told.on(today).today().ground();
    }

    private static List<JobKind> kinds(Winter told, String today) {
        return jobs(told, today).stream().map(Job::kind).toList();
    }

    @Test
    void withoutGroundATrenchAsksForNothing() {
        Winter told = winter().place("trench", Sort.TRENCH)
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "trench");

        assertThat(List.of("1 oct", "25 oct", "10 nov", "27 dec"))
                .allSatisfy(day -> assertThat(kinds(told, day)).isEmpty());
    }

    @Test
    void itsJobsComeInTheirTime() {
        assertThat(kinds(house, "20 sep")).isEmpty();
        assertThat(kinds(house, "1 oct")).containsExactly(JobKind.DIG_TRENCH);
        assertThat(jobs(house, "1 oct").get(0).due()).isEqualTo(Due.SOON);
        assertThat(kinds(house, "8 oct")).containsExactly(JobKind.DIG_TRENCH, JobKind.POTS_IN);
        assertThat(jobs(house, "8 oct").get(0).due()).isEqualTo(Due.TODAY);

        house.tended("9 oct", Care.DUG);
        assertThat(kinds(house, "22 oct")).containsExactly(JobKind.POTS_IN);
        Job.OfGround in = jobs(house, "22 oct").get(0);
        assertThat(in.pots()).containsExactly(house.id("T1"), house.id("T2"));
        assertThat(in.isByReading()).isFalse();

        house.then("T1-T2").moved("23 oct", "trench");
        assertThat(kinds(house, "23 oct")).containsExactly(JobKind.COVER_TRENCH);
        assertThat(jobs(house, "23 oct").get(0).due()).isEqualTo(Due.SOON);

        house.place("loft", Sort.OTHER);
        assertThat(kinds(house, "20 dec")).containsExactly(JobKind.COVER_TRENCH, JobKind.LIFT_POTS);
        assertThat(jobs(house, "20 dec").get(1).pots()).hasSize(2);
        assertThat(house.on("20 dec").today().soon()).isEmpty();
        assertThat(house.on("20 dec").today().later()).isEmpty();
        assertThat(kinds(house, "31 dec")).containsExactly(JobKind.COVER_TRENCH);
        assertThat(kinds(house, "1 mar")).isEmpty();
    }

    @Test
    void potsThatWentOutAgainWereIn() {
        house.then("T1").moved("23 oct", "trench").moved("30 oct", "cellar");

        assertThat(kinds(house, "1 nov")).isEmpty();
    }

    @Test
    void whatIsLeftOutIsNotAskedForAgainThisWinter() {
        house.roundLeftOut("8 oct", JobKind.DIG_TRENCH);
        assertThat(kinds(house, "9 oct")).containsExactly(JobKind.POTS_IN);

        house.roundPutOff("22 oct", JobKind.POTS_IN, "30 oct");
        assertThat(jobs(house, "24 oct")).singleElement().satisfies(job -> {
            assertThat(job.on()).isEqualTo(house.day("30 oct"));
            assertThat(job.due()).isEqualTo(Due.SOON);
            assertThat(job.putOff()).isPresent();
        });
    }

    private static Outlook read(Winter told, String place, String today, int... means) {
        LocalDate day = told.day(today);
        List<DayRead> days = new ArrayList<>();
        for (int i = 0; i < means.length; i++) {
            int mean = means[means.length - 1 - i] * 1000;
            days.add(new DayRead(
                    told.placeId(place), day.minusDays(i), 24, 24, 0, 0, 0, 0, mean, mean - 1500, mean + 1500));
        }
        return Outlook.of(told.journal().with(DaysRead.of(days, List.of())), Handbook.standard(), day);
    }

    @ParameterizedTest
    @CsvSource({
        // Cold for three days: in, before the day foretold. Not for one of them, or only for two: not yet, also after
        // it.
        "15 oct, 7, 6, 7, TODAY",
        "28 oct, 7, 8, 7, SOON",
        "28 oct, 9, 9, 8, SOON"
    })
    void aThermometerInTheTrenchBeatsTheForecast(String today, int first, int second, int third, Due due) {
        Job.OfGround in =
                read(house.tended("5 oct", Care.DUG), "trench", today, first, second, third).today().ground().stream()
                        .filter(job -> job.kind() == JobKind.POTS_IN)
                        .findFirst()
                        .orElseThrow();

        assertThat(in.due()).isEqualTo(due);
        assertThat(in.isByReading()).isTrue();
    }

    @Test
    void twoMorningsAreNotEnough() {
        assertThat(read(house.tended("5 oct", Care.DUG), "trench", "23 oct", 5, 5)
                        .today()
                        .ground())
                .singleElement()
                .satisfies(job -> assertThat(job.due()).isEqualTo(Due.SOON));
    }

    @Test
    void theFirstFrostReadIsTheFirstFrost() {
        house.then("T1-T2").moved("10 oct", "trench");

        Outlook frost = read(house, "trench", "25 oct", 4, 1);
        assertThat(frost.today().ground()).singleElement().satisfies(job -> {
            assertThat(job.kind()).isEqualTo(JobKind.COVER_TRENCH);
            assertThat(job.due()).isEqualTo(Due.TODAY);
            assertThat(job.isByReading()).isTrue();
        });
        assertThat(read(house, "trench", "25 oct", 4, 4).today().ground())
                .singleElement()
                .satisfies(job -> assertThat(job.due()).isEqualTo(Due.SOON));
    }

    @Test
    void bareGroundIsNotCoveredAndAMildTrenchIsNotOpenedEarly() {
        Winter bare = winter().place("trench", Sort.TRENCH)
                .ground(25, Optional.empty(), 4, 4, 6, 9, 12, 15, 17, 17, 14, 11, 7, 5)
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("1 dec", "trench");

        assertThat(List.of("2 dec", "20 dec", "10 jan"))
                .allSatisfy(day -> assertThat(kinds(bare, day)).isEmpty());
    }

    @Test
    void whereItNeverGetsColdNoTrenchIsDug() {
        Winter warm = winter().place("trench", Sort.TRENCH)
                .ground(25, STRAW, 11, 11, 12, 13, 15, 17, 18, 18, 17, 15, 13, 12)
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("1 dec", "trench");

        assertThat(List.of("1 oct", "2 dec", "20 dec"))
                .allSatisfy(day -> assertThat(kinds(warm, day)).isEmpty());
    }

    @Test
    void aTrenchThatStaysOpenIsDugUpToTheDayOfThePots() {
        Winter mild = winter().place("trench", Sort.TRENCH)
                .ground(25, STRAW, 4, 4, 6, 9, 12, 15, 17, 17, 14, 11, 7, 5)
                .pot("T1", "Tuesday Coat", "tulip");
        GroundForetold ground = mild.on("1 dec").ground(mild.placeId("trench")).orElseThrow();
        LocalDate in = ground.potsIn().orElseThrow();

        Job.OfGround dig = Outlook.of(mild.journal(), Handbook.standard(), in)
                .today()
                .ground()
                .get(0);
        assertThat(dig.window().latest()).isEqualTo(in);
    }
}
