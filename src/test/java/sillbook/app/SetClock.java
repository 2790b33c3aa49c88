// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that a test sets. */
final class SetClock extends Clock {
    private volatile Instant now;

    SetClock(String now) {
        this.now = Instant.parse(now);
    }

    void pass(Duration time) {
        now = now.plus(time);
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException("a book asks for the instant only");
    }

    @Override
    public Instant instant() {
        return now;
    }
}
