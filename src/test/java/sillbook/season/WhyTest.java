// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.model.Happening.Care;
import sillbook.model.Place.Sort;
import sillbook.model.Stage;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Milestone;
import sillbook.reckon.dates.Window;
import sillbook.season.Winter.Look;

/** Each figure shown has its reasons, and comes out of them again. {@link AnyWinterTest} asks it of any winter. */
class WhyTest {
    private final Winter house = winter().place("frame", Sort.COLD_FRAME)
            .cold("15 oct", "1 apr")
            .place("cellar", Sort.CELLAR)
            .place("stair", Sort.COOL_ROOM)
            .pot("T1", "Tuesday Coat", "tulip")
            .cooled(2)
            .potted("1 oct", "frame")
            .moved("1 nov", "cellar")
            .saw("2 jan", Look.roots().shoot(6))
            .wish("1 feb", "T1");

    private <W extends Why<?>> W why(String today, Class<W> rule) {
        return house.on(today).whys(house.id("T1")).stream()
                .filter(rule::isInstance)
                .map(rule::cast)
                .findFirst()
                .orElseThrow();
    }

    private List<Class<?>> rules(String today) {
        return house.on(today).whys(house.id("T1")).stream()
                .<Class<?>>map(Object::getClass)
                .toList();
    }

    @Test
    void everyFigureShownHasOne() {
        assertThat(rules("15 jan"))
                .containsExactly(
                        Why.ColdSoFar.class,
                        Why.ColdNeeded.class,
                        Why.MayComeIn.class,
                        Why.UseBy.class,
                        Why.NeededForWish.class,
                        Why.StageBegins.class,
                        Why.StageBegins.class,
                        Why.StageBegins.class,
                        Why.StageBegins.class,
                        Why.Late.class);
    }

    @Test
    void whatIsNotShownHasNone() {
        house.moved("6 jan", "stair");
        assertThat(rules("7 jan"))
                .containsExactly(
                        Why.ColdSoFar.class,
                        Why.ColdNeeded.class,
                        Why.NeededForWish.class,
                        Why.StageBegins.class,
                        Why.StageBegins.class,
                        Why.StageBegins.class);
        Winter warm = winter().place("sill", Sort.WARM_SILL)
                .pot("T1", "Linen Parade", "paperwhite")
                .potted("1 nov", "sill");
        assertThat(warm.on("2 nov").whys(warm.id("T1"))).hasOnlyElementsOfType(Why.StageBegins.class);
    }

    @Test
    void theColdSoFarIsCountedPlaceByPlace() {
        Why.ColdSoFar why = why("11 nov", Why.ColdSoFar.class);
        assertThat(why.stretches()).extracting(ColdStretch::daysIn).containsExactly(31, 10);
        assertThat(why.stretches()).extracting(ColdStretch::daysColdEnough).containsExactly(17, 10);
        assertThat(why.result()).isEqualTo(ColdCount.assumed(41, 27));
        assertThat(why.recomputed()).isEqualTo(why.result());
    }

    @Test
    void theColdNeededIsLessByWhatWasHadDry() {
        Why.ColdNeeded why = why("11 nov", Why.ColdNeeded.class);
        assertThat(why.result()).isEqualTo(DayCount.ofWeeks(10, 13, 15));
        assertThat(why.figures()).extracting(FigureInForce::name).containsExactly(FigureName.COLD);
        assertThat(why.sources()).startsWith("oklahoma-1994").contains("colorado-state");
        assertThat(house.on("11 nov")
                        .pot(house.id("T1"))
                        .coldNeed()
                        .orElseThrow()
                        .credited())
                .isEqualTo(14);
    }

    /** Cold since 15 October, 13 weeks are had on 14 January and 15 on 28 January. */
    @Test
    void theOthersAreWorkedOutFromThese() {
        assertThat(why("15 jan", Why.MayComeIn.class).coldEnoughOn()).isEqualTo(house.day("14 jan"));
        assertThat(why("15 jan", Why.MayComeIn.class).result()).isEqualTo(Verdict.MAY_COME_IN);
        assertThat(why("15 jan", Why.UseBy.class).cold().reaches(0)).isEqualTo(house.day("15 oct"));
        assertThat(why("15 jan", Why.UseBy.class).result()).isEqualTo(house.day("28 jan"));
        assertThat(why("15 jan", Why.NeededForWish.class).result()).isEqualTo(house.day("11 jan"));
        assertThat(why("15 jan", Why.NeededForWish.class).milestone()).isEqualTo(Milestone.COOL_ROOM);
        assertThat(why("15 jan", Why.Late.class).result()).isEqualTo(4);
        assertThat(why("15 jan", Why.StageBegins.class).stage()).isEqualTo(Stage.COOL_ROOM);
        assertThat(why("15 jan", Why.StageBegins.class).result())
                .isEqualTo(new Window(house.day("24 dec"), house.day("15 jan"), house.day("28 jan")));
    }

    /** Carried straight from the cold to warmth on 16 January: 2, 3, 4 weeks of it, none of them spent in a cool room. */
    @Test
    void aPotThatSkipsTheCoolRoomFlowersAllTheWeeksAfterItsColdLater() {
        house.place("sill", Sort.WARM_SILL).then("T1").moved("16 jan", "sill");
        Why.StageBegins bloom = why("17 jan", Why.StageBegins.class);

        assertThat(bloom.stage()).isEqualTo(Stage.IN_BLOOM);
        assertThat(bloom.result()).isEqualTo(new Window(house.day("30 jan"), house.day("6 feb"), house.day("13 feb")));
        assertThat(bloom.recomputed()).isEqualTo(bloom.result());
    }

    @Test
    void aRuleOfTheTradeNamesWhereItIsPublished() {
        assertThat(why("15 jan", Why.MayComeIn.class).ruleSources())
                .containsExactly("missouri-garden", "consumer-christmas", "common-practice");
        assertThat(why("15 jan", Why.UseBy.class).ruleSources())
                .containsExactly("cornell-review", "cornell-tulip-trials");
        assertThat(why("15 jan", Why.NeededForWish.class).ruleSources()).containsExactly("isu-2024");
    }

    @Test
    void aWrongResultIsFound() {
        Why.UseBy right = why("15 jan", Why.UseBy.class);
        Why.UseBy wrong = new Why.UseBy(
                right.cold(), right.potted(), right.figures(), right.result().plusDays(1));
        assertThat(wrong.recomputed()).isNotEqualTo(wrong.result());
    }

    @Test
    void everyRuleNamesSourcesTheHandbookKnowsAndWhatWouldChangeIt() {
        assertThat(all()).allSatisfy(why -> {
            assertThat(why.sources())
                    .isNotEmpty()
                    .allSatisfy(
                            key -> assertThat(Handbook.standard().source(key)).isPresent());
            assertThat(why.levers()).isNotEmpty();
        });
        assertThat(all()).flatExtracting(Why::levers).contains(Lever.values());
    }

    @Test
    void everyRuleAnswersToItsCase() {
        assertThat(all())
                .allSatisfy(why -> assertThat(why.fold(new NameOfCase()))
                        .isEqualTo(why.getClass().getSimpleName()));
        assertThat(permitted(Why.class))
                .contains(WhyTrial.class)
                .allSatisfy(rule -> assertThat(all()).anyMatch(rule::isInstance));
    }

    /** The records themselves, also where they stand under a narrower sort. */
    private static List<Class<?>> permitted(Class<?> sort) {
        return sort.isSealed()
                ? Stream.of(sort.getPermittedSubclasses())
                        .flatMap(each -> permitted(each).stream())
                        .toList()
                : List.of(sort);
    }

    private List<Why<?>> all() {
        List<Why<?>> all = new ArrayList<>(house.on("15 jan").whys(house.id("T1")));
        all.add(RoundDue.of(
                Map.of(house.id("T1"), house.day("1 oct")), Map.of(), Optional.empty(), Optional.empty(), 10));
        all.addAll(ofYears());
        all.addAll(LearningTest.learnt());
        all.add(GroundForetoldTest.why());
        all.addAll(ofClimate());
        all.addAll(ofReadCold());
        return all;
    }

    /** Too warm, on the way to it, unread, frozen, and on trial; each seen on 12 January. */
    private static List<Why<?>> ofClimate() {
        Winter warming = held();
        for (int day = 1; day <= 12; day++) {
            warming = warming.logged(day + " jan", day + " jan", 5 + 0.3 * day);
        }
        return Stream.of(
                        cellar().logged("1 jan", "12 jan", 10),
                        warming,
                        held().logged("1 dec", "31 dec", 5),
                        held().logged("1 jan", "12 jan", 5).logged("8 jan", "9 jan", -4, 1),
                        cellar().logged("9 jan", "12 jan", 5))
                .flatMap(told -> told.on("12 jan").whys(told.journal().places().get(told.placeId("cellar"))).stream())
                .<Why<?>>map(why -> why)
                .toList();
    }

    private static Winter cellar() {
        return winter().place("cellar", Sort.CELLAR).usually(2, 9);
    }

    /** With a pot in it. */
    private static Winter held() {
        return cellar().pot("T1", "Tuesday Coat", "tulip").potted("1 dec", "cellar");
    }

    @Test
    void whatIsSaidOfAPlaceIsWorkedOutAgain() {
        assertThat(ofClimate())
                .allSatisfy(why -> assertThat((Object) why.recomputed()).isEqualTo(why.result()));
    }

    /** A tulip in a cellar that was read to be at 10 C. */
    private static List<Why<?>> ofReadCold() {
        Winter read = winter().place("cellar", Sort.CELLAR)
                .logged("1 oct", "31 dec", 10)
                .pot("T1", "Tuesday Coat", "tulip")
                .potted("1 oct", "cellar");
        return read.on("1 jan").whys(read.id("T1"));
    }

    @Test
    void whatThermometersSawIsWorkedOutAgain() {
        assertThat(ofReadCold())
                .allSatisfy(why -> assertThat((Object) why.recomputed()).isEqualTo(why.result()));
        assertThat(ofReadCold())
                .filteredOn(WhyCold.class::isInstance)
                .extracting(why -> (Object) why.result())
                .containsExactly(Window.on(LocalDate.of(2027, 2, 18)));
    }

    /** Fed in spring, and at rest in autumn. */
    private static List<Why<?>> ofYears() {
        Winter amaryllis = winter().place("sill", Sort.WARM_SILL)
                .pot("A1", "Umbrella Street", "amaryllis")
                .potted("20 nov", "sill")
                .flowered("10 jan")
                .outcome("14 jan", 4)
                .pastBloom("10 feb");
        List<Why<?>> whys = new ArrayList<>(amaryllis.on("1 mar").whys(amaryllis.id("A1")));
        amaryllis.then("A1").cared("1 jun", Care.RESTED);
        whys.addAll(amaryllis.on("10 jun").whys(amaryllis.id("A1")));
        return whys.stream()
                .filter(WhyOfYear.class::isInstance)
                .<Why<?>>map(why -> why)
                .toList();
    }

    /** Two weeks after the bloom it is fed (Iowa State University, in the Logan Herald), after 8 of rest it is woken (the same, 2020). */
    @Test
    void aPlantThatLivesOnSaysFromWhenItsJobIsCounted() {
        assertThat(ofYears())
                .extracting(why -> (Object) why.result())
                .containsExactly(
                        new Window(day("24 feb"), day("3 mar"), day("10 mar")),
                        new Window(
                                day("27 jul").plusYears(1),
                                day("3 aug").plusYears(1),
                                day("10 aug").plusYears(1)));
    }

    private LocalDate day(String told) {
        return house.day(told);
    }

    private static final class NameOfClimate implements WhyClimate.ClimateCases<String> {
        @Override
        public String frost(WhyFrost why) {
            return "WhyFrost";
        }

        @Override
        public String strayed(WhyStrayed why) {
            return "WhyStrayed";
        }

        @Override
        public String drift(WhyDrift why) {
            return "WhyDrift";
        }

        @Override
        public String unread(WhyUnread why) {
            return "WhyUnread";
        }

        @Override
        public String trial(WhyTrial why) {
            return "WhyTrial";
        }
    }

    private static final class NameOfCase implements Why.Cases<String> {
        @Override
        public String coldSoFar(Why.ColdSoFar why) {
            return "ColdSoFar";
        }

        @Override
        public String coldNeeded(Why.ColdNeeded why) {
            return "ColdNeeded";
        }

        @Override
        public String mayComeIn(Why.MayComeIn why) {
            return "MayComeIn";
        }

        @Override
        public String coldEnough(WhyCold why) {
            return "WhyCold";
        }

        @Override
        public String ground(WhyGround why) {
            return "WhyGround";
        }

        @Override
        public String climate(WhyClimate<?> why) {
            return why.foldClimate(new NameOfClimate());
        }

        @Override
        public String ofYear(WhyOfYear why) {
            return "WhyOfYear";
        }

        @Override
        public String learnt(WhyLearnt why) {
            return "WhyLearnt";
        }

        @Override
        public String useBy(Why.UseBy why) {
            return "UseBy";
        }

        @Override
        public String neededForWish(Why.NeededForWish why) {
            return "NeededForWish";
        }

        @Override
        public String stageBegins(Why.StageBegins why) {
            return "StageBegins";
        }

        @Override
        public String late(Why.Late why) {
            return "Late";
        }

        @Override
        public String roundDue(RoundDue why) {
            return "RoundDue";
        }
    }
}
