// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.plan.August.day;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sillbook.model.Place;
import sillbook.model.Purchase;
import sillbook.model.SeasonPlan.Rule;
import sillbook.model.SeasonPlan.Search;
import sillbook.model.WishedFor.Manner;

class SeekingTest {
    private static final long SOME = 2_000_000;

    private static Seeking.Found found(Planning planning, Rule rule) {
        return August.found(planning, rule, SOME);
    }

    @Test
    void aStretchIsFilledWithTheFewestPots() {
        August august = new August()
                .bought("Marrow Lane", "tulip", 60, Purchase.State.IN_HAND)
                .place("cellar", Place.Sort.CELLAR, 20)
                .place("sill", Place.Sort.WARM_SILL, 6)
                .wishEveryDay(day(2, 1), day(2, 29));
        Planning planning = august.planning();

        Seeking.Found found = found(planning, planning.usualRule());

        assertThat(found.isProven()).isTrue();
        assertThat(found.comesTo()).as("29 days, ten a pot").isEqualTo(new Search(0, 0, 3));
        assertThat(found.search()).isEqualTo(found.comesTo());
        PlanNow now = PlanReading.of(planning, august.plan(planning.usualRule(), found.pots()));
        assertThat(now.ribbon().gaps()).isEmpty();
        assertThat(now.troubles()).isEmpty();
    }

    @Test
    void aDatedWishIsMetByPotsThatSuitIt() {
        August august = August.usual().wishEveryDay(day(1, 20), day(3, 1)).wishOn(day(2, 14), 2, true);
        Planning planning = august.planning();

        Seeking.Found found = found(planning, planning.usualRule());

        PlanNow now = PlanReading.of(planning, august.plan(planning.usualRule(), found.pots()));
        WishMet wish = now.wishes().get(1);
        assertThat(wish.isMet()).isTrue();
        assertThat(wish.pots())
                .allSatisfy(number -> assertThat(now.pots()
                                .get(number)
                                .candidate()
                                .variety()
                                .scent()
                                .isScented())
                        .isTrue());
        assertThat(now.pots().get(wish.pots().get(0)).inFlower().contains(day(2, 16)))
                .isTrue();
        assertThat(found.comesTo().unmet()).isZero();
    }

    /** In flower for ten days each, five of them fill the days before and after with others than the day itself, were that not asked for. */
    @Test
    void theDayItselfIsNotGivenUpForThoseBesideIt() {
        August august = new August()
                .bought("Marrow Lane", "tulip", 60, Purchase.State.IN_HAND)
                .bought("Inkwell", "hyacinth", 20, Purchase.State.IN_HAND)
                .bought("Linen Parade", "paperwhite", 21, Purchase.State.TO_ORDER)
                .place("cellar", Place.Sort.CELLAR, 8)
                .place("sill", Place.Sort.WARM_SILL, 5)
                .wishEveryDay(day(1, 10), day(3, 20))
                .wishOn(day(2, 14), 3, true);
        Planning planning = august.planning();

        List<Seeking.Found> told = new ArrayList<>();
        Seeking.seek(planning, planning.usualRule(), SOME, new Seeking.Progress() {
            @Override
            public boolean wantsStop() {
                return false;
            }

            @Override
            public void found(Seeking.Found best) {
                told.add(best);
            }
        });

        Seeking.Found last = told.get(told.size() - 1);
        PlanNow now = PlanReading.of(planning, august.plan(planning.usualRule(), last.pots()));
        assertThat(now.wishes().get(1).lacks()).isEqualTo(last.comesTo().unmet());
        assertThat(last.comesTo().unmet()).isZero();
    }

    @Test
    void thePlanKeepsToTheRoomThereIs() {
        August august = new August()
                .bought("Marrow Lane", "tulip", 60, Purchase.State.IN_HAND)
                .place("fridge", Place.Sort.FRIDGE, 2)
                .place("sill", Place.Sort.WARM_SILL, 1)
                .wishEveryDay(day(1, 20), day(3, 20));
        Planning planning = august.planning();
        Rule rule = new Rule(2, 12, day(1, 3), day(2, 8), 2, Set.of(DayOfWeek.SUNDAY));

        PlanNow now =
                PlanReading.of(planning, august.plan(rule, found(planning, rule).pots()));

        assertThat(now.pots()).isNotEmpty();
        assertThat(now.ribbon().gapDays())
                .as("one sill and three weeks to flower")
                .isPositive();
        assertThat(now.troubles()).extracting(Trouble::sort).doesNotContain(Trouble.Sort.NO_ROOM);
    }

    @Test
    void itTellsTheBestSoFarAndStopsWhenItIsTold() {
        Planning planning = August.usual().wishEveryDay(day(1, 10), day(3, 25)).planning();
        List<Seeking.Found> told = new ArrayList<>();
        Seeking.Outcome outcome = Seeking.seek(planning, planning.usualRule(), SOME, new Seeking.Progress() {
            @Override
            public boolean wantsStop() {
                return !told.isEmpty();
            }

            @Override
            public void found(Seeking.Found best) {
                told.add(best);
            }
        });

        assertThat(told).isNotEmpty();
        assertThat(((Seeking.Best) outcome).found().pots())
                .isEqualTo(told.get(told.size() - 1).pots());
    }

    @Test
    void withoutWishesTheDaysOfTheRuleAreFilled() {
        August august = August.usual();
        Planning planning = august.planning();
        Rule rule = new Rule(2, 12, day(1, 3), day(1, 27), 4, Set.of());

        PlanNow now =
                PlanReading.of(planning, august.plan(rule, found(planning, rule).pots()));

        assertThat(now.ribbon().wished()).hasSize(1);
        assertThat(now.ribbon().wished().get(0).start()).isEqualTo(day(1, 24));
        assertThat(now.ribbon().gaps()).isEmpty();
    }

    @Test
    void twoAtOnceOnEveryDayAreTwo() {
        August august = new August()
                .bought("Marrow Lane", "tulip", 120, Purchase.State.IN_HAND)
                .place("cellar", Place.Sort.CELLAR, 20)
                .place("sill", Place.Sort.WARM_SILL, 9);
        august.wish(day(2, 1), day(2, 20), August.asks(Manner.EVERY_DAY, 2, false, Optional.empty()));
        Planning planning = august.planning();

        Seeking.Found found = found(planning, planning.usualRule());

        PlanNow now = PlanReading.of(planning, august.plan(planning.usualRule(), found.pots()));
        assertThat(now.wishes().get(0).isMet()).isTrue();
        assertThat(found.pots()).hasSize(4);
    }

    @Test
    void aWishForARoomIsMetThere() {
        August august = new August()
                .bought("Marrow Lane", "tulip", 60, Purchase.State.IN_HAND)
                .place("cellar", Place.Sort.CELLAR, 20)
                .place("kitchen sill", Place.Sort.WARM_SILL, 6)
                .place("parlour sill", Place.Sort.WARM_SILL, 2);
        august.wishIn(August.placeId(august.planning(), "parlour sill"), day(2, 14), 2);
        Planning planning = august.planning();

        Seeking.Found found = found(planning, planning.usualRule());

        assertThat(found.isProven()).isTrue();
        PlanNow now = PlanReading.of(planning, august.plan(planning.usualRule(), found.pots()));
        assertThat(now.wishes().get(0).isMet()).isTrue();
        assertThat(now.pots()).hasSize(2);
    }

    @Test
    void whatNothingSuitsIsLackingInEveryPlanAndWhatIsNoRoomIsNotAsked() {
        August august = new August()
                .bought("Marrow Lane", "tulip", 60, Purchase.State.IN_HAND)
                .place("cellar", Place.Sort.CELLAR, 20)
                .place("kitchen sill", Place.Sort.WARM_SILL, 6)
                .wishEveryDay(day(2, 1), day(2, 9))
                .wishOn(day(2, 5), 1, true);
        Planning scented = august.planning();
        Seeking.Found found = found(scented, scented.usualRule());
        assertThat(found.comesTo()).isEqualTo(new Search(1, 0, 1));
        assertThat(found.search()).as("no plan can do better").isEqualTo(found.comesTo());
        assertThat(found.isProven()).isTrue();

        august.wishIn(August.placeId(scented, "cellar"), day(2, 6), 1);
        Planning cellar = august.planning();
        assertThat(found(cellar, cellar.usualRule()).isProven())
                .as("in flower in the cellar")
                .isFalse();
    }

    @Test
    void daysBetweenDatedWishesAreNotFilled() {
        August august = new August()
                .bought("Marrow Lane", "tulip", 60, Purchase.State.IN_HAND)
                .place("cellar", Place.Sort.CELLAR, 20)
                .place("sill", Place.Sort.WARM_SILL, 6)
                .wishOn(day(2, 1), 1, false)
                .wishOn(day(3, 20), 2, false);
        Planning planning = august.planning();

        Seeking.Found found = found(planning, planning.usualRule());

        assertThat(found.comesTo()).isEqualTo(new Search(0, 0, 3));
        assertThat(found.isProven()).isTrue();
        assertThat(found.pots()).hasSize(3);
    }

    @Test
    void twoStretchesAreFilledAndNotWhatLiesBetween() {
        August august = new August()
                .bought("Marrow Lane", "tulip", 60, Purchase.State.IN_HAND)
                .place("cellar", Place.Sort.CELLAR, 20)
                .place("sill", Place.Sort.WARM_SILL, 6)
                .wishEveryDay(day(1, 20), day(1, 28))
                .wishEveryDay(day(3, 20), day(3, 28));
        Planning planning = august.planning();

        assertThat(found(planning, planning.usualRule()).comesTo()).isEqualTo(new Search(0, 0, 2));
    }

    @Test
    void nothingToPlanWithIsSaid() {
        August noSill = new August().bought("Marrow Lane", "tulip", 6, Purchase.State.IN_HAND);
        assertThat(Seeking.seek(noSill.planning(), noSill.planning().usualRule()))
                .isEqualTo(new Seeking.Nothing(Seeking.Missing.ROOM));
        August noBulbs = new August().place("sill", Place.Sort.WARM_SILL, 6);
        assertThat(Seeking.seek(noBulbs.planning(), noBulbs.planning().usualRule()))
                .isEqualTo(new Seeking.Nothing(Seeking.Missing.BULBS));
    }

    @Test
    void moreThanASearchTakesOnIsSaid() {
        August many = new August()
                .bought("Marrow Lane", "tulip", 6 * 600, Purchase.State.IN_HAND)
                .place("cellar", Place.Sort.CELLAR, 9)
                .place("sill", Place.Sort.WARM_SILL, 9);
        assertThat(Seeking.seek(many.planning(), many.planning().usualRule()))
                .isEqualTo(new Seeking.TooMuch("the number of pots is 600; it must be 0 to 500"));
    }
}
