// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.plan.August.day;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sillbook.model.Choice;
import sillbook.model.Id;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Proposal;
import sillbook.model.Purchase;
import sillbook.model.SeasonPlan.Rule;
import sillbook.model.Space;
import sillbook.model.Variety;
import sillbook.reckon.dates.DaySpan;

/** What a season is planned with, and the plan that a rule gives. */
class PlanningTest {
    private static Map<String, Long> byName(List<Candidate> candidates) {
        return candidates.stream()
                .collect(Collectors.groupingBy(one -> one.variety().name(), Collectors.counting()));
    }

    @Test
    void purchasesFillAsManyPotsAsArePublishedForOne() {
        Planning planning = August.usual().planning();

        assertThat(byName(planning.candidates()))
                .containsEntry("Marrow Lane", 3L)
                .containsEntry("Lantern Row", 4L)
                .containsEntry("Inkwell", 3L)
                .containsEntry("Penny Gloaming", 2L);
        assertThat(planning.candidates())
                .filteredOn(one -> one.variety().name().equals("Lantern Row"))
                .extracting(Candidate::bulbs)
                .as("fifteen bulbs, four to a pot")
                .containsExactly(4, 4, 4, 3);
    }

    @Test
    void aPlanIsMadeOfPotsPlacesAndWishes() {
        Planning before = August.usual().planning();

        assertThat(before.isMadeOfTheSame(August.usual().planning())).isTrue();
        assertThat(August.usual().bought("Ninepenny Hat", "tulip", 5, Purchase.State.ORDERED))
                .satisfies(house ->
                        assertThat(before.isMadeOfTheSame(house.planning())).isFalse());
        assertThat(August.usual().place("loft", Place.Sort.CELLAR, 5))
                .satisfies(house ->
                        assertThat(before.isMadeOfTheSame(house.planning())).isFalse());
        assertThat(August.usual().place("bay", Place.Sort.WARM_SILL, 5))
                .satisfies(house ->
                        assertThat(before.isMadeOfTheSame(house.planning())).isFalse());
        assertThat(August.usual().wishOn(LocalDate.of(2027, 2, 14), 2, false))
                .satisfies(house ->
                        assertThat(before.isMadeOfTheSame(house.planning())).isFalse());
    }

    @Test
    void whatIsOrderedComesInTwoWeeksAndWhatIsHereCanBePottedWhenItIsTime() {
        Planning planning = August.usual().planningOn(day(9, 10));

        assertThat(planning.candidates())
                .filteredOn(one -> one.variety().name().equals("Inkwell"))
                .allSatisfy(one -> assertThat(one.readyFrom()).isEqualTo(day(9, 10)));
        assertThat(planning.candidates())
                .filteredOn(one -> one.variety().name().equals("Marrow Lane"))
                .allSatisfy(one -> assertThat(one.readyFrom()).isEqualTo(day(9, 24)));
    }

    @Test
    void chosenBulbsThatAreNotBoughtYetAreThereToo() {
        August august = August.usual();
        Variety crocus = august.variety("Penny Gloaming");
        august.put(new Choice(august.id(), crocus.id(), August.SEASON, new Choice.Chosen(48)));

        assertThat(august.planning().candidates())
                .filteredOn(one ->
                        one.variety().id().equals(crocus.id()) && one.purchase().isEmpty())
                .as("24 of 48 are to be ordered already")
                .hasSize(2);
    }

    @Test
    void chosenBulbsThatAPotWaitsForAreItsOwn() {
        August august = August.usual();
        Variety crocus = august.variety("Penny Gloaming");
        august.put(new Choice(august.id(), crocus.id(), August.SEASON, new Choice.Chosen(48)));
        august.put(Pot.waiting(
                august.id(),
                August.SEASON,
                "C1",
                List.of(new Pot.Planting(crocus.id(), 12, Optional.empty())),
                Optional.empty()));

        assertThat(august.planning().candidates())
                .filteredOn(one -> one.variety().id().equals(crocus.id())
                        && one.purchase().isEmpty()
                        && one.pot().isEmpty())
                .hasSize(1);
    }

    @Test
    void aPlaceHoldsWhatIsWrittenElseWhatItsShelfDoes() {
        August august = new August().place("cellar", Place.Sort.CELLAR, 5);
        Place porch = Place.of(august.id(), "frame", Place.Sort.COLD_FRAME);
        august.put(porch)
                .put(new Space(
                        august.id(),
                        porch.id(),
                        Optional.of(new Space.Surface(Length.ofCentimetres(64), Length.ofCentimetres(32))),
                        Optional.empty(),
                        new Place.ColdDays(MonthDay.of(10, 1), MonthDay.of(4, 1))));
        List<Berth> colds = august.planning().colds();

        assertThat(colds).extracting(berth -> berth.place().name()).containsExactly("cellar", "frame");
        assertThat(colds.get(0).room()).contains(5);
        assertThat(colds.get(1).room()).as("four by two of 16 cm").contains(8);
        assertThat(colds.get(1).isThere(day(9, 30))).isFalse();
        assertThat(colds.get(1).isCold(day(10, 1))).isTrue();
        assertThat(colds.get(0).isThere(day(9, 30))).isTrue();
    }

    @Test
    void coolRoomsServeWhereThereIsNoWarmOne() {
        August august = new August().place("stair window", Place.Sort.COOL_ROOM, 3);
        assertThat(august.planning().rooms())
                .extracting(berth -> berth.place().name())
                .containsExactly("stair window");
    }

    @Test
    void theColdIsCountedBackFromTheDayOfComingIn() {
        August august = new August()
                .bought("Marrow Lane", "tulip", 6, Purchase.State.IN_HAND)
                .trench("trench", 12, MonthDay.of(10, 15), MonthDay.of(4, 1));
        Planning planning = august.planning();
        Candidate tulip = planning.candidates().get(0);
        Berth trench = planning.colds().get(0);

        assertThat(tulip.fit().potting(trench, day(2, 1)))
                .as("fifteen weeks before")
                .contains(day(2, 1).minusWeeks(15));
        assertThat(tulip.fit().potting(trench, day(1, 20)))
                .as("the ground is not cold for so long")
                .isEmpty();
        assertThat(tulip.fit().potting(trench, day(4, 2)))
                .as("it is no longer cold")
                .isEmpty();
        assertThat(tulip.in(planning.days()))
                .contains(DaySpan.ofInclusive(day(10, 15).plusWeeks(15), day(4, 1)));
    }

    @Test
    void aRulePutsSoManyPotsOnEachOfItsDays() {
        Planning planning = August.usual().planning();
        Rule rule = new Rule(2, 12, day(1, 3), day(2, 8), 4, Set.of());

        List<Proposal> pots = HandRule.pots(planning, rule);

        assertThat(pots)
                .extracting(pot -> pot.course().in())
                .containsExactly(
                        day(1, 3), day(1, 3), day(1, 15), day(1, 15), day(1, 27), day(1, 27), day(2, 8), day(2, 8));
        assertThat(pots.subList(0, 2)).extracting(Proposal::variety).doesNotHaveDuplicates();
    }

    @Test
    void potsArePottedOnTheGrowersDaysAndNotTooManyOnOne() {
        Planning planning = August.usual().planning();
        Rule rule = new Rule(3, 10, day(1, 3), day(2, 20), 1, Set.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY));

        List<LocalDate> days = HandRule.pots(planning, rule).stream()
                .filter(pot -> pot.course().cold().isPresent())
                .map(pot -> pot.course().potting())
                .toList();

        assertThat(days).doesNotHaveDuplicates().allMatch(rule::isPottingDay);
    }

    @Test
    void aFullFridgeSendsPotsToTheCellar() {
        August august = new August()
                .bought("Marrow Lane", "tulip", 24, Purchase.State.IN_HAND)
                .place("fridge", Place.Sort.FRIDGE, 1)
                .place("cellar", Place.Sort.CELLAR, 9)
                .place("sill", Place.Sort.WARM_SILL, 9);
        Planning planning = august.planning();
        List<Proposal> pots = HandRule.pots(planning, new Rule(2, 10, day(1, 10), day(1, 20), 9, Set.of()));

        Id<Place> fridge = August.placeId(planning, "fridge");
        assertThat(pots).hasSize(4);
        assertThat(pots.stream().filter(pot -> pot.course().cold().equals(Optional.of(fridge))))
                .hasSize(1);
    }

    @Test
    void withoutAnythingToPlanWithThereIsNoPot() {
        Planning planning = new August().planning();
        assertThat(HandRule.pots(planning, planning.usualRule())).isEmpty();
        assertThat(planning.usualRule().everyDays()).isEqualTo(12);
        assertThat(planning.usualRule().from()).isEqualTo(LocalDate.of(2027, 12, 23));
    }
}
