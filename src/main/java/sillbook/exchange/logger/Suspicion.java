// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.util.Set;

/**
 * Which readings can hardly be true: what broken thermometers are known to say, what no room has, a jump that none can make, and what is of a
 * moment to come. Such a reading is kept; 85 C can be genuine.
 */
final class Suspicion {
    /** What a sensor says when it has just been switched on, and when it is not connected. */
    private static final Set<Integer> KNOWN = Set.of(85_000, -127_000);

    private static final long WRITTEN = -999 * Figure.ONE;

    /** Bounds of any place with bulbs, our judgement. */
    private static final int COLDEST = -60_000;

    private static final int HOTTEST = 70_000;

    /** So much in an hour no room makes, even when its thermometer is carried from the fridge to the stove; our judgement. */
    private static final int JUMP = 40_000;

    private static final long HOUR = 3600;

    /** Two hours, in seconds: a clock that was left on summer time, and runs a little fast, is ahead without being wrong (a judgement of ours). */
    private static final long AHEAD = 7200;

    private final Set<Integer> told;
    private final long now;
    private long soundAt;
    private int sound;
    private boolean hasSound;

    /**
     * Of one thermometer's readings, one after the other.
     *
     * @param told what else can hardly be true of it, in thousandths of a degree Celsius
     * @param now in seconds since 1970-01-01T00:00Z; what is of a much later moment nobody read yet
     */
    Suspicion(Set<Integer> told, long now) {
        this.told = told;
        this.now = now;
    }

    boolean isAhead(long at) {
        return at > now + AHEAD;
    }

    /**
     * Judges the next reading.
     *
     * @param milli thousandths of a degree Celsius
     * @param written millionths of the unit it was written in
     */
    boolean falls(long at, int milli, long written) {
        if (isAhead(at)
                || written == WRITTEN
                || milli < COLDEST
                || milli > HOTTEST
                || isNamed(milli)
                || isJump(at, milli)) {
            return true;
        }
        sound = milli;
        soundAt = at;
        hasSound = true;
        return false;
    }

    private boolean isNamed(int milli) {
        return KNOWN.contains(milli) || (!told.isEmpty() && told.contains(milli));
    }

    private boolean isJump(long at, int milli) {
        return hasSound && Math.abs(at - soundAt) <= HOUR && Math.abs(milli - sound) > JUMP;
    }
}
