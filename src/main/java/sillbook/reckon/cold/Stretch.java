// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import java.time.Duration;
import java.time.Instant;

/** From one reading to the next, evenly: what is not known better. */
record Stretch(Reading first, Reading last) {
    private static final double HOURS_IN_DAY = 24;

    double hours() {
        return Hours.between(first.at(), last.at());
    }

    Duration length() {
        return Duration.between(first.at(), last.at());
    }

    double effective(HourWorth worth) {
        return hours() * worth.between(first.celsius(), last.celsius());
    }

    /** Hours at a temperature or colder. */
    double hoursUpTo(double celsius) {
        return first.celsius() == celsius && last.celsius() == celsius ? hours() : hoursBelow(celsius);
    }

    /** Hours colder than a temperature. */
    double hoursBelow(double celsius) {
        return hours() * shareBelow(first.celsius(), last.celsius(), celsius);
    }

    /** Degree-days above a base: what it is warmer on the mean, nothing where it is colder, times its days. */
    double degreeDaysAbove(double base) {
        double above = 1 - shareBelow(first.celsius(), last.celsius(), base);
        double warmest = Math.max(first.celsius(), last.celsius()) - base;
        double coldest = Math.max(Math.min(first.celsius(), last.celsius()), base) - base;
        return above * (warmest + coldest) / 2 * hours() / HOURS_IN_DAY;
    }

    /** The share of the way from one temperature to another that lies below a limit. */
    static double shareBelow(double start, double end, double limit) {
        if (start == end) {
            return start < limit ? 1 : 0;
        }
        double low = Math.min(start, end);
        return Math.max(0, Math.min(1, (limit - low) / Math.abs(end - start)));
    }

    /** The moment in it at which the temperature is passed; there must be one. */
    Instant passes(double celsius) {
        double share = (celsius - first.celsius()) / (last.celsius() - first.celsius());
        return Hours.at(share, first.at(), last.at());
    }

    /** Its beginning, up to a moment in it. */
    Stretch until(Instant moment) {
        return new Stretch(first, reading(moment));
    }

    /** Its end, from a moment in it. */
    Stretch from(Instant moment) {
        return new Stretch(reading(moment), last);
    }

    /** What would have been read at a moment in it. */
    Reading reading(Instant moment) {
        double share = (double) Duration.between(first.at(), moment).toNanos() / length().toNanos();
        return new Reading(moment, first.celsius() + share * (last.celsius() - first.celsius()));
    }
}
