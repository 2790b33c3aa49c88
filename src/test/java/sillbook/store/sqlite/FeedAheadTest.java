// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.store.Feed;

class FeedAheadTest {
    /** Each reading another than the one before in all that is told of it. */
    private static final class Numbered implements Feed {
        private final int last;
        private final int breaksAfter;
        private CompletableFuture<Void> released = CompletableFuture.completedFuture(null);
        private int number;

        Numbered(int last, int breaksAfter) {
            this.last = last;
            this.breaksAfter = breaksAfter;
        }

        Numbered heldUntil(CompletableFuture<Void> when) {
            released = when;
            return this;
        }

        @Override
        public boolean advance() {
            released.join();
            if (number == breaksAfter) {
                throw new IllegalArgumentException("broken after " + number);
            }
            number++;
            return number <= last;
        }

        @Override
        public long at() {
            return 1_700_000_000_000L + number;
        }

        @Override
        public int milli() {
            return -number;
        }

        @Override
        public int line() {
            return number + 1;
        }

        @Override
        public boolean isSuspicious() {
            return number % 3 == 0;
        }
    }

    private static void assertReadings(Feed ahead, int from, int to) {
        for (int number = from; number <= to; number++) {
            assertThat(ahead.advance()).as("reading %d", number).isTrue();
            boolean isIt = ahead.at() == 1_700_000_000_000L + number
                    && ahead.milli() == -number
                    && ahead.line() == number + 1
                    && ahead.isSuspicious() == (number % 3 == 0);
            assertThat(isIt).as("reading %d", number).isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(
            ints = {
                0,
                1,
                FeedAhead.READINGS - 1,
                FeedAhead.READINGS,
                FeedAhead.READINGS + 1,
                2 * FeedAhead.READINGS,
                3 * FeedAhead.READINGS + 5
            })
    void theReadingsAreThoseOfTheFeedInItsOrder(int count) {
        try (FeedAhead ahead = new FeedAhead(new Numbered(count, -1))) {
            assertReadings(ahead, 1, count);
            assertThat(ahead.advance()).isFalse();
            assertThat(ahead.advance()).as("asked again").isFalse();
        }
    }

    @Test
    void whatBreaksTheFeedIsToldWhoTakesIt() {
        try (FeedAhead ahead = new FeedAhead(new Numbered(Integer.MAX_VALUE, FeedAhead.READINGS + 7))) {
            assertReadings(ahead, 1, FeedAhead.READINGS);
            assertThatThrownBy(ahead::advance)
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("broken after " + (FeedAhead.READINGS + 7));
        }
    }

    @Test
    void closedEarlyNobodyGoesOnWithTheFeed() {
        Numbered endless = new Numbered(Integer.MAX_VALUE, -1);
        try (FeedAhead ahead = new FeedAhead(endless)) {
            assertReadings(ahead, 1, 3);
        }
        assertThat(endless.number).isEqualTo(2 * FeedAhead.READINGS);
    }

    @Test
    void whoIsInterruptedWhileWaitingStops() {
        CompletableFuture<Void> released = new CompletableFuture<>();
        try (FeedAhead ahead = new FeedAhead(new Numbered(3, -1).heldUntil(released))) {
            Thread.currentThread().interrupt();
            assertThatThrownBy(ahead::advance).isInstanceOf(Intake.Stopped.class);
            released.complete(null);
        }
        assertThat(Thread.interrupted()).as("still told so").isTrue();
    }
}
