// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.time.Duration;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.model.Place.ColdDays;

class ValuesTest {
    private static final MonthDay JULY = MonthDay.of(7, 1);
    private static final MonthDay NEW_YEAR = MonthDay.of(1, 1);

    @ParameterizedTest
    @CsvSource({"0,0", "1,-1", "-1,0", "4660,9223372036854775807"})
    void anIdIsReadBackFromItsDigits(long high, long low) {
        Id<Pot> id = new Id<>(high, low);

        assertThat(id.toString()).hasSize(32);
        assertThat(Id.<Pot>parse(id.toString())).isEqualTo(id);
    }

    @Test
    void idsAreOrderedAsTheirDigitsAre() {
        assertThat(new Id<Pot>(1, 0)).isLessThan(new Id<Pot>(-1, 0));
        assertThat(new Id<Pot>(1, 1)).isLessThan(new Id<Pot>(1, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> Id.<Pot>parse("12"));
    }

    @Test
    void aSourceOfIdsDrawsBothHalves() {
        long[] last = {0};
        Ids ids = () -> ++last[0];

        assertThat(ids.<Pot>next()).isEqualTo(new Id<>(1, 2));
        assertThat(ids.<Pot>next()).isEqualTo(new Id<>(3, 4));
    }

    @ParameterizedTest
    @CsvSource({"2026-07-01,2026", "2026-06-30,2025", "2027-01-12,2026", "2028-02-29,2027"})
    void aNorthernSeasonBeginsInJuly(LocalDate day, int year) {
        Season season = Season.of(day, JULY);

        assertThat(season).isEqualTo(new Season(year));
        assertThat(season.contains(day, JULY)).isTrue();
        assertThat(season.next().contains(day, JULY)).isFalse();
        assertThat(season.previous().next()).isEqualTo(season);
    }

    @Test
    void aSeasonIsNamedByItsYears() {
        assertThat(new Season(2026).name(JULY)).isEqualTo("2026-27");
        assertThat(new Season(2099).name(JULY)).isEqualTo("2099-00");
        assertThat(new Season(2026).name(NEW_YEAR)).isEqualTo("2026");
        assertThat(new Season(2026).firstDay(JULY)).isEqualTo("2026-07-01");
        assertThat(new Season(2026).endExclusive(JULY)).isEqualTo("2027-07-01");
        assertThat(new Season(2026)).isLessThan(new Season(2027));
    }

    @ParameterizedTest
    @CsvSource({"2027-01-12, 2027", "2027-06-30, 2027", "2027-07-01, 2027", "2027-10-31, 2027", "2027-11-01, 2028"})
    void bulbsAreChosenForTheComingSeasonAndWhileTheNewOneIsYoung(LocalDate day, int year) {
        assertThat(Season.chosenFor(day, JULY)).isEqualTo(new Season(year));
    }

    @ParameterizedTest
    @CsvSource({"2027-01-01, 2027", "2027-04-30, 2027", "2027-05-01, 2028"})
    void theSameInTheSouth(LocalDate day, int year) {
        assertThat(Season.chosenFor(day, NEW_YEAR)).isEqualTo(new Season(year));
    }

    @Test
    void aSouthernSeasonIsACalendarYear() {
        assertThat(Season.of(LocalDate.of(2026, 12, 31), NEW_YEAR)).isEqualTo(new Season(2026));
        assertThat(Season.of(LocalDate.of(2026, 1, 1), NEW_YEAR)).isEqualTo(new Season(2026));
    }

    @Test
    void daysThatAreColdMayRunOverTheNewYear() {
        ColdDays winter = new ColdDays(MonthDay.of(10, 15), MonthDay.of(4, 1));
        ColdDays southern = new ColdDays(MonthDay.of(5, 1), MonthDay.of(9, 1));

        assertThat(winter.contains(LocalDate.of(2026, 10, 15))).isTrue();
        assertThat(winter.contains(LocalDate.of(2027, 3, 31))).isTrue();
        assertThat(winter.contains(LocalDate.of(2027, 4, 1))).isFalse();
        assertThat(winter.contains(LocalDate.of(2026, 10, 14))).isFalse();
        assertThat(southern.contains(LocalDate.of(2026, 5, 1))).isTrue();
        assertThat(southern.contains(LocalDate.of(2026, 9, 1))).isFalse();
        assertThat(southern.contains(LocalDate.of(2026, 4, 30))).isFalse();
        assertThat(ColdDays.ALL_YEAR.contains(LocalDate.of(2028, 2, 29))).isTrue();
        assertThat(new ColdDays(MonthDay.of(3, 3), MonthDay.of(3, 3)).isAllYear())
                .isTrue();
    }

    @Test
    void measuresAreRoundedToTheirUnit() {
        assertThat(Length.ofCentimetres(19.05).tenths()).isEqualTo(1905);
        assertThat(Length.ofCentimetres(19.05).centimetres()).isEqualTo(19.05);
        assertThat(Temperature.ofCelsius(-1.4).milli()).isEqualTo(-1400);
        assertThat(Temperature.ofCelsius(9.6).celsius()).isEqualTo(9.6);
    }

    @Test
    void whatCannotBeIsRefused() {
        List<Runnable> impossible = List.of(
                () -> new Length(-1, ""),
                () -> new Temperature(-273_151, ""),
                () -> Length.ofCentimetres(Double.NaN),
                () -> Temperature.ofCelsius(Double.POSITIVE_INFINITY),
                () -> Band.ofCelsius(9, 2),
                () -> new Kind(" ", ""),
                () -> Variety.of(new Id<>(0, 1), "", Kind.of("tulip")),
                () -> Place.of(new Id<>(0, 1), " ", Place.Sort.CELLAR),
                () -> new Pot.Planting(new Id<>(0, 1), 0, Optional.empty()),
                () -> new Purchase.Cooled(Optional.of(Double.NaN)),
                () -> new PottingMix.Part(0, "sand"),
                () -> new Choice.Chosen(0),
                () -> new OwnFigure.Range(3, 2, 4),
                () -> new OwnFigure.Range(1, 5, 4),
                () -> new OwnFigure.Range(Double.NaN, 2, 4),
                ValuesTest::nothingBought,
                ValuesTest::nothingPlanted,
                ValuesTest::wishedBackwards,
                () -> scored(0),
                () -> scored(6),
                () -> new OwnFigure.Scope(Optional.of(new Id<>(0, 1)), Optional.of(Kind.of("tulip"))),
                () -> new Day(LocalDate.EPOCH.plusDays(1), LocalDate.EPOCH, LocalDate.EPOCH.plusDays(1)),
                () -> new Day(LocalDate.EPOCH, LocalDate.EPOCH.plusDays(1), LocalDate.EPOCH));
        impossible.forEach(one -> assertThatIllegalArgumentException().isThrownBy(one::run));
    }

    private static void buried(double centimetres, Optional<Double> spells, int months) {
        Trench.Air air = new Trench.Means(Collections.nCopies(months, Temperature.ofCelsius(9)));
        Optional<Trench.Cover> bare = Optional.empty();
        Length deep = Length.ofCentimetres(centimetres);
        new Trench(new Id<>(1, 1), new Id<>(1, 2), deep, Trench.Soil.CLAY, bare, air, spells);
    }

    @Test
    void potsInATrenchAreBuriedUnderAWholeYear() {
        assertThatCode(() -> buried(15, Optional.of(2.5), 12)).doesNotThrowAnyException();
        assertThatIllegalArgumentException().isThrownBy(() -> buried(0, Optional.empty(), 12));
        assertThatIllegalArgumentException().isThrownBy(() -> buried(15, Optional.of(0.0), 12));
        assertThatIllegalArgumentException().isThrownBy(() -> buried(15, Optional.empty(), 11));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> new Trench.Cover(Trench.Cover.Material.BARK, Length.ofCentimetres(5), Optional.of(0.0)));
    }

    private static void nothingBought() {
        new Purchase(
                new Id<>(0, 1),
                new Id<>(0, 2),
                new Season(2026),
                Day.on(LocalDate.EPOCH),
                0,
                Purchase.Grade.UNKNOWN,
                Optional.empty(),
                "",
                "",
                Arrival.NOT_SAID,
                Optional.empty(),
                Purchase.Cooled.UNKNOWN,
                Purchase.State.IN_HAND,
                "");
    }

    private static void nothingPlanted() {
        new Pot(
                new Id<>(0, 1),
                new Season(2026),
                "T1",
                List.of(),
                Pot.Way.DRAINED,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Potting.NOT_SAID,
                Optional.empty(),
                Optional.empty(),
                "");
    }

    private static void wishedBackwards() {
        LocalDate day = LocalDate.EPOCH;
        new Wish(
                new Id<>(0, 1),
                new Season(2026),
                day,
                day.minusDays(1),
                "",
                WishedFor.one(Optional.empty()),
                Set.of(),
                "");
    }

    /** Whether words of how to do it differently fit an answer. */
    private static void again(Outcome.Again again) {
        new Impression(Impression.Evenness.EVEN, Variety.Scent.LIGHT, again, "in the fridge");
    }

    @Test
    void onlyWhatIsDoneDifferentlyIsDoneSomehow() {
        for (Outcome.Again again : Outcome.Again.values()) {
            assertThat(isPossible(() -> again(again))).as("%s", again).isEqualTo(again == Outcome.Again.DIFFERENTLY);
        }
    }

    private static void scored(int score) {
        new Outcome(
                new Id<>(0, 1),
                new Id<>(0, 2),
                Optional.empty(),
                Day.on(LocalDate.EPOCH),
                Optional.of(score),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Failure.NONE,
                Impression.NONE,
                "");
    }

    @Test
    void aPlaceServesOneOfThreeStages() {
        Place cellar = Place.of(new Id<>(0, 1), "cellar", Place.Sort.CELLAR);
        for (Stage stage : Stage.values()) {
            boolean possible =
                    Set.of(Stage.COLD, Stage.COOL_ROOM, Stage.WARM_ROOM).contains(stage);
            assertThat(isPossible(() -> serving(cellar, stage, 10)))
                    .as("%s", stage)
                    .isEqualTo(possible);
        }
        assertThat(isPossible(() -> serving(cellar, Stage.COLD, -1))).isFalse();
        assertThat(isPossible(() -> bridging(cellar, Duration.ZERO))).isTrue();
        assertThat(isPossible(() -> bridging(cellar, Duration.ofHours(-1)))).isFalse();
    }

    private static void serving(Place place, Stage stage, int checkEveryDays) {
        place(place, stage, checkEveryDays, place.bridges());
    }

    private static void bridging(Place place, Duration bridges) {
        place(place, place.serves(), place.checkEveryDays(), bridges);
    }

    private static void place(Place place, Stage stage, int checkEveryDays, Duration bridges) {
        new Place(
                place.id(),
                place.name(),
                place.sort(),
                stage,
                place.usual(),
                place.coldDays(),
                "",
                place.room(),
                checkEveryDays,
                bridges,
                Set.of(),
                "");
    }

    private static boolean isPossible(Runnable attempt) {
        try {
            attempt.run();
            return true;
        } catch (IllegalArgumentException refused) {
            return false;
        }
    }

    @Test
    void aDayMayBeUncertain() {
        Day about = Day.about(LocalDate.of(2027, 2, 5), 3);

        assertThat(about.isExact()).isFalse();
        assertThat(about.earliest()).isEqualTo("2027-02-02");
        assertThat(about.latest()).isEqualTo("2027-02-08");
        assertThat(Day.on(about.likely()).isExact()).isTrue();
        assertThat(about).isLessThan(Day.on(about.likely()));
        assertThat(about).isLessThan(Day.on(about.likely().plusDays(1)));
    }

    @Test
    void anEntryThatIsReferredToMustBeThere() {
        Journal journal = Journal.empty(Settings.initial(ZoneOffset.UTC));

        assertThat(journal.pots().find(new Id<>(1, 1))).isEmpty();
        assertThatIllegalStateException().isThrownBy(() -> journal.pots().get(new Id<>(1, 1)));
    }

    @Test
    void kindsAreSaidWithTheirGroup() {
        Kind triumph = new Kind("tulip", "Triumph");

        assertThat(triumph).hasToString("tulip Triumph");
        assertThat(triumph.withoutGroup()).isEqualTo(Kind.of("tulip")).hasToString("tulip");
        assertThat(Kind.of("tulip").withoutGroup()).isEqualTo(Kind.of("tulip"));
    }
}
