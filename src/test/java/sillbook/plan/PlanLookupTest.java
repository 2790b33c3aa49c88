// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Id;
import sillbook.model.SeasonPlan;

/** A first plan by hand, and what it comes to where nothing is remembered. */
class PlanLookupTest {
    private final August august = August.usual();
    private final Planning planning = august.planning();

    @Test
    void aPlanByHandHasThePotsOfItsRuleAndIsNotAdopted() {
        Id<SeasonPlan> id = august.id();
        SeasonPlan plan = HandRule.plan(id, "B", planning, planning.usualRule(), "for the hall");

        assertThat(plan.pots()).isNotEmpty().isEqualTo(HandRule.pots(planning, planning.usualRule()));
        assertThat(plan)
                .isEqualTo(new SeasonPlan(
                        id,
                        August.SEASON,
                        "B",
                        planning.usualRule(),
                        plan.pots(),
                        Optional.empty(),
                        Optional.empty(),
                        "for the hall"));
    }

    @Test
    void whatIsLookedUpIsWorkedOutOfTheJournal() {
        PlanLookup plans = PlanLookup.of(planning.journal(), planning.outlook());
        SeasonPlan plan = HandRule.plan(august.id(), "A", planning, planning.usualRule(), "");

        assertThat(plans.of(August.SEASON).candidates()).hasSameSizeAs(planning.candidates());
        assertThat(plans.of(August.SEASON.next()).season()).isEqualTo(August.SEASON.next());
        assertThat(plans.now(plan).plan()).isEqualTo(plan);
        assertThat(plans.now(plan).pots()).hasSameSizeAs(plan.pots());
    }
}
