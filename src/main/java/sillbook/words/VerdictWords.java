// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.season.Verdict;

/** Whether a pot may come in, in the words of the rule. */
public final class VerdictWords {
    private VerdictWords() {}

    /** As a sentence. */
    public static String say(Verdict verdict) {
        return switch (verdict) {
            case MAY_COME_IN -> "May come in.";
            case CHECK_FIRST -> "Check first.";
            case NO_ROOTS -> "Not ready: no roots yet.";
            case WEEKS_SHORT -> "Not cold enough yet.";
            case TOO_WARM -> "It is too warm here. Move it colder, do not bring it in.";
        };
    }

    /** In a few words, as part of a line. */
    public static String brief(Verdict verdict) {
        return switch (verdict) {
            case MAY_COME_IN -> "may come in";
            case CHECK_FIRST -> "check first";
            case NO_ROOTS -> "not ready: no roots yet";
            case WEEKS_SHORT -> "not cold enough yet";
            case TOO_WARM -> "too warm here";
        };
    }
}
