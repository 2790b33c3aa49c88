// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sillbook.plan.August.day;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sillbook.model.Arrival;
import sillbook.model.Container;
import sillbook.model.Day;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Length;
import sillbook.model.Pot;
import sillbook.model.Potting;
import sillbook.model.PottingMix;
import sillbook.model.Proposal;
import sillbook.model.Proposal.Course;
import sillbook.model.Purchase;
import sillbook.model.Purchase.Money;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.model.SeasonPlan.Rule;
import sillbook.model.Subject;
import sillbook.plan.Supplies.State;

/** What a plan takes, less what is in hand. */
class SuppliesTest {
    private static final LocalDate OCTOBER = day(10, 3);
    private static final Rule RULE = new Rule(2, 12, day(1, 3), day(2, 8), 4, Set.of());

    private final August august = August.usual();

    private Id<Container> pan() {
        return august.journal().containers().all().iterator().next().id();
    }

    private Proposal pot(String name, int bulbs, boolean isBought, int week) {
        Purchase from = august.purchase(name);
        return new Proposal(
                from.variety(),
                bulbs,
                isBought ? Optional.of(from.id()) : Optional.empty(),
                Optional.of(pan()),
                Optional.empty(),
                new Course(OCTOBER.plusWeeks(week), Optional.empty(), OCTOBER.plusWeeks(week + 15), Optional.empty()));
    }

    private Supplies supplies(Proposal... pots) {
        SeasonPlan plan = august.plan(RULE, List.of(pots));
        return SuppliesReading.of(august.journal(), plan);
    }

    @Test
    void eachPurchaseIsWhereItIs() {
        Supplies supplies = supplies(
                pot("Marrow Lane", 5, true, 0),
                pot("Marrow Lane", 5, true, 1),
                pot("Inkwell", 3, true, 0),
                pot("Penny Gloaming", 12, true, 2),
                pot("Lantern Row", 20, false, 1));

        assertThat(supplies.bulbs())
                .extracting(Supplies.Bulbs::state)
                .as("Inkwell, Lantern Row, Marrow Lane, Penny Gloaming, all of one supplier")
                .containsExactly(State.IN_HAND, State.TO_BUY, State.ORDERED, State.TO_ORDER);
        assertThat(supplies.bulbs()).extracting(Supplies.Bulbs::wanting).containsExactly(0, 5, 0, 12);
        assertThat(supplies.wanting()).isEqualTo(17);
        Supplies.Bulbs tulips = supplies.bulbs().get(2);
        assertThat(tulips.bulbs()).isEqualTo(10);
        assertThat(tulips.pots()).isEqualTo(2);
        assertThat(tulips.potBy()).isEqualTo(OCTOBER);
        assertThat(tulips.orderBy()).isEqualTo(OCTOBER.minusDays(14));
        assertThat(supplies.labels()).isEqualTo(5);
    }

    /** Pots that wait for bulbs that were only chosen get those that are bought then. */
    @Test
    void bulbsThatWereBoughtSinceFillThePotsThatWaitForThem() {
        Purchase tulips = august.purchase("Marrow Lane");
        Supplies.Bulbs some = supplies(pot("Marrow Lane", tulips.count() - 3, false, 0))
                .bulbs()
                .get(0);
        assertThat(some.state()).isEqualTo(State.ORDERED);
        assertThat(some.wanting()).isZero();
        assertThat(supplies(pot("Marrow Lane", tulips.count() - 3, false, 0)).leftOver())
                .filteredOn(left -> left.purchase().equals(tulips.id()))
                .extracting(Supplies.Leftover::bulbs)
                .containsExactly(3);

        august.put(
                Purchase.of(august.id(), tulips.variety(), tulips.season(), tulips.day(), 9, Purchase.State.TO_ORDER));
        Supplies.Bulbs more = supplies(pot("Marrow Lane", tulips.count() + 9, false, 0))
                .bulbs()
                .get(0);
        assertThat(more.state()).isEqualTo(State.TO_ORDER);
        assertThat(more.wanting())
                .as("those on the list are still to be ordered")
                .isEqualTo(9);
        assertThat(supplies(pot("Marrow Lane", tulips.count() + 10, false, 0))
                        .bulbs()
                        .get(0)
                        .state())
                .isEqualTo(State.TO_BUY);

        august.put(Purchase.of(
                tulips.id(), tulips.variety(), tulips.season(), tulips.day(), tulips.count(), Purchase.State.IN_HAND));
        assertThat(supplies(pot("Marrow Lane", tulips.count(), false, 0))
                        .bulbs()
                        .get(0)
                        .state())
                .isEqualTo(State.IN_HAND);
    }

    @Test
    void whatIsStillToBeOrderedHasACost() {
        Supplies supplies = supplies(pot("Penny Gloaming", 12, true, 2), pot("Lantern Row", 20, false, 1));

        assertThat(supplies.cost()).as("seventeen at forty").containsExactly(new Money(680, ""));
        assertThat(supplies.withoutPrice()).isZero();
    }

    @Test
    void aPurchaseThatCameShortWantsTheRest() {
        Purchase tulips = august.purchase("Marrow Lane");
        august.put(
                Purchase.of(tulips.id(), tulips.variety(), tulips.season(), tulips.day(), 8, Purchase.State.IN_HAND));
        Supplies supplies = supplies(pot("Marrow Lane", 5, true, 0), pot("Marrow Lane", 5, true, 1));

        assertThat(supplies.bulbs().get(0).state()).isEqualTo(State.SHORT);
        assertThat(supplies.bulbs().get(0).wanting()).isEqualTo(2);
        assertThat(supplies.withoutPrice()).as("no price was written").isEqualTo(1);
        august.put(tulips.rejected());
        assertThat(supplies(pot("Marrow Lane", 5, true, 0)).bulbs().get(0).state())
                .isEqualTo(State.SHORT);
    }

    @Test
    void theRestOfAShortParcelCostsWhatItsBulbsDid() {
        came(august.purchase("Marrow Lane"), 8);

        assertThat(supplies(pot("Marrow Lane", 10, true, 0)).cost())
                .as("two of twenty for 8.00")
                .containsExactly(new Money(80, ""));
    }

    private void came(Purchase ordered, int bulbs) {
        Arrival fewer = new Arrival(
                Optional.of(ordered.count()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
        august.put(new Purchase(
                ordered.id(),
                ordered.variety(),
                ordered.season(),
                ordered.day(),
                bulbs,
                ordered.grade(),
                ordered.price(),
                ordered.supplier(),
                ordered.origin(),
                fewer,
                ordered.waits(),
                ordered.cooled(),
                Purchase.State.IN_HAND,
                ""));
    }

    @Test
    void bulbsThatAreStillToBeOrderedAreNotShort() {
        assertThat(supplies(pot("Penny Gloaming", 24, true, 2), pot("Penny Gloaming", 24, true, 3))
                        .bulbs()
                        .get(0))
                .satisfies(one -> {
                    assertThat(one.state()).isEqualTo(State.TO_ORDER);
                    assertThat(one.wanting()).isEqualTo(48);
                });
    }

    @Test
    void whatNoPotTakesIsLeftOver() {
        Supplies supplies = supplies(pot("Marrow Lane", 5, true, 0));

        assertThat(supplies.leftOver())
                .filteredOn(one ->
                        one.variety().equals(august.purchase("Marrow Lane").variety()))
                .extracting(Supplies.Leftover::bulbs)
                .containsExactly(15);
        assertThat(supplies.leftOver()).hasSize(6);
    }

    @Test
    void containersAreCountedWashedAndBought() {
        Proposal pot = pot("Marrow Lane", 5, true, 0);
        Proposal[] twelve = new Proposal[12];
        java.util.Arrays.fill(twelve, pot);
        Supplies.Pots pans = supplies(twelve).containers().get(0);
        assertThat(pans).isEqualTo(new Supplies.Pots(pan(), 12, 10, 3));
        assertThat(pans.toBuy()).isEqualTo(2);
        assertThat(pans.toWash()).isEqualTo(3);
        assertThat(new Supplies.Pots(pan(), 5, 10, 3).toWash())
                .as("seven are washed")
                .isZero();
    }

    @Test
    void whereContainersAreToBeBoughtTheFreeOnesOfOtherSortsAreNamed() {
        Container pan = august.journal().containers().get(pan());
        Id<Container> bowl = august.id();
        august.put(new Container(bowl, "bowl", pan.shape(), pan.across(), Optional.empty(), 3, 1, ""));
        Proposal pot = pot("Marrow Lane", 5, true, 0);

        assertThat(supplies(pot).containers())
                .extracting(Supplies.Pots::container)
                .containsExactly(pan());
        Proposal[] eleven = new Proposal[11];
        java.util.Arrays.fill(eleven, pot);
        assertThat(supplies(eleven).containers())
                .containsExactly(new Supplies.Pots(pan(), 11, 10, 3), new Supplies.Pots(bowl, 0, 3, 1));
    }

    @Test
    void thePottingMixIsWhatThePansHoldBesideTheBulbs() {
        Supplies.Mix mix = supplies(pot("Marrow Lane", 5, true, 0)).mix().orElseThrow();

        double across = 15;
        double high = 4.25 / 6.62 * across;
        double base = 0.7 * across;
        double filled = high - 1.3;
        double top = base + (across - base) * filled / high;
        double volume = Math.PI * filled * (top * top + top * base + base * base) / 12;
        double bulb = 12 / Math.PI;
        double bulbs = 5 * Math.PI * bulb * bulb * bulb / 6;
        assertThat(mix.litres()).isCloseTo((volume - bulbs) / 1000 * 1.2, within(1e-9));
        assertThat(mix.mix()).isEmpty();
        assertThat(mix.withoutSize()).isZero();
    }

    @Test
    void aHeightThatIsWrittenGoesBeforeTheUsualOneAndTheMixIsTakenApart() {
        Container pan = august.journal().containers().get(pan());
        Supplies.Mix shallow = supplies(pot("Marrow Lane", 5, true, 0)).mix().orElseThrow();
        august.put(new Container(
                pan.id(), pan.name(), pan.shape(), pan.across(), Optional.of(Length.ofCentimetres(20)), 10, 0, ""));
        PottingMix mix = new PottingMix(
                august.id(), "house mix", List.of(new PottingMix.Part(2, "loam"), new PottingMix.Part(1, "grit")), "");
        august.put(mix).put(lastYears(Optional.of(mix.id())));

        Supplies.Mix deep = supplies(pot("Marrow Lane", 5, true, 0)).mix().orElseThrow();
        assertThat(deep.litres()).isGreaterThan(shallow.litres());
        assertThat(deep.mix()).contains(mix.id());
        assertThat(deep.parts()).hasSize(2);
        assertThat(deep.parts().get(0)).isCloseTo(2 * deep.parts().get(1), within(1e-9));
        august.put(new PottingMix(mix.id(), "bag", List.of(), ""));
        assertThat(supplies(pot("Marrow Lane", 5, true, 0)).mix().orElseThrow().parts())
                .isEmpty();
        august.put(new Container(
                pan.id(), pan.name(), pan.shape(), Optional.of(Length.ofCentimetres(0)), Optional.empty(), 10, 0, ""));
        assertThat(supplies(pot("Marrow Lane", 5, true, 0)).mix()).isEmpty();
    }

    @Test
    void potsThatAreGrowingKeepTheirContainers() {
        Pot growing = lastYears(Optional.empty());
        Pot done = lastYears(Optional.empty());
        Pot waiting = lastYears(Optional.empty());
        Pot old = Pot.waiting(august.id(), new Season(2020), "T1", growing.plantings(), growing.container());
        List.of(growing, done, waiting, old).forEach(august::put);
        happened(growing, new Happening.Potted());
        happened(done, new Happening.Potted());
        happened(done, new Happening.Closed(Happening.End.GIVEN, ""));
        happened(old, new Happening.Potted());

        assertThat(supplies(pot("Marrow Lane", 5, true, 0)).containers().get(0).free())
                .as("ten, and one of them in use")
                .isEqualTo(9);
    }

    private void happened(Pot pot, Happening what) {
        august.put(new Event(
                august.id(),
                new Subject.OfPot(pot.id()),
                Day.on(LocalDate.of(2026, 10, 1)),
                what instanceof Happening.Potted ? 0 : 1,
                Instant.parse("2026-10-01T09:00:00Z"),
                Optional.empty(),
                what));
    }

    private Pot lastYears(Optional<Id<PottingMix>> mix) {
        return new Pot(
                august.id(),
                August.SEASON.previous(),
                "T1",
                List.of(new Pot.Planting(august.purchase("Marrow Lane").variety(), 7, Optional.empty())),
                Pot.Way.DRAINED,
                Optional.of(pan()),
                Optional.empty(),
                mix,
                Potting.NOT_SAID,
                Optional.empty(),
                Optional.empty(),
                "");
    }

    @Test
    void aVarietyIsPottedAsItWasLast() {
        august.put(lastYears(Optional.empty()));
        assertThat(august.planning().candidates())
                .filteredOn(one -> one.variety().name().equals("Marrow Lane"))
                .extracting(Candidate::bulbs)
                .containsExactly(7, 7, 6);
    }

    @Test
    void anEmptyOrAnOuterPotIsNotPottedInto() {
        Container pan = august.journal().containers().get(pan());
        august.put(new Container(pan.id(), pan.name(), pan.shape(), pan.across(), Optional.empty(), 0, 0, ""));
        august.put(new Container(
                august.id(), "cachepot", Container.Shape.OUTER, pan.across(), Optional.empty(), 9, 0, ""));
        assertThat(august.planning().candidates())
                .allSatisfy(one -> assertThat(one.container()).isEmpty());
    }

    @Test
    void aContainerWithoutASizeTakesNobodyKnowsHowMuch() {
        Container pan = august.journal().containers().get(pan());
        august.put(new Container(
                pan.id(), pan.name(), Container.Shape.OTHER, Optional.empty(), Optional.<Length>empty(), 10, 0, ""));
        assertThat(supplies(pot("Marrow Lane", 5, true, 0)).mix()).isEmpty();
    }
}
