// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.change.Change;
import sillbook.change.Close;
import sillbook.change.Together;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.Pot;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.failed.FailedPage;

/** One pot written down as failed is asked at once what went wrong with it. */
final class WhatFailed {
    private WhatFailed() {}

    static Optional<Layer> after(State state, Change recorded) {
        List<Id<Pot>> failed =
                parts(recorded).flatMap(WhatFailed::failed).distinct().toList();
        return failed.size() == 1 ? Optional.of(FailedPage.of(state, failed.get(0))) : Optional.empty();
    }

    private static Stream<Change> parts(Change change) {
        return change instanceof Together together ? together.changes().stream() : Stream.of(change);
    }

    private static Stream<Id<Pot>> failed(Change change) {
        return change instanceof Close close && close.end() == End.FAILED ? close.pots().stream() : Stream.empty();
    }
}
