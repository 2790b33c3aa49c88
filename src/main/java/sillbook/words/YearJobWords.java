// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.model.JobKind;

/** Why the jobs of a plant that lives on fall on their days. */
final class YearJobWords {
    private YearJobWords() {}

    /** What the weeks are counted from. */
    static String from(JobKind job) {
        return switch (job) {
            case FEED -> "fed, or past bloom";
            case WAKE -> "at rest since";
            case REPOT -> "woken";
            default -> "season or bloom";
        };
    }

    static String rule(JobKind job) {
        return switch (job) {
            case FEED -> "While it is in leaf it is fed again so many weeks after the last time.";
            case WAKE -> "So many weeks of rest, dry and cool; then water and warmth.";
            case PUT_OUTDOORS -> "Outdoors from late May, or once it is past bloom where that is later.";
            case REPOT -> "On waking, once it has been 3 years in its potting mix.";
            default -> "In, and to rest, by the middle or end of September, before frost.";
        };
    }
}
