// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;

/**
 * Several pots are made up into a display, or taken out of one. Each keeps its own history and its own place.
 *
 * @param name what the display is called; empty for pots that are taken out
 */
public record Display(List<Id<Pot>> pots, Optional<String> name, Day day) implements Change {
    public Display {
        pots = List.copyOf(pots);
    }

    @Override
    public Stream<? extends Id<?>> names() {
        return pots.stream();
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        return Rules.growing(journal, pots, day, hand)
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> new Step(
                        Said.labels(journal, pots)
                                + name.map(display -> " into display " + display)
                                        .orElse(" out of the display"),
                        EachPot.happens(journal, hand, pots, day, new Happening.Displayed(name))));
    }
}
