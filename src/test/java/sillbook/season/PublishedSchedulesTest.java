// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import sillbook.handbook.FigureName;
import sillbook.model.JobKind;
import sillbook.model.Kind;
import sillbook.model.Place.Sort;
import sillbook.model.Stage;
import sillbook.reckon.dates.Window;
import sillbook.season.Winter.Look;

/**
 * Schedules that others published, told as a winter: the days a pot is asked for must be theirs. Each names its source;
 * where a source gives figures of its own, they are set over the handbook's.
 */
class PublishedSchedulesTest {
    private final Winter house =
            winter().place("cellar", Sort.CELLAR).place("stair", Sort.COOL_ROOM).place("sill", Sort.WARM_SILL);

    private PotNow pot(String today) {
        return house.on(today).pot(house.id("T1"));
    }

    private Job.OfPots job(String today) {
        return pot(today).next().orElseThrow();
    }

    private Window window(String today, Stage stage) {
        return pot(today).ahead().stream()
                .filter(ahead -> ahead.stage() == stage)
                .findFirst()
                .orElseThrow()
                .window();
    }

    private LocalDate day(String told) {
        return house.day(told);
    }

    private Winter figures(String kind, double low, double typical, double high, double afterLow, double afterHigh) {
        return house.own(Kind.of(kind), FigureName.COLD, low, typical, high)
                .own(Kind.of(kind), FigureName.AFTER_COLD, afterLow, (afterLow + afterHigh) / 2, afterHigh);
    }

    /** For 1 March: out about 14 February, 15 weeks before that about 1 November (Iowa State University, Vos, 2024). */
    @Test
    void aHyacinthForTheFirstOfMarch() {
        figures("hyacinth", 15, 15, 15, 2, 2);
        house.pot("T1", "Inkwell", "hyacinth").wish("1 mar", "T1");
        assertThat(job("1 oct").kind()).isEqualTo(JobKind.POT_UP);
        assertThat(job("1 oct").on()).isBetween(day("30 oct"), day("3 nov"));
        house.potted("1 nov", "cellar").saw("1 feb", Look.roots());
        assertThat(job("10 feb").on()).isBetween(day("12 feb"), day("16 feb"));
    }

    /** Out on 30 November after 10 weeks, in flower on 7 December (International Flower Bulb Centre, pot hyacinths). */
    @Test
    void aPreparedHyacinthForTheSeventhOfDecember() {
        figures("prepared hyacinth", 10, 10, 10, 1, 1);
        house.pot("T1", "Inkwell", "prepared hyacinth")
                .potted("21 sep", "cellar")
                .saw("25 nov", Look.roots().shoot(5));
        assertThat(job("29 nov").due()).isEqualTo(Due.SOON);
        assertThat(pot("30 nov").readiness().orElseThrow().verdict()).isEqualTo(Verdict.MAY_COME_IN);
        assertThat(window("30 nov", Stage.IN_BLOOM).likely()).isEqualTo(day("7 dec"));
    }

    /** 12 to 16 weeks, then 3 to 4: begun on 1 October, in flower 14 January to 18 February (Iowa State, 2015). */
    @Test
    void theGeneralRule() {
        figures("tulip", 12, 14, 16, 3, 4);
        house.pot("T1", "Tuesday Coat", "tulip").potted("1 oct", "cellar");
        assertThat(window("1 nov", Stage.IN_BLOOM).earliest()).isEqualTo(day("14 jan"));
        assertThat(window("1 nov", Stage.IN_BLOOM).latest()).isEqualTo(day("18 feb"));
        assertThat(job("1 nov").deadline()).contains(new Deadline.UseBy(day("21 jan")));
    }

    /** 14 weeks, then 1 to 2: begun on 1 October, out on 7 January, sold 14 to 21 January (IFBC, daffodils in pots). */
    @Test
    void daffodilsInPots() {
        figures("daffodil", 14, 14, 14, 1, 2);
        house.pot("T1", "Lantern Row", "daffodil").potted("1 oct", "cellar").saw("1 jan", Look.roots());
        assertThat(job("6 jan").on()).isEqualTo(day("7 jan"));
        assertThat(window("6 jan", Stage.IN_BLOOM).earliest()).isEqualTo(day("14 jan"));
        assertThat(window("6 jan", Stage.IN_BLOOM).latest()).isEqualTo(day("21 jan"));
    }

    /** Begun on 1 September, 14 to 20 weeks and 2 to 3: 22 December to 9 February (Colorado State University, Gross). */
    @Test
    void anEarlyTulip() {
        figures("tulip", 14, 17, 20, 2, 3);
        house.pot("T1", "Tuesday Coat", "tulip").potted("1 sep", "cellar");
        assertThat(window("2 sep", Stage.IN_BLOOM).earliest()).isEqualTo(day("22 dec"));
        assertThat(window("2 sep", Stage.IN_BLOOM).latest()).isEqualTo(day("9 feb"));
    }

    /** Planted in the middle of November for Christmas (Which? Gardening). */
    @Test
    void paperwhitesForChristmas() {
        house.pot("T1", "Linen Parade", "paperwhite").wish("25 dec", "T1");
        assertThat(job("1 nov").kind()).isEqualTo(JobKind.POT_UP);
        assertThat(job("1 nov").on()).isBetween(day("10 nov"), day("20 nov"));
    }

    /**
     * 6 to 8 weeks before Christmas is 30 October to 13 November, so one begun on 20 November is late (Natchez Democrat,
     * 20 November 2000).
     */
    @Test
    void anAmaryllisBegunTooLateForChristmas() {
        house.own(Kind.of("amaryllis"), FigureName.AFTER_COLD, 6, 7, 8)
                .pot("T1", "Umbrella Street", "amaryllis")
                .wish("25 dec", "T1");
        Job.OfPots job = job("20 nov");
        assertThat(job.due()).isEqualTo(Due.LATE);
        assertThat(job.window()).isEqualTo(new Window(day("30 oct"), day("20 nov"), day("20 nov")));
        assertThat(pot("20 nov").concerns()).extracting(Concern::code).containsExactly("too-late");
    }

    /** 10 of 15 weeks dry and 5 potted did as well as 15 potted (Oklahoma State University, HortScience 29, 1994). */
    @Test
    void tulipsCooledForTenWeeksNeedFiveMore() {
        figures("tulip", 15, 15, 17, 3, 3);
        house.pot("T1", "Tuesday Coat", "tulip")
                .cooled(10)
                .potted("1 dec", "cellar")
                .saw("30 dec", Look.roots());
        assertThat(job("1 jan").on()).isEqualTo(day("5 jan"));
        assertThat(pot("1 jan").coldNeed().orElseThrow().credited()).isEqualTo(70);
        assertThat(pot("5 jan").readiness().orElseThrow().verdict()).isEqualTo(Verdict.MAY_COME_IN);
    }

    /** In the south a season is the calendar year: potted on 1 April, the same weeks later in July and August. */
    @Test
    void theSameInTheSouth() {
        Winter south = winter().south()
                .place("cellar", Sort.CELLAR)
                .place("stair", Sort.COOL_ROOM)
                .own(Kind.of("tulip"), FigureName.COLD, 12, 14, 16)
                .own(Kind.of("tulip"), FigureName.AFTER_COLD, 3, 3.5, 4)
                .pot("T1", "Tuesday Coat", "tulip");
        Job.OfPots potUp = south.on("1 feb").pot(south.id("T1")).next().orElseThrow();
        assertThat(potUp.on()).isEqualTo(LocalDate.of(2027, 4, 16));
        south.potted("1 apr", "cellar").saw("1 jul", Look.roots());
        PotNow pot = south.on("8 jul").pot(south.id("T1"));
        assertThat(pot.next().orElseThrow().due()).isEqualTo(Due.READY);
        assertThat(pot.useBy()).contains(LocalDate.of(2027, 7, 22));
        assertThat(south.on("2 apr").pot(south.id("T1")).ahead().get(2).window())
                .satisfies(bloom -> {
                    assertThat(bloom.earliest()).isEqualTo(LocalDate.of(2027, 7, 15));
                    assertThat(bloom.latest()).isEqualTo(LocalDate.of(2027, 8, 19));
                });
        assertThat(south.on("8 jul").today().season()).isEqualTo(south.season());
    }
}
