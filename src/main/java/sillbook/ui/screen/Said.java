// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

/** A sentence in the foot about what was just done or could not be. */
public record Said(Tone tone, String sentence) {

    /** Whether all is well. */
    public enum Tone {
        /** Line 23, until the next key that is not a mere movement. */
        DONE,
        /** Lines 22 and 23, until mended or left. */
        PROBLEM
    }

    public static Said done(String sentence) {
        return new Said(Tone.DONE, sentence);
    }

    public static Said problem(String sentence) {
        return new Said(Tone.PROBLEM, sentence);
    }

    public boolean isProblem() {
        return tone == Tone.PROBLEM;
    }
}
