// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import sillbook.model.JobKind;
import sillbook.season.Due;
import sillbook.season.Job;

/** The jobs of a trench, as a day's list says them, and how each is gone about. */
public final class GroundJobWords {
    private GroundJobWords() {}

    /** {@code dig the trench}, {@code pots in: 6}. */
    public static String what(Job.OfGround job) {
        boolean isOfPots = job.kind() == JobKind.POTS_IN || job.kind() == JobKind.LIFT_POTS;
        String pots = isOfPots && !job.pots().isEmpty() ? ": " + job.pots().size() : "";
        return Terms.JOBS.say(job.kind()) + pots;
    }

    /** What says that it is time: {@code by 19 Nov}, {@code by its thermometer}. */
    public static String because(Job.OfGround job) {
        return job.isByReading()
                ? "by its thermometer"
                : "by " + Days.date(job.window().latest());
    }

    /** {@code Thu  8 Oct}; empty for a job of today. */
    public static String when(Job.OfGround job) {
        return job.due() == Due.TODAY ? "" : Days.column(job.on());
    }

    /** How it is gone about, a sentence each: the trade's ways, for which no publication stands here. */
    public static List<String> steps(JobKind job) {
        return switch (job) {
            case DIG_TRENCH ->
                List.of(
                        "Dig while the ground is open, deep enough for the pots and a layer to drain under them.",
                        "Line it with fine wire, or have a board ready, against mice (common practice).");
            case POTS_IN ->
                List.of(
                        "In when a thermometer at their depth reads 7 C or less on three mornings (common practice).",
                        "First out, last in; stake the rows and write down which pot stands where.");
            case COVER_TRENCH ->
                List.of(
                        "Cover it once it has frozen first, not before: warm soil under straw draws mice (common practice).",
                        "Leave the stakes in sight.");
            case LIFT_POTS ->
                List.of(
                        "Their weeks are had while it is frozen shut: lift them while it opens, into another cold place.",
                        "Or cover it thicker, so that it stays open.");
            default -> List.of();
        };
    }
}
