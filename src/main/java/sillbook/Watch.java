// SPDX-License-Identifier: Apache-2.0
package sillbook;

import java.time.Duration;
import java.time.Instant;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import sillbook.store.Comparison;
import sillbook.store.Progress;
import sillbook.ui.screen.Message;

/** Tells how far something is taken in and how long it will take yet, four times a second at most. */
final class Watch implements Progress {
    private static final Duration BETWEEN = Duration.ofMillis(250);

    /** Before that a guess of the time left is worth nothing. */
    private static final Duration LEAST = Duration.ofMillis(500);

    private final long all;
    private final Supplier<Instant> now;
    private final BooleanSupplier isStopped;
    private final Consumer<Message> soFar;
    private final Instant begun;
    private Instant told;
    private boolean wasStopped;

    /**
     * Begins now.
     *
     * @param all how many readings there will be
     * @param isStopped whether it is to be left
     * @param soFar is told
     */
    Watch(long all, Supplier<Instant> now, BooleanSupplier isStopped, Consumer<Message> soFar) {
        this.all = all;
        this.now = now;
        this.isStopped = isStopped;
        this.soFar = soFar;
        begun = now.get();
        told = begun;
    }

    @Override
    public boolean goesOn(Comparison comparison) {
        Instant at = now.get();
        if (Duration.between(told, at).compareTo(BETWEEN) >= 0) {
            told = at;
            soFar.accept(new Message.TakingIn(comparison.readings(), all, secondsLeft(comparison.readings(), at)));
        }
        wasStopped |= isStopped.getAsBoolean();
        return !wasStopped;
    }

    private OptionalLong secondsLeft(long done, Instant at) {
        Duration taken = Duration.between(begun, at);
        return done == 0 || taken.compareTo(LEAST) < 0
                ? OptionalLong.empty()
                : OptionalLong.of(taken.multipliedBy(Math.max(0, all - done))
                                .dividedBy(done)
                                .toSeconds()
                        + 1);
    }

    /** Whether it was left. */
    boolean wasStopped() {
        return wasStopped;
    }
}
