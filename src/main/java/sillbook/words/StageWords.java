// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.model.Stage;

/** Stages inside sentences. */
public final class StageWords {
    private StageWords() {}

    /** As a move says it: {@code into the cool room}. */
    public static String into(Stage stage) {
        return switch (stage) {
            case WAITING -> "back to waiting";
            case COLD -> "into the cold";
            case COOL_ROOM -> "into the cool room";
            case WARM_ROOM -> "into the warm room";
            case IN_BLOOM -> "in bloom";
            case AFTER_BLOOM -> "after bloom";
            case DONE -> "done";
        };
    }

    /** As a state says it: {@code in the cool room}. */
    public static String in(Stage stage) {
        return switch (stage) {
            case COLD -> "in the cold";
            case COOL_ROOM -> "in the cool room";
            case WARM_ROOM -> "in the warm room";
            case WAITING, IN_BLOOM, AFTER_BLOOM, DONE -> Terms.STAGES.say(stage);
        };
    }
}
