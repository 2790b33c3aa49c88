// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import sillbook.handbook.FigureName;
import sillbook.model.Kind;
import sillbook.model.Place.Sort;
import sillbook.model.Pot.Way;
import sillbook.season.ComingIn.Roots;
import sillbook.season.ComingIn.Shoot;
import sillbook.season.ComingIn.Weeks;
import sillbook.season.Winter.Look;

/** When a pot may come in: the table itself, and what real looks at pots come to in it. */
class ComingInTest {
    @ParameterizedTest
    @EnumSource
    void everyCaseStandsInTheTableOnce(Weeks weeks) {
        for (Roots roots : Roots.values()) {
            for (Shoot shoot : Shoot.values()) {
                assertThat(ComingIn.TABLE)
                        .filteredOn(row -> row.covers(weeks, roots, shoot))
                        .hasSize(1);
            }
        }
    }

    @Test
    void everyVerdictIsReached() {
        assertThat(ComingIn.TABLE).extracting(ComingIn.Row::verdict).contains(Verdict.values());
    }

    @Test
    void aShootNeverCancelsMissingCold() {
        assertThat(Stream.of(Shoot.values()))
                .allSatisfy(shoot -> assertThat(ComingIn.judge(Weeks.SHORT, Roots.SHOWING, shoot))
                        .isIn(Verdict.WEEKS_SHORT, Verdict.TOO_WARM));
    }

    /** A tulip has its 15 weeks on 14 January when it was put in the cold on 1 October. */
    private static Winter tulip() {
        return winter().place("cellar", Sort.CELLAR)
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar");
    }

    private static Readiness readiness(Winter winter, String on) {
        return winter.on(on).pot(winter.id("T1")).readiness().orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "13 jan, roots,    6, WEEKS_SHORT",
        "14 jan, roots,    6, MAY_COME_IN",
        "14 jan, roots,    0, MAY_COME_IN",
        "14 jan, no roots, 3.9, NO_ROOTS",
        "14 jan, no roots, 4, MAY_COME_IN",
        "14 jan, none,     4, MAY_COME_IN",
        "14 jan, none,     3.9, CHECK_FIRST",
        "13 jan, none,     8, WEEKS_SHORT",
        "13 jan, none,     8.1, TOO_WARM",
        "14 jan, none,     8.1, MAY_COME_IN",
    })
    void aLookIsReadByWeeksRootsAndShoot(String today, String roots, double shoot, Verdict verdict) {
        Look look = switch (roots) {
            case "roots" -> Look.roots().shoot(shoot);
            case "no roots" -> Look.noRoots().shoot(shoot);
            default -> Look.ofShoot(shoot);
        };
        assertThat(readiness(tulip().saw("10 jan", look), today).verdict()).isEqualTo(verdict);
    }

    /** Roots of 10 cm in a glass are common practice; a bowl and pebbles hide theirs, so the shoot speaks alone. */
    @ParameterizedTest
    @CsvSource({
        "GLASS,   9.9, 1, NO_ROOTS",
        "GLASS,   10,  1, MAY_COME_IN",
        "GLASS,   3,   4, MAY_COME_IN",
        "BOWL,    0,   1, CHECK_FIRST",
        "BOWL,    0,   4, MAY_COME_IN",
        "PEBBLES, 0,   1, CHECK_FIRST",
        "PEBBLES, 0,   4, MAY_COME_IN",
    })
    void rootsSpeakByTheWayOfGrowing(Way way, double rootLength, double shoot, Verdict verdict) {
        Look look = Look.noRoots().rootLength(rootLength).shoot(shoot);

        assertThat(readiness(tulip().grown(way).saw("10 jan", look), "14 jan").verdict())
                .isEqualTo(verdict);
    }

    @Test
    void rootsInAGlassThatNobodyMeasuredAreTakenAtTheirWord() {
        assertThat(readiness(tulip().grown(Way.GLASS).saw("10 jan", Look.roots()), "14 jan")
                        .verdict())
                .isEqualTo(Verdict.MAY_COME_IN);
    }

    @Test
    void rootsThatWereSeenInABowlAllTheSameCount() {
        assertThat(readiness(tulip().grown(Way.BOWL).saw("10 jan", Look.roots()), "14 jan")
                        .verdict())
                .isEqualTo(Verdict.MAY_COME_IN);
    }

    @Test
    void nobodyLooked() {
        assertThat(readiness(tulip().checked("10 jan"), "14 jan").verdict()).isEqualTo(Verdict.CHECK_FIRST);
    }

    @Test
    void aLookThatFoundNoRootsSpeaksForTwoWeeks() {
        Winter winter = tulip().saw("3 jan", Look.noRoots());
        assertThat(readiness(winter, "16 jan").verdict()).isEqualTo(Verdict.NO_ROOTS);
        assertThat(readiness(winter, "17 jan").verdict()).isEqualTo(Verdict.CHECK_FIRST);
        assertThat(readiness(winter, "17 jan").roots()).isEmpty();
    }

    @Test
    void rootsThatShowedOnceAreThereToStay() {
        Winter winter = tulip().saw("1 nov", Look.roots()).saw("3 jan", Look.noRoots());
        assertThat(readiness(winter, "17 jan").verdict()).isEqualTo(Verdict.MAY_COME_IN);
    }

    @Test
    void itMightHaveComeInSinceItsWeeksAndItsFirstSign() {
        assertThat(readiness(tulip().saw("1 nov", Look.roots()).saw("10 jan", Look.ofShoot(5)), "20 jan")
                        .since())
                .contains(winter().day("14 jan"));
        assertThat(readiness(
                                tulip().saw("18 jan", Look.ofShoot(5))
                                        .saw("19 jan", Look.roots().shoot(5)),
                                "20 jan")
                        .since())
                .contains(winter().day("19 jan"));
        assertThat(readiness(tulip().saw("17 jan", Look.ofShoot(2)).saw("19 jan", Look.roots()), "20 jan")
                        .since())
                .contains(winter().day("19 jan"));
        assertThat(readiness(tulip(), "20 jan").since()).isEmpty();
    }

    @Test
    void aTallShootSaysNothingAgainstAPlaceItCameToLater() {
        Winter winter = tulip().place("fridge", Sort.FRIDGE)
                .saw("2 jan", Look.ofShoot(9))
                .moved("3 jan", "fridge");
        assertThat(readiness(winter, "4 jan").verdict()).isEqualTo(Verdict.WEEKS_SHORT);
        assertThat(readiness(winter.saw("4 jan", Look.ofShoot(10)), "4 jan").verdict())
                .isEqualTo(Verdict.TOO_WARM);
    }

    @Test
    void theGrowersOwnShootStandsOverTheHandbooks() {
        Winter winter =
                tulip().own(Kind.of("tulip"), FigureName.READY_SHOOT, 2, 3, 12).saw("10 jan", Look.ofShoot(2));
        assertThat(readiness(winter, "14 jan").verdict()).isEqualTo(Verdict.MAY_COME_IN);
        assertThat(readiness(winter.saw("11 jan", Look.ofShoot(11)), "13 jan").verdict())
                .isEqualTo(Verdict.WEEKS_SHORT);
    }

    @Test
    void onlyAPotInTheColdThatNeedsItIsJudged() {
        Winter winter = tulip().place("sill", Sort.WARM_SILL)
                .moved("14 jan", "sill")
                .pot("P1", "Linen Parade", "paperwhite")
                .potted("1 nov", "cellar");
        Outlook outlook = winter.on("15 jan");
        assertThat(outlook.pot(winter.id("T1")).readiness()).isEmpty();
        assertThat(outlook.pot(winter.id("P1")).readiness()).isEmpty();
    }

    @Test
    void aKindWhoseShootNobodyMeasuredIsJudgedByTheUsualOne() {
        Winter winter = winter().place("cellar", Sort.CELLAR)
                .own(Kind.of("paperwhite"), FigureName.COLD, 3, 4, 6)
                .pot("T1", "Linen Parade", "paperwhite")
                .potted("1 nov", "cellar")
                .saw("1 dec", Look.ofShoot(4));
        assertThat(readiness(winter, "1 dec").verdict()).isEqualTo(Verdict.MAY_COME_IN);
    }

    @Test
    void weeksThatWereHadStayHadWhenTheColdIsOver() {
        Winter winter = winter().place("frame", Sort.COLD_FRAME)
                .cold("1 oct", "20 jan")
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "frame")
                .saw("10 jan", Look.roots());
        PotNow pot = winter.on("10 feb").pot(winter.id("T1"));
        assertThat(pot.readiness().orElseThrow().verdict()).isEqualTo(Verdict.MAY_COME_IN);
        assertThat(pot.readiness().orElseThrow().coldEnoughOn()).isEqualTo(winter.day("14 jan"));
        assertThat(pot.useBy()).contains(winter.day("28 jan"));
    }

    @Test
    void weeksThatAreShortWaitForTheNextCold() {
        Winter winter = winter().place("frame", Sort.COLD_FRAME)
                .cold("1 oct", "10 jan")
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "frame");
        assertThat(readiness(winter, "10 feb").coldEnoughOn())
                .isEqualTo(winter.day("1 oct").plusYears(1).plusDays(4));
    }
}
