// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.handbook.Origin;
import sillbook.season.ColdCount;

/** What a pot's cold is known by, in words. */
public final class ColdSaid {
    private static final String OURS = OriginMarks.mark(Origin.ASSUMED);
    private static final double DAYS_IN_WEEK = 7;

    private ColdSaid() {}

    /**
     * {@code 12.1 weeks read, 3 assumed, 1 not accounted for; ?11.2 count, 10.4 to 11.9}: without a full stop. Of a pot whose
     * cold was read at least in part.
     */
    public static String say(ColdCount cold) {
        return weeks(cold.read()) + " read" + also(cold.assumed(), " assumed")
                + also(cold.unaccounted(), " not accounted for") + "; " + counting(cold);
    }

    private static String also(double days, String how) {
        return tenths(days).equals("0") ? "" : ", " + tenths(days) + how;
    }

    private static String counting(ColdCount cold) {
        String least = tenths(cold.least());
        String most = tenths(cold.most());
        String likely = tenths(cold.likely());
        String count = likely.equals("0") ? "nothing counts (" + OURS + ")" : OURS + likely + " count";
        return count + (least.equals(most) ? "" : ", " + least + " to " + most);
    }

    private static String weeks(double days) {
        String weeks = tenths(days);
        return weeks + (weeks.equals("1") ? " week" : " weeks");
    }

    private static String tenths(double days) {
        return Decimal.say(days / DAYS_IN_WEEK, 1);
    }
}
