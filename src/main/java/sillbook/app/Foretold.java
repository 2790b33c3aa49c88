// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.change.Step;
import sillbook.model.Edit;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.Pot;

/** The windows to keep with a step: those of each pot that is potted or moved by it. */
final class Foretold {
    private Foretold() {}

    static List<KeptWindow> by(Step step, Journal before, Forecast forecast, LocalDate today) {
        List<Id<Pot>> pots = potsPottedOrMoved(step, before);
        if (pots.isEmpty()) {
            return List.of();
        }
        return forecast.windows(before.with(step.edits()), pots, today);
    }

    private static List<Id<Pot>> potsPottedOrMoved(Step step, Journal before) {
        return step.edits().stream()
                .flatMap(Foretold::eventPut)
                .filter(event -> !before.events().contains(event.id()))
                .filter(event -> event.what() instanceof Happening.Potted || event.what() instanceof Happening.Moved)
                .map(event -> event.subject().asPot())
                .flatMap(Optional::stream)
                .distinct()
                .toList();
    }

    private static Stream<Event> eventPut(Edit edit) {
        return edit instanceof Edit.Put && edit.entity() instanceof Event event ? Stream.of(event) : Stream.empty();
    }
}
