// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.ZoneId;
import java.util.Optional;
import sillbook.model.DateOrder;
import sillbook.store.Feed;
import sillbook.words.logger.Counted;

/** The readings of a thermometer's file, in the order of its lines, straight from its bytes; what they come to is counted on the way. */
public final class LoggerFeed implements Feed, AutoCloseable {
    private static final long DAY = 86_400;

    private final Lines lines;
    private final int firstLine;
    private final RowReader reader;
    private final DateOrder order;
    private final boolean hearsRows;
    private final LocalClock clock;
    private final Suspicion suspicion;
    private final Tally tally;
    private int first = -1;
    private int second;
    private int third;
    private long day;
    private long at;
    private boolean isSuspicious;

    /**
     * How a file is read, all questions answered.
     *
     * @param hearsRows whether an instant that says how far it is from Greenwich is believed
     * @param home whose midnights part days
     */
    record Reading(
            Layout layout,
            Optional<byte[]> device,
            DateOrder order,
            boolean hearsRows,
            LocalClock clock,
            Suspicion suspicion,
            ZoneId home) {}

    LoggerFeed(Lines lines, Reading how) {
        this.lines = lines;
        firstLine = how.layout().firstLine();
        reader = new RowReader(how.layout(), how.device());
        order = how.order();
        hearsRows = how.hearsRows();
        clock = how.clock();
        suspicion = how.suspicion();
        tally = new Tally(how.home().getRules());
    }

    @Override
    public boolean advance() {
        while (lines.advance()) {
            if (lines.number() >= firstLine && isReading()) {
                return true;
            }
        }
        return false;
    }

    private boolean isReading() {
        switch (reader.read(lines)) {
            case READING -> {
                return take();
            }
            case NO_VALUE -> tally.noValue();
            case OTHER -> tally.other();
            case UNREADABLE -> tally.unreadable(lines);
            case BLANK -> {}
        }
        return false;
    }

    private boolean take() {
        Moment moment = reader.moment();
        if (moment.isDated() && !findDay(moment)) {
            tally.unreadable(lines);
            return false;
        }
        at = instant(moment);
        isSuspicious = suspicion.falls(at, reader.milli(), reader.written());
        tally.reading(at);
        if (suspicion.isAhead(at)) {
            tally.ahead();
        } else if (isSuspicious) {
            tally.suspicious(lines, reader.milli());
        } else {
            tally.sound(at, reader.milli());
        }
        return true;
    }

    private boolean findDay(Moment moment) {
        if (moment.date().first() != first
                || moment.date().second() != second
                || moment.date().third() != third) {
            first = moment.date().first();
            second = moment.date().second();
            third = moment.date().third();
            day = Calendar.day(moment.date(), order);
        }
        return day != Calendar.NONE;
    }

    private long instant(Moment moment) {
        if (!moment.isDated()) {
            return moment.unix();
        }
        long local = day * DAY + moment.secondOfDay();
        return moment.hasOffset() && hearsRows ? local - moment.offsetSeconds() : clock.instant(local);
    }

    @Override
    public long at() {
        return at;
    }

    @Override
    public int milli() {
        return reader.milli();
    }

    @Override
    public int line() {
        return lines.number();
    }

    @Override
    public boolean isSuspicious() {
        return isSuspicious;
    }

    /** What all lines come to that were gone through. */
    public Counted counted() {
        return tally.counted(clock.twice());
    }

    @Override
    public void close() {
        try {
            lines.close();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
