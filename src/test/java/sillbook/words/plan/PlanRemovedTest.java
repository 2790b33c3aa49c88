// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.SeasonPlan;
import sillbook.words.line.LineReading;
import sillbook.words.line.Meaning;
import sillbook.words.line.QuickLine;

class PlanRemovedTest {
    private final AugustHouse house = AugustHouse.usual();

    private Optional<String> left() {
        SeasonPlan plan = SeasonPlan.of(house.plan().season(), house.journal()).get(0);
        return PlanRemoved.left(plan, house.journal());
    }

    @Test
    void ofAnAdoptedPlanThePotsStay() {
        SeasonPlan plan = house.plan();
        house.put(plan);
        assertThat(left()).isEmpty();
        house.write("adopt plan A");
        int pots = plan.pots().size();
        assertThat(left()).contains(pots + " pots that go by it stay, without its days and places");
    }

    @Test
    void ofOnePotOneStays() {
        house.put(house.plan(house.plan().pots().subList(0, 1), Optional.empty()));
        house.write("adopt plan A");
        assertThat(left()).contains("1 pot that goes by it stays, without its days and places");
    }

    @Test
    void theLineSaysSoBeforeItIsKept() {
        house.put(house.plan());
        house.write("adopt plan A");
        LineReading reading = QuickLine.read("remove plan A", house.bench());
        assertThat(reading.means().stream().map(Meaning::says))
                .containsExactly("plan A of 2026-27 removed", left().orElseThrow());
    }
}
