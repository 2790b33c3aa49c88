// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.change.AdoptPlan;
import sillbook.model.SeasonPlan;

class PlanNamesTest {
    private final AugustHouse house = AugustHouse.usual();

    @Test
    void potsGoByLettersUntilTheyAreMade() {
        SeasonPlan plan = house.plan(Collections.nCopies(60, house.plan().pots().get(1)), Optional.empty());
        PlanNames names = new PlanNames(house.journal(), plan);
        assertThat(List.of(0, 25, 26, 51, 52)).extracting(names::mark).containsExactly("a", "z", "aa", "az", "ba");
        assertThat(names.marks(List.of(2, 0, 1))).isEqualTo("a, b and c");
        assertThat(names.marks(List.of(0, 1, 2, 3, 4, 5))).isEqualTo("a, b, c, d and 2 more");
        assertThat(names.whole(1)).isEqualTo("b 'Lantern Row'");
        assertThat(names.content(1)).isEqualTo("'Lantern Row' x4");
    }

    @Test
    void thenByTheirLabels() {
        SeasonPlan plan = house.plan();
        house.put(plan).apply(new AdoptPlan(plan.id(), Map.of(), Map.of()));
        SeasonPlan adopted = house.journal().seasonPlans().get(plan.id());
        assertThat(new PlanNames(house.journal(), adopted).whole(0)).isEqualTo("P1 'Linen Parade'");
    }
}
