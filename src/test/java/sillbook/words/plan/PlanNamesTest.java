// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.change.AdoptPlan;
import sillbook.handbook.Handbook;
import sillbook.model.SeasonPlan;
import sillbook.plan.PlanNow;
import sillbook.words.Kinds;

class PlanNamesTest {
    private final AugustHouse house = AugustHouse.usual();

    @Test
    void potsGoByLettersUntilTheyAreMade() {
        SeasonPlan plan = house.plan(Collections.nCopies(60, house.plan().pots().get(1)), Optional.empty());
        PlanNames names = new PlanNames(house.journal(), plan);
        assertThat(List.of(0, 25, 26, 51, 52)).extracting(names::mark).containsExactly("a", "z", "aa", "az", "ba");
        assertThat(names.whole(1)).isEqualTo("b 'Lantern Row'");
        assertThat(names.content(1)).isEqualTo("'Lantern Row' x4");
    }

    @Test
    void thenByTheirLabels() {
        SeasonPlan plan = house.plan();
        house.put(plan).apply(Adopting.of(house.now(plan), new Kinds(house.journal(), Handbook.standard())));
        SeasonPlan adopted = house.journal().seasonPlans().get(plan.id());
        assertThat(new PlanNames(house.journal(), adopted).whole(1)).isEqualTo("D1 'Lantern Row'");
    }

    @Test
    void thePotsThatMeetAWishAreMeantForIt() {
        house.write("wish 30 jan", "wish tulip for easter");
        PlanNow now = house.now();
        AdoptPlan adopting = Adopting.of(now, new Kinds(house.journal(), Handbook.standard()));
        assertThat(now.wishes()).hasSize(2);
        assertThat(adopting.meets()).hasSize(1);
        assertThat(adopting.meets().values().iterator().next()).isNotEmpty();
    }

    @Test
    void thePlanThatComesNextHasTheFirstLetterThatIsFree() {
        assertThat(PlanLetters.nextFree(AugustHouse.SEASON, house.journal())).isEqualTo("A");
        house.put(house.plan());
        assertThat(PlanLetters.nextFree(AugustHouse.SEASON, house.journal())).isEqualTo("B");
        assertThat(PlanLetters.nextFree(AugustHouse.SEASON.next(), house.journal()))
                .isEqualTo("A");
    }
}
