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

        Backtracking enough = new Backtracking(two, 3, 1000);
        assertThat(enough.offsets()).contains(List.of(0, 2));
        assertThat(enough.isComplete()).isTrue();
        Backtracking tight = new Backtracking(two, 2, 1000);
        assertThat(tight.offsets()).isEmpty();
        assertThat(tight.isComplete()).isTrue();
    }

    /** An example of {@link StaysTest}: at most four are taken at once, and yet five are wanted. */
    @Test
    void takesBackWhatWasPlaced() {
        List<Stay> stays = List.of(
                new Stay(4, 6, 1),
                new Stay(0, 4, 2),
                new Stay(6, 9, 2),
                new Stay(2, 6, 1),
                new Stay(2, 5, 1),
                new Stay(5, 8, 2),
                new Stay(0, 2, 2));

        Backtracking four = new Backtracking(stays, 4, 10_000);
        assertThat(four.offsets()).isEmpty();
        assertThat(four.isComplete()).isTrue();
        assertThat(new Backtracking(stays, 5, four.left()).offsets()).isPresent();
    }

    @Test
    void endsWhenItsEffortIsSpent() {
        List<Stay> many = Collections.nCopies(1000, new Stay(0, 5, 1));

        Backtracking sums = new Backtracking(many, 1000, 10);
        assertThat(sums.offsets()).isEmpty();
        assertThat(sums.isComplete()).isFalse();
        Backtracking search = new Backtracking(many, 1000, 600_000);
        assertThat(search.offsets()).isEmpty();
        assertThat(search.isComplete()).isFalse();
        assertThat(new Backtracking(many, 1000, 1_000_000_000).offsets()).isPresent();
    }
}
