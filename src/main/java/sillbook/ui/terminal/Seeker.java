// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Message;

/** Looks for best plans, on the thread that asks. Another search, or a stop, ends the one before with what it has. */
final class Seeker {
    private static final long BETWEEN_NEWS = TimeUnit.MILLISECONDS.toNanos(250);

    private final AtomicInteger current = new AtomicInteger();

    /** Seeks to the end, or as long as it may; tells what it finds at most four times a second. */
    Message seek(Effect.Seek asked, Consumer<Message> answer) {
        int mine = current.incrementAndGet();
        News news = new News(answer);
        return asked.answer(
                () -> {
                    news.tell();
                    return current.get() != mine;
                },
                news::hear);
    }

    void stop() {
        current.incrementAndGet();
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
