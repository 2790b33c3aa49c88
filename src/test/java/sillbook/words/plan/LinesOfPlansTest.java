// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.plan.PlanLookup;
import sillbook.plan.PlanNow;
import sillbook.plan.Planning;
import sillbook.words.line.Bench;
import sillbook.words.line.QuickLine;

/** Lines are read at every key, so what plans come to is looked up and not worked out by the line. */
class LinesOfPlansTest {
    private final AugustHouse house = AugustHouse.usual();
    private final List<String> asked = new ArrayList<>();

    private final class Remembered implements PlanLookup {
        private final Planning planning = house.planning();

        @Override
        public Planning of(Season season) {
            asked.add("season " + season.year());
            return planning;
        }

        @Override
        public PlanNow now(SeasonPlan plan) {
            asked.add("plan " + plan.name());
            return house.now(plan);
        }
    }

    private List<String> asked(String line) {
        asked.clear();
        Bench bench = house.bench();
        Bench remembering =
                new Bench(bench.journal(), bench.outlook(), bench.handbook(), bench.ids(), new Remembered());
        assertThat(QuickLine.read(line, remembering).change()).as(line).isPresent();
        return List.copyOf(asked);
    }

    @Test
    void whatAPlanComesToIsLookedUp() {
        house.put(house.plan());
        assertThat(asked("adopt plan A")).containsOnly("plan A");
    }

    @Test
    void whatASeasonIsPlannedWithIsLookedUp() {
        house.put(house.plan());
        assertThat(asked("plan 2 every 12 days from 20 dec to 1 mar")).containsOnly("season 2026");
        assertThat(asked("nudge b of plan A 3 days later")).containsOnly("season 2026");
    }
}
