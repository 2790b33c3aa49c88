// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class ScrollTest {
    @Test
    void aListMovesByOneLineOnceTheCursorComesWithinTwoOfItsEdge() {
        Scroll scroll = Scroll.TOP;
        scroll = scroll.follow(7, 30, 10);
        assertThat(scroll.first()).isZero();
        scroll = scroll.follow(8, 30, 10);
        assertThat(scroll.first()).isEqualTo(1);
        scroll = scroll.follow(3, 30, 10);
        assertThat(scroll.first()).isEqualTo(1);
        assertThat(scroll.follow(2, 30, 10).first()).isZero();
    }

    @Test
    void theEndsOfTheListAreShownWhole() {
        assertThat(Scroll.TOP.follow(29, 30, 10).first()).isEqualTo(20);
        assertThat(new Scroll(20).follow(0, 30, 10).first()).isZero();
    }

    @Test
    void aListThatGrewShorterIsPulledDown() {
        assertThat(new Scroll(20).follow(3, 8, 10).first()).isZero();
    }

    @RepeatedTest(200)
    void theCursorIsAlwaysInSight(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        int count = 1 + random.nextInt(40);
        int rows = 1 + random.nextInt(20);
        Scroll scroll = Scroll.TOP;
        for (int i = 0; i < 50; i++) {
            int cursor = random.nextInt(count);
            scroll = scroll.follow(cursor, count, rows);
            assertThat(cursor).isBetween(scroll.first(), scroll.first() + rows - 1);
            assertThat(scroll.first()).isBetween(0, Math.max(0, count - rows));
        }
    }
}
