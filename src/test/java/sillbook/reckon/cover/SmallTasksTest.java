// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Small tasks against every plan there is for them. */
class SmallTasksTest {
    static IntStream seeds() {
        return IntStream.range(0, 500);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void noPlanIsBetter(int seed) {
        Task task = new SmallTask(seed).draw();
        Plan plan = Planner.plan(task);
        assertThat(Exhaustive.of(task, plan.pulls())).contains(plan.tally());
        assertThat(plan.tally()).isEqualTo(Exhaustive.best(task));
        assertThat(plan.isProven()).isTrue();
    }
}
