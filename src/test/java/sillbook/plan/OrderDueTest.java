// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.plan.August.day;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sillbook.model.Proposal;
import sillbook.model.Proposal.Course;
import sillbook.model.Purchase;
import sillbook.model.SeasonPlan;
import sillbook.model.SeasonPlan.Rule;

/** What an adopted plan still lacks is asked for in time. */
class OrderDueTest {
    private static final LocalDate POTTING = day(10, 3);
    private static final LocalDate LAST = POTTING.minusDays(Supplies.DELIVERY_DAYS);
    private static final Rule RULE = new Rule(2, 12, day(1, 3), day(2, 8), 4, Set.of());

    private final August august = August.usual();

    private Proposal pot(String name, int bulbs, boolean isBought, int week) {
        Purchase from = august.purchase(name);
        LocalDate potting = POTTING.plusWeeks(week);
        return new Proposal(
                from.variety(),
                bulbs,
                isBought ? Optional.of(from.id()) : Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new Course(potting, Optional.empty(), potting.plusWeeks(15), Optional.empty()));
    }

    private void adopt(Proposal... pots) {
        SeasonPlan plan = august.plan(RULE, List.of(pots));
        august.put(plan.adoptedOn(day(8, 20), plan.pots()));
    }

    private List<OrderDue> on(LocalDate day) {
        return OrderDue.on(day, august.journal());
    }

    @Test
    void itIsSpokenOfFromTwoWeeksBeforeTheLastDayOn() {
        adopt(pot("Penny Gloaming", 12, true, 0), pot("Penny Gloaming", 10, true, 2), pot("Inkwell", 3, true, 0));

        assertThat(on(LAST.minusDays(15))).isEmpty();
        assertThat(on(LAST.minusDays(14))).singleElement().satisfies(due -> {
            assertThat(due.bulbs()).isEqualTo(22);
            assertThat(due.variety()).isEqualTo(august.variety("Penny Gloaming").id());
            assertThat(due.supplier()).isEqualTo("the seed shop");
            assertThat(due.orderBy()).isEqualTo(LAST);
            assertThat(due.potBy()).isEqualTo(POTTING);
            assertThat(due.isLate(LAST)).isFalse();
            assertThat(due.isLate(LAST.plusDays(1))).isTrue();
        });
        assertThat(on(POTTING.plusWeeks(1))).as("until they are ordered").hasSize(1);
    }

    @Test
    void theNearestComesFirst() {
        adopt(pot("Lantern Row", 20, true, 1), pot("Penny Gloaming", 12, true, 0));

        assertThat(on(LAST)).extracting(OrderDue::orderBy).containsExactly(LAST, LAST.plusWeeks(1));
    }

    @Test
    void bulbsThatWereBoughtSinceWillDo() {
        Purchase tulips = august.purchase("Marrow Lane");
        adopt(pot("Marrow Lane", 25, false, 0));
        assertThat(on(LAST))
                .singleElement()
                .satisfies(due -> assertThat(due.bulbs()).isEqualTo(5));

        august.put(
                Purchase.of(august.id(), tulips.variety(), tulips.season(), tulips.day(), 4, Purchase.State.TO_ORDER));
        assertThat(on(LAST)).as("on the list is not ordered").hasSize(1);

        august.put(
                Purchase.of(august.id(), tulips.variety(), tulips.season(), tulips.day(), 6, Purchase.State.ORDERED));
        assertThat(on(LAST)).isEmpty();
    }

    @Test
    void onlyForPlansThatAreAdoptedAndNotOver() {
        august.put(august.plan(RULE, List.of(pot("Penny Gloaming", 12, true, 0))));
        assertThat(on(LAST)).isEmpty();

        adopt(pot("Penny Gloaming", 12, true, 0));
        assertThat(on(LAST)).hasSize(1);
        assertThat(on(LAST.plusYears(1))).isEmpty();
    }
}
