// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.change.Change;
import sillbook.words.Complaint;
import sillbook.words.Warned;

/**
 * What a line means, as far as it goes.
 *
 * @param change what keeping it would do; empty while the line is not complete, or cannot be
 * @param means what was understood, one fact a line
 * @param then what follows from it, one fact a line
 * @param remarks what to know before it is kept; none of it stops it
 * @param complaint why there is no change; empty when there is one, and for an empty line
 * @param unknown the parts of the line that were not understood
 * @param completions of the word at the caret, best first; the making of something new comes last
 */
public record LineReading(
        Optional<Change> change,
        List<Meaning> means,
        List<String> then,
        List<Warned> remarks,
        Optional<Complaint> complaint,
        List<Stretch> unknown,
        List<Completion> completions) {

    public LineReading {
        means = List.copyOf(means);
        then = List.copyOf(then);
        remarks = List.copyOf(remarks);
        unknown = List.copyOf(unknown);
        completions = List.copyOf(completions);
        if (change.isPresent() && complaint.isPresent()) {
            throw new IllegalArgumentException("a change that cannot be: " + complaint.get());
        }
    }
}
