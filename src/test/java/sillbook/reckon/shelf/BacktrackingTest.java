// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class BacktrackingTest {
    @Test
    void placesWhatFitsAndKnowsWhatDoesNot() {
        List<Stay> two = List.of(new Stay(0, 5, 2), new Stay(3, 8, 1));

        Backtracking enough = new Backtracking(two, 3);
        assertThat(enough.offsets()).isPresent();
        assertThat(enough.isComplete()).isTrue();
        Backtracking tight = new Backtracking(two, 2);
        assertThat(tight.offsets()).isEmpty();
        assertThat(tight.isComplete()).isTrue();
    }

    @Test
    void doesNotBeginWithMoreStaysThanItCouldGoThrough() {
        Backtracking many = new Backtracking(Collections.nCopies(1000, new Stay(0, 5, 1)), 1000);

        assertThat(many.offsets()).isEmpty();
        assertThat(many.isComplete()).isFalse();
    }
}
