// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import sillbook.model.Labels;
import sillbook.words.Counts;
import sillbook.words.Weeks;

/**
 * Which pots come in too early, and by how much.
 *
 * @param byHalfWeeks labels by the half weeks of cold they are short of
 */
record ShortOfCold(Map<Integer, List<String>> byHalfWeeks) {

    /** {@code T1 is 1 week, T3 and C2 are 2 weeks short of cold (▫); you may still move.} */
    String words() {
        List<String> parts = new ArrayList<>();
        byHalfWeeks.forEach((halves, labels) -> {
            String who = labels.size() <= 2 ? Counts.and(labels) : Labels.say(labels);
            parts.add(who + (labels.size() == 1 ? " is " : " are ") + Weeks.say(halves / 2.0));
        });
        return String.join(", ", parts) + " short of cold (▫); you may still move.";
    }
}
