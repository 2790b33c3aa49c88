// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Seasons whose best was found elsewhere; where, stands with them. */
class WorkedSeasonsTest {
    static List<WorkedSeason> seasons() {
        return WorkedSeason.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("seasons")
    void itsBestTallyIsProven(WorkedSeason season) {
        Plan plan = Planner.plan(season.task());
        assertThat(plan.tally()).isEqualTo(season.best());
        assertThat(plan.isProven()).isTrue();
        assertThat(Exhaustive.of(season.task(), plan.pulls())).contains(plan.tally());
    }
}
