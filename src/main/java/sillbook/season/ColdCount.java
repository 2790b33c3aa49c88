// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import sillbook.season.ColdPart.Basis;

/**
 * Days in the cold, and of these the days that count. All in days.
 *
 * @param daysIn from potting on, today not counted
 * @param least what counts at least
 * @param likely what is taken to count
 * @param most what counts at most
 * @param read of those in, what thermometers saw
 * @param unaccounted what lies in gaps between readings
 */
public record ColdCount(int daysIn, double least, double likely, double most, double read, double unaccounted) {
    /** What is lost where hours are added up. */
    static final double ROUNDING = 1e-6;

    static final Set<Basis> BY_THERMOMETER = EnumSet.of(Basis.READ, Basis.BETWEEN);

    public ColdCount {
        if (likely > daysIn + ROUNDING || likely < 0) {
            throw new IllegalArgumentException(likely + " cold days of " + daysIn);
        }
    }

    static ColdCount of(List<ColdStretch> stretches) {
        ColdCount count = assumed(0, 0);
        for (ColdStretch stretch : stretches) {
            count = count.stood(stretch.daysIn());
            for (ColdPart part : stretch.parts()) {
                count = count.with(part);
            }
        }
        return count;
    }

    private ColdCount stood(int days) {
        return new ColdCount(daysIn + days, least, likely, most, read, unaccounted);
    }

    /** With a part of the days it stood. */
    private ColdCount with(ColdPart part) {
        return new ColdCount(
                daysIn,
                least + part.least(),
                likely + part.likely(),
                most + part.most(),
                read + (BY_THERMOMETER.contains(part.basis()) ? part.days() : 0),
                unaccounted + (part.basis() == Basis.UNACCOUNTED ? part.days() : 0));
    }

    /** By the calendar alone. */
    static ColdCount assumed(int daysIn, int daysColdEnough) {
        return new ColdCount(daysIn, daysColdEnough, daysColdEnough, daysColdEnough, 0, 0);
    }

    /** The days that count, whole ones. */
    public int daysColdEnough() {
        return whole(likely);
    }

    static int whole(double days) {
        return (int) Math.floor(days + ROUNDING);
    }

    /** Whether thermometers saw any of it. */
    public boolean isRead() {
        return read > 0;
    }

    /** What nothing was read of, and is taken for granted. */
    public double assumed() {
        return Math.max(0, daysIn - read - unaccounted);
    }
}
