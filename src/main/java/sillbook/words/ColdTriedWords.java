// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import sillbook.season.past.ColdTried;

/** Which lengths of cold worked, in words. */
public final class ColdTriedWords {
    private ColdTriedWords() {}

    /** {@code 13 weeks: 2 of 3 well (21-94 %), 1 short and stuck, cold assumed}: each length that was tried. */
    public static List<String> each(List<ColdTried> tried) {
        return tried.stream().map(ColdTriedWords::say).toList();
    }

    private static String say(ColdTried tried) {
        String range = tried.well()
                .interval(MeritWords.SHARE_CHANCE)
                .map(shares -> " (" + MeritWords.percent(shares) + ")")
                .orElse("");
        String stuck = tried.shortStems() == 0 ? "" : ", " + tried.shortStems() + " short and stuck";
        return Counts.of(tried.weeks(), "week") + ": " + tried.well().hits() + " of "
                + tried.well().of() + " well" + range + stuck + ", cold " + known(tried.read());
    }

    private static String known(double read) {
        return read == 0 ? "assumed" : read == 1 ? "read" : Counts.percent(read) + " read";
    }
}
