// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.SpotReading;
import sillbook.model.Temperature;

/**
 * A temperature is read at a place.
 *
 * @param at when, by the clock of the place; now where that is not said. An hour that the clocks pass over is the next one, and of an hour
 *     that comes twice the first
 */
public record TakeReading(Id<Place> place, Temperature temperature, Optional<LocalDateTime> at) implements Change {
    @Override
    public Stream<? extends Id<?>> names() {
        return Stream.of(place);
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        Instant instant = at.map(
                        local -> local.atZone(journal.settings().zone()).toInstant())
                .orElse(hand.now());
        return stillToCome(instant, hand).<Decision>map(refusal -> refusal).orElseGet(() -> {
            SpotReading reading = new SpotReading(hand.ids().next(), place, instant, temperature);
            return new Step(Said.entity(journal, reading) + " written down", List.of(new Edit.Put(reading)));
        });
    }

    private static Optional<Refusal> stillToCome(Instant instant, Hand hand) {
        return instant.isAfter(hand.now())
                ? Rules.refuse("That moment is still to come, so nothing can be read yet. Write one up to now.")
                : Optional.empty();
    }
}
