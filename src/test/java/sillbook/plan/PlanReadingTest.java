// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sillbook.plan.August.day;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sillbook.model.Id;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.Proposal;
import sillbook.model.Proposal.Course;
import sillbook.model.Purchase;
import sillbook.model.SeasonPlan;
import sillbook.model.SeasonPlan.Rule;
import sillbook.model.Stage;
import sillbook.model.Temperature;
import sillbook.model.Trench;
import sillbook.model.Variety;
import sillbook.model.Wish;
import sillbook.model.WishedFor;
import sillbook.model.WishedFor.Manner;
import sillbook.plan.Trouble.Sort;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Phase;

/** What a plan comes to, what it cannot do, and what would cure it. */
class PlanReadingTest {
    private static final Rule RULE = new Rule(2, 12, LocalDate.of(2028, 1, 3), LocalDate.of(2028, 2, 8), 4, Set.of());

    private final August august = new August()
            .bought("Marrow Lane", "tulip", 36, Purchase.State.IN_HAND)
            .place("cellar", Place.Sort.CELLAR, 9)
            .place("sill", Place.Sort.WARM_SILL, 2);

    private Proposal pot(LocalDate potting, String cold, LocalDate in) {
        Planning planning = august.planning();
        Candidate tulip = planning.candidates().get(0);
        return tulip.on(new Course(
                potting,
                Optional.of(August.placeId(planning, cold)),
                in,
                Optional.of(August.placeId(planning, "sill"))));
    }

    private PlanNow read(Rule rule, Proposal... pots) {
        return PlanReading.of(august.planning(), august.plan(rule, List.of(pots)));
    }

    private static Trouble only(PlanNow now, Sort sort) {
        List<Trouble> found =
                now.troubles().stream().filter(one -> one.sort() == sort).toList();
        assertThat(found).as("%s in %s", sort, now.troubles()).hasSize(1);
        return found.get(0);
    }

    @Test
    void aPotIsPottedComesInAndFlowers() {
        PlanNow now = read(RULE, pot(day(10, 1), "cellar", day(1, 15)));

        PlannedPot pot = now.pots().get(0);
        assertThat(pot.flowers().earliest()).isEqualTo(day(1, 29));
        assertThat(pot.inFlower()).isEqualTo(DaySpan.of(day(2, 5), day(2, 15)));
        assertThat(pot.phases(day(7, 1)))
                .extracting(Phase::stage)
                .containsExactly(
                        Stage.WAITING, Stage.COLD, Stage.COOL_ROOM, Stage.WARM_ROOM, Stage.IN_BLOOM, Stage.AFTER_BLOOM);
        assertThat(now.ribbon().pots(day(2, 4))).isZero();
        assertThat(now.ribbon().pots(day(2, 5))).isEqualTo(1);
        assertThat(now.ribbon().pots(LocalDate.of(2030, 1, 1))).isZero();
        assertThat(now.ribbon().chance(LocalDate.of(2030, 1, 1))).isZero();
        assertThat(now.ribbon().chance(day(2, 8))).isBetween(0.7, 1.0);
        assertThat(now.ribbon().mostAtOnce()).isEqualTo(1);
        assertThat(now.toMake()).isEqualTo(1);
    }

    @Test
    void placesAreAsFullAsThePotsThatStandThere() {
        PlanNow now = read(RULE, pot(day(10, 1), "cellar", day(1, 15)), pot(day(10, 1), "cellar", day(1, 20)));

        RoomTaken cellar = now.rooms().get(0);
        RoomTaken sill = now.rooms().get(1);
        int tenth = (int) (day(1, 10).toEpochDay() - cellar.days().start().toEpochDay());
        assertThat(cellar.pots().get(tenth)).isEqualTo(2);
        assertThat(cellar.pots().get(tenth + 5)).as("one has come in").isEqualTo(1);
        assertThat(sill.pots().get(tenth + 5)).isEqualTo(1);
        assertThat(sill.isUsed()).isTrue();
    }

    @Test
    void tooManyPotsAtAPlaceAreNamedWithTheDays() {
        Proposal pot = pot(day(10, 1), "cellar", day(1, 15));
        PlanNow now = read(RULE, pot, pot, pot);

        Trouble trouble = only(now, Sort.NO_ROOM);
        assertThat(trouble.pots()).containsExactlyInAnyOrder(0, 1, 2);
        assertThat(trouble.had()).isEqualTo(2);
        assertThat(trouble.needed()).isEqualTo(3);
        assertThat(trouble.days()).contains(DaySpan.of(day(1, 15), day(2, 15)));
        assertThat(trouble.cures())
                .containsExactly(new Trouble.MoreRoom(trouble.place().orElseThrow(), 1));
        assertThat(now.troublesOf(2)).contains(trouble);
    }

    @Test
    void tooLittleColdIsCuredByPottingEarlier() {
        PlanNow now = read(RULE, pot(day(12, 1), "cellar", day(1, 15)));

        Trouble trouble = only(now, Sort.COLD_TOO_SHORT);
        assertThat(trouble.had()).isEqualTo(45);
        assertThat(trouble.needed()).isEqualTo(105);
        assertThat(trouble.cures())
                .containsExactly(new Trouble.PotBy(0, day(1, 15).minusDays(105)));
    }

    @Test
    void coldThatCannotBeHadBeforeIsCuredByComingInLater() {
        PlanNow now = read(RULE, pot(day(9, 20), "cellar", day(12, 1)));

        assertThat(only(now, Sort.COLD_TOO_SHORT).cures())
                .containsExactly(new Trouble.BringIn(0, day(9, 2).plusDays(105)));
    }

    @Test
    void tooMuchColdIsNamed() {
        PlanNow now = read(RULE, pot(day(9, 5), "cellar", day(3, 20)));
        assertThat(only(now, Sort.COLD_TOO_LONG).needed()).isEqualTo(140);
    }

    @Test
    void bulbsThatCannotBeHereAreNotPotted() {
        assertThat(only(read(RULE, pot(day(8, 1), "cellar", day(12, 20))), Sort.POTTED_TOO_LATE)
                        .cures())
                .isEmpty();
    }

    @Test
    void aPotWithoutAColdPlaceIsGivenOne() {
        Planning planning = august.planning();
        Proposal nowhere =
                planning.candidates().get(0).on(new Course(day(10, 1), Optional.empty(), day(1, 15), Optional.empty()));
        PlanNow now = PlanReading.of(planning, august.plan(RULE, List.of(nowhere)));

        assertThat(only(now, Sort.NO_COLD_PLACE).cures())
                .containsExactly(new Trouble.StandAt(0, August.placeId(planning, "cellar")));
    }

    @Test
    void aPlaceThatFreezesIsNamedWithAnother() {
        august.garage("garage", -6, 8);
        PlanNow now = read(RULE, pot(day(10, 1), "garage", day(1, 15)));

        assertThat(only(now, Sort.WOULD_FREEZE).cures())
                .containsExactly(new Trouble.StandAt(0, August.placeId(august.planning(), "cellar")));
    }

    @Test
    void aPlaceThatIsNotThereIsNamed() {
        Id<Place> sill = August.placeId(august.planning(), "sill");
        august.there(sill, MonthDay.of(2, 1), MonthDay.of(6, 1));
        PlanNow now = read(RULE, pot(day(10, 1), "cellar", day(1, 15)));

        assertThat(only(now, Sort.NOT_THERE).place()).contains(sill);
    }

    @Test
    void tooManyOnAPottingDayAreNamed() {
        Rule sundays = new Rule(2, 12, day(1, 3), day(2, 8), 1, Set.of(DayOfWeek.SUNDAY));
        Trouble trouble = only(read(sundays, pot(day(10, 1), "cellar", day(1, 15))), Sort.POTTING_DAY);
        assertThat(trouble.had()).as("a Friday").isZero();
        assertThat(trouble.needed()).isEqualTo(1);
    }

    @Test
    void bulbsThatAreNotThereAreNamed() {
        Proposal pot = pot(day(10, 1), "cellar", day(1, 15));
        List<Proposal> seven = new ArrayList<>(java.util.Collections.nCopies(7, pot));
        Trouble trouble = only(PlanReading.of(august.planning(), august.plan(RULE, seven)), Sort.BULBS_SHORT);
        assertThat(trouble.had()).isEqualTo(36);
        assertThat(trouble.needed()).isEqualTo(42);
    }

    @Test
    void aGapIsFilledByWhatIsLeft() {
        august.wishEveryDay(day(2, 5), day(2, 20));
        PlanNow now = read(RULE, pot(day(10, 1), "cellar", day(1, 15)));

        Trouble gap = now.firstGap().orElseThrow();
        assertThat(gap.days()).contains(DaySpan.of(day(2, 15), day(2, 21)));
        assertThat(gap.cures())
                .containsExactly(new Trouble.OneMore(
                        now.pots().get(0).candidate().variety().id(), 6, day(1, 25)));
        assertThat(now.wishes().get(0).lacks()).isEqualTo(6);
        assertThat(now.wishes().get(0).isMet()).isFalse();
        assertThat(now.ribbon().longestGap()).isEqualTo(6);
    }

    @Test
    void aGapForWhichNothingIsLeftAsksForOneMore() {
        august.wishEveryDay(day(2, 5), day(2, 20));
        Proposal pot = pot(day(10, 1), "cellar", day(1, 15));
        PlanNow now = PlanReading.of(august.planning(), august.plan(RULE, java.util.Collections.nCopies(6, pot)));

        assertThat(now.firstGap().orElseThrow().cures())
                .containsExactly(new Trouble.Buy(
                        now.pots().get(0).candidate().variety().id(),
                        6,
                        day(1, 25).minusDays(105),
                        day(1, 25)));
    }

    @Test
    void aGapWithoutRoomAsksForRoom() {
        august.wishEveryDay(day(2, 5), day(2, 20));
        PlanNow now = read(RULE, pot(day(10, 1), "cellar", day(1, 15)), pot(day(10, 1), "cellar", day(1, 15)));

        assertThat(now.firstGap().orElseThrow().cures())
                .containsExactly(new Trouble.MoreRoom(August.placeId(august.planning(), "sill"), 1));
    }

    @Test
    void aWishForWhichNothingSuitsAsksToChoose() {
        august.wishOn(day(2, 8), 1, true);
        PlanNow now = read(RULE, pot(day(10, 1), "cellar", day(1, 15)));

        Trouble trouble = only(now, Sort.WISH);
        assertThat(trouble.cures()).containsExactly(new Trouble.Choose());
        assertThat(now.wishes().get(0).chance()).isZero();
        assertThat(now.wishes().get(0).spares()).isEmpty();
        assertThat(now.wishes().get(0).latest()).isEmpty();
    }

    @Test
    void aDatedWishTellsHowSureItIsAndHowLateItsPotsMayBe() {
        august.wishOn(day(2, 13), 1, false);
        PlanNow one = read(RULE, pot(day(10, 1), "cellar", day(1, 15)));

        WishMet met = one.wishes().get(0);
        assertThat(met.isMet()).isTrue();
        assertThat(met.lacks()).isZero();
        assertThat(met.chance()).isBetween(0.6, 0.85);
        assertThat(met.spares()).contains(1);
        assertThat(met.latest())
                .as("bulbs that are here need not be ordered")
                .contains(new LatestDays(tulip(), Optional.empty(), day(1, 23).minusDays(105), day(1, 23)));

        PlanNow two = read(RULE, pot(day(10, 1), "cellar", day(1, 15)), pot(day(10, 1), "cellar", day(1, 15)));
        double both = 1 - (1 - met.chance()) * (1 - met.chance());
        assertThat(two.wishes().get(0).chance()).isCloseTo(both, within(1e-12));
        assertThat(two.wishes().get(0).spares()).contains(0);
    }

    private Id<Variety> tulip() {
        return august.planning().candidates().get(0).variety().id();
    }

    @Test
    void bulbsThatAreStillToBeBoughtAreOrderedTwoWeeksBeforeTheyArePotted() {
        august.bought("Linen Parade", "paperwhite", 20, Purchase.State.TO_ORDER);
        Wish wish = august.wishOn(day(2, 13), 1, false).planning().wishes().get(0);
        PlanNow now = read(RULE, pot(day(10, 1), "cellar", day(1, 15)));

        LatestDays latest = now.wishes().get(0).latest().orElseThrow();
        assertThat(wish.from()).isEqualTo(day(2, 13));
        assertThat(latest.potBy()).isEqualTo(latest.bringInBy());
        assertThat(latest.orderBy()).contains(latest.potBy().minusDays(14));
    }

    /** A pot that is likely in flower two days too early may still be in flower on the day, and two spares of it make less sure than two on time. */
    @Test
    void aPotThatLikelyMissesTheDayHasItsChanceToo() {
        august.wishOn(day(2, 17), 1, false);
        PlanNow now = read(RULE, pot(day(10, 1), "cellar", day(1, 15)));

        WishMet met = now.wishes().get(0);
        assertThat(now.pots().get(0).inFlower().contains(day(2, 17))).isFalse();
        assertThat(met.isMet()).isFalse();
        assertThat(met.chance()).isBetween(0.05, 0.5);
    }

    /** Three that are likely late make it less sure than one more pot could. */
    @Test
    void sparesAreCountedBesideThePotsThatAreThere() {
        august.wishOn(day(2, 6), 3, false);
        Proposal late = pot(day(10, 1), "cellar", day(1, 15));
        WishMet three = read(RULE, late, late, late).wishes().get(0);

        assertThat(three.isMet()).isTrue();
        assertThat(three.chance()).isLessThan(0.5);
        assertThat(three.spares().orElseThrow()).isGreaterThan(1);
    }

    @Test
    void aWishForOneOfSeveralDaysIsMetOnTheBestOfThem() {
        august.wish(day(1, 28), day(2, 9), WishedFor.one(Optional.empty()));
        PlanNow now = read(RULE, pot(day(10, 1), "cellar", day(1, 15)));

        assertThat(now.wishes().get(0).isMet()).isTrue();
        assertThat(now.wishes().get(0).chance()).isPositive();
    }

    @Test
    void aWishForEveryDayThatNothingSuitsIsTold() {
        august.wish(day(2, 5), day(2, 9), August.asks(Manner.EVERY_DAY, 1, true, Optional.empty()));
        PlanNow now = read(RULE, pot(day(10, 1), "cellar", day(1, 15)));

        assertThat(now.ribbon().gaps()).as("something is in bloom").isEmpty();
        assertThat(now.wishes().get(0).lacks()).isEqualTo(5);
        assertThat(now.wishes().get(0).chance()).isZero();
        assertThat(only(now, Sort.WISH).cures()).containsExactly(new Trouble.Choose());
    }

    @Test
    void aPlaceThatAPlanNamesIsCountedWhateverItServesNow() {
        Proposal first = pot(day(10, 1), "cellar", day(1, 15));
        Id<Place> sill = August.placeId(august.planning(), "sill");
        Place now = august.journal().places().get(sill);
        august.put(new Place(
                sill,
                now.name(),
                Place.Sort.COOL_ROOM,
                Stage.COOL_ROOM,
                Optional.empty(),
                now.coldDays(),
                "",
                Optional.of(1),
                1,
                now.bridges(),
                Set.of(),
                ""));
        august.place("other sill", Place.Sort.WARM_SILL, 3);

        assertThat(only(read(RULE, first, first), Sort.NO_ROOM).place()).contains(sill);
    }

    @Test
    void aPotGoesToNoPlaceThatFreezesToo() {
        August bare = new August()
                .bought("Marrow Lane", "tulip", 12, Purchase.State.IN_HAND)
                .place("sill", Place.Sort.WARM_SILL, 2);
        Id<Place> garage = bare.garage("garage", -6, 8);
        bare.garage("shed", -6, 8);
        Planning planning = bare.planning();
        Proposal pot = planning.candidates()
                .get(0)
                .on(new Course(day(10, 1), Optional.of(garage), day(1, 15), Optional.empty()));
        assertThat(only(PlanReading.of(planning, bare.plan(RULE, List.of(pot))), Sort.WOULD_FREEZE)
                        .cures())
                .isEmpty();
    }

    @Test
    void aPlaceThatStaysAboveFrostIsNoTrouble() {
        august.garage("store", 2, 9);
        assertThat(read(RULE, pot(day(10, 1), "store", day(1, 15))).troublesOf(0))
                .isEmpty();
    }

    @Test
    void aGapIsFilledByBulbsThatNeedNoCold() {
        August bare = new August()
                .bought("Linen Parade", "paperwhite", 10, Purchase.State.IN_HAND)
                .place("sill", Place.Sort.WARM_SILL, 2)
                .wishEveryDay(day(1, 5), day(1, 9));
        PlanNow now = PlanReading.of(bare.planning(), bare.plan(RULE, List.of()));
        assertThat(now.firstGap().orElseThrow().cures().get(0)).isInstanceOf(Trouble.OneMore.class);

        Planning planning = bare.planning();
        LocalDate soon = day(10, 1);
        List<Proposal> all = planning.candidates().stream()
                .map(candidate -> candidate.on(new Course(soon, Optional.empty(), soon, Optional.empty())))
                .toList();
        PlanNow used = PlanReading.of(planning, bare.plan(RULE, all));
        assertThat(used.firstGap().orElseThrow().cures())
                .as("potted on the day it comes in")
                .singleElement()
                .isInstanceOfSatisfying(
                        Trouble.Buy.class, buy -> assertThat(buy.potted()).isEqualTo(buy.in()));
    }

    @Test
    void aGapThatTheFullColdPlaceLeavesAsksForRoomThere() {
        August small = new August()
                .bought("Marrow Lane", "tulip", 12, Purchase.State.IN_HAND)
                .place("fridge", Place.Sort.FRIDGE, 1)
                .place("sill", Place.Sort.WARM_SILL, 5)
                .wishEveryDay(day(2, 5), day(2, 24));
        Planning planning = small.planning();
        Proposal pot = planning.candidates()
                .get(0)
                .on(new Course(
                        day(10, 1),
                        Optional.of(August.placeId(planning, "fridge")),
                        day(1, 15),
                        Optional.of(August.placeId(planning, "sill"))));
        assertThat(PlanReading.of(planning, small.plan(RULE, List.of(pot)))
                        .firstGap()
                        .orElseThrow()
                        .cures())
                .containsExactly(new Trouble.MoreRoom(August.placeId(planning, "fridge"), 1));
    }

    @Test
    void aColdPlaceThatIsTakenDownIsNoneForThosePots() {
        Id<Place> cellar = August.placeId(august.planning(), "cellar");
        august.there(cellar, MonthDay.of(11, 15), MonthDay.of(12, 15));
        assertThat(august.planning().candidates().get(0).in(august.planning().days()))
                .isEmpty();
    }

    private Wish wishIn(String room, int pots) {
        august.wishIn(August.placeId(august.planning(), room), day(2, 8), pots);
        return august.journal().wishes().all().stream()
                .filter(wish -> wish.asks().pots() == pots)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aWishForARoomIsMetOnlyThere() {
        august.place("other sill", Place.Sort.WARM_SILL, 3);
        Wish there = wishIn("sill", 1);
        Wish elsewhere = wishIn("other sill", 25);
        PlanNow now = read(RULE, pot(day(10, 1), "cellar", day(1, 15)));

        assertThat(now.wishes()).extracting(WishMet::isMet).containsExactlyInAnyOrder(true, false);
        assertThat(now.wishes())
                .filteredOn(met -> met.wish().equals(elsewhere))
                .singleElement()
                .satisfies(met -> assertThat(met.spares())
                        .as("nobody says how many of 25")
                        .isEmpty());
        assertThat(now.of(there).pots(day(2, 8))).isEqualTo(1);
        assertThat(now.of(elsewhere).pots(day(2, 8))).isZero();
    }

    @Test
    void aTrenchThatFreezesInManyWintersIsNamed() {
        Place ground = Place.of(august.id(), "ground", Place.Sort.TRENCH);
        august.put(ground);
        List<Temperature> months = new ArrayList<>();
        for (double mean : new double[] {-14, -12, -6, 2, 9, 15, 17, 16, 10, 4, -4, -11}) {
            months.add(Temperature.ofCelsius(mean));
        }
        august.put(new Trench(
                august.id(),
                ground.id(),
                Length.ofCentimetres(20),
                Trench.Soil.GARDEN_SOIL,
                Optional.empty(),
                new Trench.Means(months),
                Optional.empty()));

        assertThat(only(read(RULE, pot(day(10, 1), "ground", day(1, 15))), Sort.WOULD_FREEZE)
                        .cures())
                .hasSize(1);
    }

    @Test
    void aNudgeMovesPottingAndFlowersWithIt() {
        Planning planning = august.planning();
        SeasonPlan plan = august.plan(RULE, List.of(pot(day(10, 2), "cellar", day(1, 15))));

        SeasonPlan later = Nudge.by(planning, plan, 0, 7);
        assertThat(later.pots().get(0).course().in()).isEqualTo(day(1, 22));
        assertThat(later.pots().get(0).course().potting()).isEqualTo(day(1, 22).minusDays(105));
        assertThat(Nudge.by(planning, later, 0, -300).pots().get(0).course().in())
                .as("not into the past")
                .isEqualTo(August.TODAY);
        assertThat(Nudge.by(planning, later, 0, 400).pots().get(0).course().in())
                .as("nor into the next winter")
                .isEqualTo(planning.days().last());
    }

    @Test
    void potsAreAddedAndLeftOutByHand() {
        Planning planning = august.planning();
        SeasonPlan plan = august.plan(RULE, List.of(pot(day(10, 2), "cellar", day(1, 15))));

        SeasonPlan two = Nudge.with(planning, plan, day(1, 5));
        assertThat(two.pots()).extracting(pot -> pot.course().in()).containsExactly(day(1, 5), day(1, 15));
        assertThat(Nudge.with(planning, plan, day(8, 30)).pots())
                .as("no bulb can be in flower so soon")
                .hasSize(1);
        assertThat(Nudge.without(two, 0).pots()).hasSize(1);
        Course elsewhere = new Course(day(10, 2), Optional.empty(), day(1, 15), Optional.empty());
        assertThat(Nudge.at(plan, 0, elsewhere).pots().get(0).course()).isEqualTo(elsewhere);
    }

    @Test
    void aPotOfWhichTheJournalKnowsNothingMoreIsMovedAllTheSame() {
        Planning planning = august.planning();
        Proposal gone = pot(day(10, 2), "cellar", day(1, 15));
        Proposal other =
                new Proposal(gone.variety(), 5, Optional.empty(), Optional.empty(), Optional.empty(), gone.course());
        SeasonPlan plan = august.plan(RULE, List.of(other));

        assertThat(PlanReading.of(planning, plan).pots()).hasSize(1);
        Course moved = Nudge.by(planning, plan, 0, 7).pots().get(0).course();
        assertThat(moved.in()).isEqualTo(day(1, 22));
        assertThat(moved.potting()).isEqualTo(day(10, 9));
    }
}
