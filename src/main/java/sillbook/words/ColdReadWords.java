// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.handbook.Origin;
import sillbook.season.ColdRead;

/** What thermometers say of a pot's cold, in words. What an hour at a temperature is worth is a judgement of ours, and marked. */
public final class ColdReadWords {
    private static final String OURS = OriginMarks.mark(Origin.ASSUMED);
    private static final double DAYS_IN_WEEK = 7;

    private ColdReadWords() {}

    /** {@code 1.7 weeks read, ?1.3 to 1.7 count; 14.3 weeks not read}: without a full stop. */
    public static String say(ColdRead read) {
        double open = read.in() - read.read();
        String rest = tenths(open).equals("0") ? "" : "; " + weeks(open) + " not read";
        return weeks(read.read()) + " read, " + counting(read) + rest;
    }

    private static String counting(ColdRead read) {
        String least = tenths(read.least());
        String most = tenths(read.most());
        if (!least.equals(most)) {
            return OURS + least + " to " + most + " count";
        }
        if (most.equals("0")) {
            return "nothing counts (" + OURS + ")";
        }
        return most.equals(tenths(read.read())) ? "all count (" + OURS + ")" : OURS + most + " count";
    }

    private static String weeks(double days) {
        String weeks = tenths(days);
        return weeks + (weeks.equals("1") ? " week" : " weeks");
    }

    private static String tenths(double days) {
        return Decimal.say(days / DAYS_IN_WEEK, 1);
    }
}
