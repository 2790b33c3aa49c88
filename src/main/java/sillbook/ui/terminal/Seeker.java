// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Message;

/**
 * Looks for best plans, on the thread that asks. Another search, or a stop, ends the one before with what it has. Each is known by its turn,
 * for the threads that begin searches and stop them may come in any order.
 */
final class Seeker {
    private static final long BETWEEN_NEWS = TimeUnit.MILLISECONDS.toNanos(250);

    /** The last turn that is over, with all before it. */
    private final AtomicInteger over = new AtomicInteger();

    /** Seeks to the end, or as long as it may; tells what it finds at most four times a second. */
    Message seek(Effect.Seek asked, Consumer<Message> answer) {
        stop(asked.turn() - 1);
        News news = new News(answer);
        return asked.answer(
                () -> {
                    news.tell();
                    return over.get() >= asked.turn();
                },
                news::hear);
    }

    /** Ends the search of a turn and those before it, also one that has not begun yet. */
    void stop(int turn) {
        over.accumulateAndGet(turn, Math::max);
    }

    /** Ends every search, and those to come. */
    void close() {
        stop(Integer.MAX_VALUE);
    }

    /** Tells the newest; what comes too soon after the news before waits. */
    private static final class News {
        private final Consumer<Message> answer;
        private Optional<Message> untold = Optional.empty();
        private long last = System.nanoTime() - BETWEEN_NEWS;

        News(Consumer<Message> answer) {
            this.answer = answer;
        }

        void hear(Message newest) {
            untold = Optional.of(newest);
            tell();
        }

        void tell() {
            if (untold.isPresent() && System.nanoTime() - last >= BETWEEN_NEWS) {
                answer.accept(untold.get());
                untold = Optional.empty();
                last = System.nanoTime();
            }
        }
    }
}
