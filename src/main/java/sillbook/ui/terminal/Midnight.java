// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

import java.time.LocalDate;
import java.util.Timer;
import java.util.TimerTask;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Tells when another day has begun. It looks once a minute, which also finds the day after a computer has slept. */
public final class Midnight implements AutoCloseable {
    private static final long MINUTE_IN_MILLIS = 60_000;

    private final Supplier<LocalDate> today;
    private final Consumer<LocalDate> listener;
    private final Timer timer = new Timer("sillbook midnight", true);
    private LocalDate known;

    private Midnight(Supplier<LocalDate> today, Consumer<LocalDate> listener) {
        this.today = today;
        this.listener = listener;
        known = today.get();
    }

    /**
     * Begins to look.
     *
     * @param today the day it is, in the journal's zone
     */
    public static Midnight watch(Supplier<LocalDate> today, Consumer<LocalDate> listener) {
        Midnight midnight = new Midnight(today, listener);
        TimerTask look = new TimerTask() {
            @Override
            public void run() {
                midnight.look();
            }
        };
        midnight.timer.schedule(look, MINUTE_IN_MILLIS, MINUTE_IN_MILLIS);
        return midnight;
    }

    synchronized void look() {
        LocalDate now = today.get();
        if (!now.equals(known)) {
            known = now;
            listener.accept(now);
        }
    }

    @Override
    public void close() {
        timer.cancel();
    }
}
