// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.reckon.dates.Milestone;

/** The stages whose days are reckoned, by the day on which each starts. */
public final class MilestoneWords {
    private MilestoneWords() {}

    /** {@code first flower}. */
    public static String say(Milestone milestone) {
        return switch (milestone) {
            case COLD -> "cold";
            case COOL_ROOM -> "cool room";
            case WARM_ROOM -> "warm room";
            case BLOOM -> "first flower";
            case AFTER_BLOOM -> "past bloom";
        };
    }
}
