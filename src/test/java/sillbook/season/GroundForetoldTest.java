// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sillbook.season.Winter.straw;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.model.DayRead;
import sillbook.model.DaysRead;
import sillbook.model.Journal;
import sillbook.model.Length;
import sillbook.model.Place.Sort;
import sillbook.model.Trench.Cover;
import sillbook.model.Trench.Soil;
import sillbook.reckon.soil.Ground;
import sillbook.reckon.soil.MonthlyMeans;

/** What is foretold of buried pots; the waves themselves are checked in {@code reckon.soil}. */
class GroundForetoldTest {
    /** A cold inland valley, invented. */
    static final double[] VALLEY = {-6, -4, 1, 7, 13, 17, 19, 18, 13, 7, 1, -4};

    /** The same turned by half a year. */
    private static final double[] SOUTHERN = {19, 18, 13, 7, 1, -4, -6, -4, 1, 7, 13, 17};

    private static final Optional<Cover> BARE = Optional.empty();

    private static Winter valley(Optional<Cover> cover) {
        return winter().place("trench", Sort.TRENCH).ground(25, cover, VALLEY);
    }

    private static GroundForetold foretold(Winter told, String today) {
        return told.on(today).ground(told.placeId("trench")).orElseThrow();
    }

    /** One that rests on all there is. */
    static Why<?> why() {
        Winter told = valley(Optional.of(straw(10)));
        Outlook outlook = told.on("12 jan");
        return outlook.whys(outlook.places().get(0).place()).get(0);
    }

    private static List<Double> list(double... values) {
        List<Double> list = new ArrayList<>();
        for (double value : values) {
            list.add(value);
        }
        return list;
    }

    @Test
    void comesOutOfItsWhyAgain() {
        Why<?> why = why();

        assertThat(why).isInstanceOf(WhyGround.class);
        assertThat(why.recomputed()).isEqualTo(why.result());
        assertThat(why.levers()).containsExactly(Lever.GROUND);
        assertThat(why.sources()).contains("hillel-1982", "moene-van-dam-2014");
    }

    @Test
    void theWaveAtThePotsIsThatOfTheMonthsDampedAndLate() {
        GroundForetold ground = foretold(valley(BARE), "12 jan");
        var air = new MonthlyMeans(list(VALLEY)).wave();
        var there = new Ground(Ground.USUAL_DIFFUSIVITY).at(0.25, air);

        assertThat(ground.bare().wave()).isEqualTo(there);
        assertThat(ground.covered()).isEqualTo(ground.bare());
        assertThat(ground.surface().wave()).isEqualTo(air);
        // Coldest in the air in the middle of January, at 25 cm six or seven days later: 0.25 / 2.24 x 365 / 2 pi =
        // 6.48.
        assertThat(ground.air().coldestDay()).isBetween("2027-01-10", "2027-01-20");
        assertThat(ground.bare().coldestDay())
                .isBetween(
                        ground.air().coldestDay().plusDays(6),
                        ground.air().coldestDay().plusDays(7));
    }

    @Test
    void onADayItIsAsTheWaveIsAtNoon() {
        GroundForetold ground = foretold(valley(BARE), "12 jan");
        LocalDate coldest = ground.bare().coldestDay();

        assertThat(ground.on(coldest)).isCloseTo(ground.bare().wave().minimum(), within(0.01));
        assertThat(ground.on(coldest.plusDays(183)))
                .isCloseTo(ground.bare().wave().maximum(), within(0.02));
        NavigableMap<LocalDate, Double> curve = ground.days(ground.winter());
        assertThat(curve).hasSize(365).containsEntry(coldest, ground.on(coldest));
    }

    @Test
    void bareItFreezesAndIsShutWithTheAir() {
        GroundForetold ground = foretold(valley(BARE), "12 jan");

        LocalDate dig = ground.digBefore().orElseThrow();
        LocalDate in = ground.potsIn().orElseThrow();
        assertThat(in).isBefore(dig);
        assertThat(ground.bare().on(in)).isCloseTo(GroundForetold.POTS_IN, within(0.2));
        assertThat(ground.firstFrost().orElseThrow()).isBetween(in, dig);
        assertThat(ground.shut()).hasValueSatisfying(days -> {
            assertThat(days.start()).isEqualTo(dig);
            assertThat(days.contains(LocalDate.of(2027, 1, 15))).isTrue();
        });
        assertThat(ground.frozen()).isPresent();
        assertThat(ground.chance()).isGreaterThan(0.9);
        assertThat(ground.otherwise()).isLessThan(ground.chance());
        assertThat(ground.inBand()).hasSize(2);
    }

    @Test
    void strawHoldsItOpenOnceItIsLaid() {
        GroundForetold bare = foretold(valley(BARE), "12 jan");
        GroundForetold under = foretold(
                winter().place("trench", Sort.TRENCH).usually(0, 9).ground(25, Optional.of(straw(20)), VALLEY),
                "12 jan");

        assertThat(under.chance()).isLessThan(bare.otherwise());
        assertThat(under.otherwise()).isEqualTo(bare.chance());
        assertThat(under.shut()).isEmpty();
        assertThat(under.frozen()).isEmpty();
        assertThat(under.safeDepth()).isLessThan(bare.safeDepth());
        assertThat(under.potsIn()).isEqualTo(bare.potsIn());
        LocalDate laid = under.firstFrost().orElseThrow();
        assertThat(under.on(laid)).isEqualTo(bare.on(laid));
        assertThat(under.on(laid.plusDays(7)))
                .isBetween(bare.on(laid.plusDays(7)), under.covered().on(laid.plusDays(7)));
        assertThat(under.on(laid.plusDays(14))).isEqualTo(under.covered().on(laid.plusDays(14)));
        assertThat(under.inBand()).singleElement().satisfies(days -> {
            assertThat(days.start()).isBefore(in(under));
            assertThat(days.contains(LocalDate.of(2027, 1, 15))).isTrue();
        });
    }

    private static LocalDate in(GroundForetold ground) {
        return ground.potsIn().orElseThrow();
    }

    @Test
    void theSouthIsHalfAYearAway() {
        Winter told = winter().south().place("trench", Sort.TRENCH).ground(25, BARE, SOUTHERN);
        GroundForetold ground = told.on("1 jun").ground(told.placeId("trench")).orElseThrow();
        GroundForetold north = foretold(valley(BARE), "12 jan");

        assertThat(ground.chance()).isCloseTo(north.chance(), within(0.001));
        assertThat(ground.bare().coldestDay()).isBetween("2027-07-15", "2027-07-30");
        assertThat(in(ground)).isBetween("2027-04-15", "2027-05-15");
        assertThat(ground.winter().start()).isEqualTo("2027-01-01");
    }

    @Test
    void whereItNeverFreezesNothingIsAskedOfTheFrost() {
        Winter told = winter().place("trench", Sort.TRENCH)
                .ground(25, Optional.of(straw(10)), 11, 11, 12, 13, 15, 17, 18, 18, 17, 15, 13, 12);
        GroundForetold ground = foretold(told, "12 jan");

        assertThat(ground.digBefore()).isEmpty();
        assertThat(ground.potsIn()).isEmpty();
        assertThat(ground.firstFrost()).isEmpty();
        assertThat(ground.inBand()).isEmpty();
        assertThat(ground.safeDepth()).isZero();
        assertThat(ground.on(LocalDate.of(2027, 1, 12))).isEqualTo(ground.bare().on(LocalDate.of(2027, 1, 12)));
    }

    @Test
    void aPlaceAlwaysInItsBandIsSoAllYear() {
        Winter told = winter().place("trench", Sort.TRENCH).usually(-60, 40).ground(25, Optional.of(straw(10)), VALLEY);

        assertThat(foretold(told, "12 jan").inBand())
                .singleElement()
                .satisfies(days -> assertThat(days.days()).isBetween(364L, 366L));
    }

    @Test
    void withoutGroundNothingIsForetold() {
        Winter told = winter().place("trench", Sort.TRENCH);

        assertThat(told.on("12 jan").ground(told.placeId("trench"))).isEmpty();
    }

    private static Journal readAt(Winter told, LocalDate from, LocalDate untilExclusive) {
        List<DayRead> days = from.datesUntil(untilExclusive)
                .map(day -> {
                    int mean = (int) (1000 * VALLEY[day.getMonthValue() - 1]);
                    return new DayRead(told.placeId("gate"), day, 24, 24, 0, 0, 0, 0, mean, mean - 3000, mean + 3000);
                })
                .toList();
        return told.journal().with(DaysRead.of(days, List.of()));
    }

    @Test
    void aYearReadOutdoorsIsAsGoodAsItsMonths() {
        Winter told =
                winter().place("gate", Sort.OTHER).place("trench", Sort.TRENCH).groundUnder("gate", 25);
        LocalDate today = LocalDate.of(2027, 1, 12);
        Journal year = readAt(told, LocalDate.of(2026, 1, 13), today);

        assertThat(new GroundReading(year, today).why(year.places().get(told.placeId("trench"))))
                .map(WhyGround::air)
                .hasValue(new MonthlyMeans(list(VALLEY)).wave());
    }

    @ParameterizedTest
    @CsvSource({"2026-03-12, 2027-01-12", "2025-01-01, 2026-12-19"})
    void aMonthOfFewDaysIsMissing(LocalDate from, LocalDate untilExclusive) {
        Winter told =
                winter().place("gate", Sort.OTHER).place("trench", Sort.TRENCH).groundUnder("gate", 25);
        Journal journal = readAt(told, from, untilExclusive);

        assertThat(Outlook.of(journal, sillbook.handbook.Handbook.standard(), LocalDate.of(2027, 1, 12))
                        .ground(told.placeId("trench")))
                .isEmpty();
    }

    /** A. F. Moene and J. C. van Dam, 2014, table 2.2. */
    @ParameterizedTest
    @CsvSource({
        "DRY_SAND, 0.19e-6, 0.24", "SAND, 0.99e-6, 2.1", "WET_SAND, 0.85e-6, 2.5",
        "DRY_CLAY, 0.10e-6, 0.15", "CLAY, 0.4e-6, 0.9", "WET_CLAY, 0.45e-6, 1.4",
        "DRY_PEAT, 0.16e-6, 0.04", "PEAT, 0.13e-6, 0.27", "WET_PEAT, 0.12e-6, 0.50"
    })
    void soilsLeadHeatAsIsPublished(Soil soil, double diffusivity, double conductivity) {
        assertThat(SoilHeat.of(soil)).isEqualTo(new SoilHeat(diffusivity, conductivity, true));
    }

    @Test
    void gardenSoilIsJudged() {
        assertThat(SoilHeat.of(Soil.GARDEN_SOIL)).isEqualTo(new SoilHeat(0.5e-6, 1, false));
    }

    /** Fresh snow is in the same table; the rest is judged. */
    @Test
    void coversLeadHeatAsIsPublishedJudgedOrGiven() {
        Length thick = Length.ofCentimetres(10);
        assertThat(CoverHeat.of(new Cover(Cover.Material.SNOW, thick, Optional.empty())))
                .isEqualTo(new CoverHeat(0.1, CoverHeat.Basis.PUBLISHED));
        assertThat(CoverHeat.of(new Cover(Cover.Material.LEAVES, thick, Optional.empty()))
                        .basis())
                .isEqualTo(CoverHeat.Basis.ASSUMED);
        assertThat(CoverHeat.of(new Cover(Cover.Material.BARK, thick, Optional.empty()))
                        .conductivity())
                .isGreaterThan(CoverHeat.of(straw(10)).conductivity());
        assertThat(CoverHeat.of(new Cover(Cover.Material.STRAW, thick, Optional.of(0.06))))
                .isEqualTo(new CoverHeat(0.06, CoverHeat.Basis.OWN));
    }
}
