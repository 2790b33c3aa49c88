// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

/**
 * A sentence in the foot about what was just done or could not be.
 *
 * @param above what stands in the line over a sentence of what was done; empty where the page's own stays there
 */
public record Said(Tone tone, String sentence, String above) {

    /** Whether all is well. */
    public enum Tone {
        /** Line 23, until the next key that is not a mere movement. */
        DONE,
        /** Lines 22 and 23, until mended or left. */
        PROBLEM
    }

    public static Said done(String sentence) {
        return new Said(Tone.DONE, sentence, "");
    }

    /** The same under a line of its own. */
    public Said under(String line) {
        return new Said(tone, sentence, line);
    }

    public static Said problem(String sentence) {
        return new Said(Tone.PROBLEM, sentence, "");
    }

    public boolean isProblem() {
        return tone == Tone.PROBLEM;
    }
}
