// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import java.util.function.Function;
import sillbook.model.Edit;

/**
 * The edits of one change, under the name it has in the list of steps.
 *
 * @param name in plain words: {@code T4 into the cool room, stair window}
 */
public record Step(String name, List<Edit> edits) implements Decision {
    public Step {
        edits = List.copyOf(edits);
    }

    @Override
    public <R> R fold(Function<Step, R> step, Function<Refusal, R> refusal) {
        return step.apply(this);
    }
}
