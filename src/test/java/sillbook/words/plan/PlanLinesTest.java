// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Proposal;
import sillbook.model.SeasonPlan;
import sillbook.model.SeasonPlan.Search;
import sillbook.plan.Nudge;
import sillbook.plan.PlanNow;
import sillbook.plan.SuppliesReading;

class PlanLinesTest {
    private final AugustHouse house = AugustHouse.usual();

    private List<String> lines(SeasonPlan plan, boolean isKept) {
        PlanNow now = house.now(plan);
        return new PlanLines(house.journal(), AugustHouse.TODAY, now, isKept)
                .lines(SuppliesReading.of(house.journal(), plan));
    }

    @Test
    void aPlanSaysItsPotsAndWhatComesOfThem() {
        house.write("wish hyacinth 14 feb");
        List<String> lines = lines(house.plan(), false);
        assertThat(lines).startsWith("plan A for season 2026-27, by hand, not kept: 12 pots, 12 to be made");
        assertThat(lines)
                .contains(
                        "a 'Linen Parade' x5: pot Sun 20 Dec, kitchen sill; flowers about Sun 24 Jan (10 Jan to 14 Feb),"
                                + " 10 days",
                        "b 'Lantern Row' x4: pot Sun 13 Sep, garage fridge; in Sun 20 Dec, kitchen sill; flowers about"
                                + " Sun 10 Jan (3 to 17 Jan), 10 days",
                        "wish: 14 Feb, hyacinth: 1 pot short; chance 4 in 10. 1 more would make it sure in nine of ten."
                                + " 'Inkwell': pot by 1 Nov, bring in by 24 Jan.")
                .noneMatch(line -> line.contains("without bloom"));
        assertThat(lines).anyMatch(line -> line.startsWith("in bloom from Mon 11 Jan: "));
        assertThat(lines).anyMatch(line -> line.startsWith("room: kitchen sill: 7 pots at most, of 4, "));
        assertThat(lines).anyMatch(line -> line.startsWith("look: Sun 31 Jan, buds above the leaves? Behind: "));
        assertThat(lines).anyMatch(line -> line.startsWith("! Wish 14 Feb, 1 short: ") && line.contains(" Cure: buy "));
        assertThat(lines).last().asString().startsWith("to buy: 14 bulbs of 1 sort, ");
    }

    @Test
    void aDayInAnotherSeasonHasItsYear() {
        SeasonPlan late = Nudge.by(house.planning(), house.plan(), 0, 365);
        assertThat(lines(late, false))
                .anyMatch(line ->
                        line.contains("'Linen Parade' x5: pot Wed 30 Jun, kitchen sill; flowers about Wed 4 Aug 2027"));
    }

    @Test
    void aPlanThatIsKeptSaysHowItCameAbout() {
        SeasonPlan plan = house.plan(house.plan().pots(), Optional.of(new Search(0, 0, 1)));
        house.put(plan);
        assertThat(lines(plan, true))
                .first()
                .isEqualTo("plan A for season 2026-27, searched for: 12 pots, 12 to be made");
        SeasonPlan adopted = plan.adoptedOn(LocalDate.of(2026, 8, 21), plan.pots());
        assertThat(lines(adopted, true))
                .first()
                .isEqualTo("plan A for season 2026-27, searched for, adopted Fri 21 Aug 2026: 12 pots, 12 to be made");
    }

    @Test
    void potsThatGrowSaySoAndNothingIsToMake() {
        house.on(LocalDate.of(2027, 1, 12))
                .write(
                        "Inkwell x3, garage fridge, 14 oct",
                        "Inkwell x3, garage fridge, 14 sep",
                        "H2 kitchen sill, 10 jan");
        SeasonPlan all = house.plan();
        SeasonPlan growing = house.plan(
                all.pots().stream().filter(pot -> pot.pot().isPresent()).toList(), Optional.empty());
        List<String> lines = lines(growing, true);
        assertThat(lines).first().isEqualTo("plan A for season 2026-27, by hand: 2 pots");
        assertThat(lines)
                .anyMatch(line -> line.startsWith("H1 'Inkwell' x3: in the cold since Wed 14 Oct, garage fridge; in "));
        assertThat(lines)
                .anyMatch(line ->
                        line.startsWith("H2 'Inkwell' x3: in Sun 10 Jan, kitchen sill; flowers about Sun 31 Jan, "));
    }

    @Test
    void whatIsWithoutBloomIsSaidInOneLine() {
        PlanNow now = house.now();
        assertThat(new RibbonLines(now.ribbon()).gaps())
                .hasValueSatisfying(says -> assertThat(says)
                        .matches("no bloom on .*: " + now.ribbon().gapDays() + " of the days wished for"));
        house.write("wish every day 30 to 31 jan");
        assertThat(new RibbonLines(house.now().ribbon()).gaps()).contains("no day wished for is without bloom");
    }

    private String sum(SeasonPlan plan) {
        return new PlanSum(house.now(plan), SuppliesReading.of(house.journal(), plan)).line();
    }

    @Test
    void plansStandBesideEachOtherInALineEach() {
        PlanNow now = house.now();
        Proposal lantern = house.plan().pots().get(1);
        assertThat(sum(house.plan()))
                .startsWith("plan A: " + now.ribbon().gapDays() + " days without bloom, longest gap ")
                .endsWith(", 12 pots, " + now.ribbon().mostAtOnce()
                        + " at once at most, to buy 7.00, proven best: by hand");
        house.write("to order 24 Penny Gloaming (crocus)");
        assertThat(sum(house.plan())).contains(", to buy 7.00 and 1 sort without a price, ");
        house.write("wish every day 30 to 31 jan");
        SeasonPlan adopted = house.plan().adoptedOn(AugustHouse.TODAY, List.of(lantern));
        assertThat(sum(adopted))
                .startsWith("plan A, adopted: 2 days without bloom, longest gap 2 days, 1 pot, 1 at once at most,"
                        + " to buy no bulbs, ");
    }

    @Test
    void aPlaceWithoutRoomWrittenOrWithoutAPotSaysSo() {
        house.write("place frame, cold frame", "place shed, garage, room for 2");
        assertThat(house.now().rooms()).extracting(RoomLines::of).contains("frame: no pot", "shed: no pot, of 2");
    }

    @Test
    void whatIsTakenForGrantedIsSaid() {
        assertThat(PlanAssumed.of(house.planning(), house.now()))
                .startsWith("the usual lengths; the chances go by their spread")
                .contains(
                        "14 days from an order to the bulbs (common practice)",
                        "pots for a wished day flower 2 days before and after it too, where they can (a judgement of ours)",
                        "days in bloom of paperwhite")
                .doesNotHaveDuplicates();
    }
}
