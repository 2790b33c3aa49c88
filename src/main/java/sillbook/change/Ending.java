// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.Collection;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Event;
import sillbook.model.Happening.Closed;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;

/**
 * How a pot's winter ended, and what that rules out from its day on. Days before may still be written down: a book is
 * filled in later.
 *
 * @param label of the pot
 */
record Ending(String label, End end, Day day) {

    /** A pot whose winter is over is not potted, carried, looked at or seen to flower. */
    static Optional<Refusal> refuseAfter(Journal journal, Collection<Id<Pot>> pots, Day day) {
        return of(journal, pots)
                .filter(ending -> !ending.isAfter(day))
                .findFirst()
                .flatMap(one -> one.refuse(day));
    }

    /** A pot that is finished can still be planted out or put to rest; one that is gone cannot. */
    static Optional<Refusal> refuseOnceGone(Journal journal, Collection<Id<Pot>> pots, Day day) {
        return of(journal, pots)
                .filter(ending -> ending.end != End.FINISHED && !ending.isAfter(day))
                .findFirst()
                .flatMap(one -> one.refuse(day));
    }

    /** A pot ends once. */
    static Optional<Refusal> refuseAgain(Journal journal, Collection<Id<Pot>> pots) {
        return of(journal, pots)
                .findFirst()
                .flatMap(ending -> Rules.refuse(
                        ending.said() + " already. To write it otherwise, correct that entry in its history."));
    }

    private static Stream<Ending> of(Journal journal, Collection<Id<Pot>> pots) {
        return pots.stream().flatMap(pot -> of(journal, journal.pots().get(pot)).stream());
    }

    private static Optional<Ending> of(Journal journal, Pot pot) {
        for (Event event : journal.history(pot.id())) {
            if (event.what() instanceof Closed closed) {
                return Optional.of(new Ending(pot.label(), closed.end(), event.day()));
            }
        }
        return Optional.empty();
    }

    private boolean isAfter(Day other) {
        return other.likely().isBefore(day.likely());
    }

    private Optional<Refusal> refuse(Day other) {
        return Rules.refuse(said() + "; nothing more happens to it on " + Said.day(other.likely())
                + ". Write an earlier day, name another pot, or correct that entry in its history.");
    }

    private String said() {
        return label + " is done since " + Said.day(day.likely()) + " (" + Said.words(end) + ")";
    }
}
