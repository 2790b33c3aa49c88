// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.stream.Collectors;
import sillbook.season.VarietyNow;

/** A variety's record as it is said; where there is none, that there is none. */
public final class RecordWords {
    private static final String NO_DATA = "no data";

    private RecordWords() {}

    /** {@code ▪3.7}, of all its scores alike. */
    public static String mean(VarietyNow now) {
        return now.pots() == 0 ? NO_DATA : own(now.mean().orElseThrow());
    }

    /** {@code ▪3.7 of 7 pots}. */
    public static String total(VarietyNow now) {
        return now.pots() == 0 ? NO_DATA : mean(now) + " of " + Counts.of(now.pots(), "pot");
    }

    /** {@code ▪2.5 of 2 pots: 3, 2}. */
    public static String winter(VarietyNow.Winter winter) {
        String scores = winter.scores().stream().map(String::valueOf).collect(Collectors.joining(", "));
        return own(winter.mean()) + " of " + Counts.of(winter.scores().size(), "pot") + ": " + scores;
    }

    /** The mean of a winter where there is room for one digit: {@code 3}. */
    public static String score(VarietyNow.Winter winter) {
        return Decimal.sayFixed(winter.mean(), 0);
    }

    private static String own(double mean) {
        return "▪" + Decimal.sayFixed(mean, 1);
    }
}
