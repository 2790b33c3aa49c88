// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import sillbook.change.Step;
import sillbook.model.DaysRead;

/** What came of asking the store to write. */
public sealed interface Written {

    <R> R fold(Function<Kept, R> kept, Supplier<R> stale, Supplier<R> nothing);

    /**
     * It is written, and stays so whatever happens to the machine.
     *
     * @param revision the journal's revision by now
     * @param step the name of the step written, taken back or put back, and the edits by which a journal in memory
     *     follows
     * @param days what the thermometers said by now, where that is other than before
     */
    record Kept(long revision, Step step, Optional<DaysRead> days) implements Written {
        @Override
        public <R> R fold(Function<Kept, R> kept, Supplier<R> stale, Supplier<R> nothing) {
            return kept.apply(this);
        }
    }

    /** Another window wrote in the meantime; read again and decide anew. */
    record Stale() implements Written {
        @Override
        public <R> R fold(Function<Kept, R> kept, Supplier<R> stale, Supplier<R> nothing) {
            return stale.get();
        }
    }

    /** There was no step to take back or put back. */
    record Nothing() implements Written {
        @Override
        public <R> R fold(Function<Kept, R> kept, Supplier<R> stale, Supplier<R> nothing) {
            return nothing.get();
        }
    }
}
