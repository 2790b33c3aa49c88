// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.Collection;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Subject;
import sillbook.model.Variety;

/** What several changes refuse alike. Each rule gives the refusal, or nothing when all is well. */
final class Rules {
    private Rules() {}

    static Optional<Refusal> firstOf(Optional<Refusal> one, Optional<Refusal> other) {
        return one.isPresent() ? one : other;
    }

    static Optional<Refusal> firstOf(Optional<Refusal> one, Optional<Refusal> other, Optional<Refusal> last) {
        return firstOf(firstOf(one, other), last);
    }

    /** What has happened cannot lie ahead. */
    static Optional<Refusal> hasHappened(Day day, Hand hand) {
        if (!day.earliest().isAfter(hand.today())) {
            return Optional.empty();
        }
        return refuse(Said.day(day.likely())
                + " is still to come, so it cannot be written as done. Write a day up to today.");
    }

    static Optional<Refusal> somePots(Collection<Id<Pot>> pots) {
        return pots.isEmpty() ? refuse("No pot was named. Name one by its label, as T4.") : Optional.empty();
    }

    static Optional<Refusal> someSubjects(Collection<Subject> subjects) {
        return subjects.isEmpty() ? refuse("Nothing was named. Name a pot or a place, as T4.") : Optional.empty();
    }

    static Optional<Refusal> potted(Journal journal, Collection<Id<Pot>> pots, Day day) {
        return pots.stream()
                .map(pot -> pottedBy(journal, pot, day))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<Refusal> pottedBy(Journal journal, Id<Pot> pot, Day day) {
        String label = journal.pots().get(pot).label();
        Optional<Day> potted = pottingDay(journal, pot);
        if (potted.isEmpty()) {
            return refuse(label + " is not potted yet. Write first when it was potted.");
        }
        if (day.latest().isBefore(potted.get().earliest())) {
            return refuse(label + " was potted on " + Said.day(potted.get().likely()) + ", after "
                    + Said.day(day.likely()) + ". Write a later day, or correct the potting day.");
        }
        return Optional.empty();
    }

    /** A pot that has grown was potted, whatever else is corrected or removed. */
    static Optional<Refusal> staysPotted(Journal after, Subject subject) {
        boolean grew =
                after.history(subject).stream().anyMatch(event -> event.what().needsPotting());
        return subject.asPot()
                .filter(pot -> grew && pottingDay(after, pot).isEmpty())
                .flatMap(pot -> refuse(after.pots().get(pot).label()
                        + " has entries that only a potted pot can have. Remove those first, or correct the day."));
    }

    static Optional<Day> pottingDay(Journal journal, Id<Pot> pot) {
        return journal.history(pot).stream()
                .filter(event -> event.what() instanceof Happening.Potted)
                .map(event -> event.day())
                .findFirst();
    }

    /** Of a variety only pots can tell that hold it. */
    static Optional<Refusal> planted(Journal journal, Collection<Id<Pot>> pots, Optional<Id<Variety>> variety) {
        return variety.flatMap(named -> pots.stream()
                .map(journal.pots()::get)
                .filter(pot -> !pot.holds(named))
                .findFirst()
                .flatMap(pot -> refuse("There is no " + Said.variety(journal, named) + " in " + pot.label()
                        + ". Name a variety that is.")));
    }

    /** What every change of growing pots asks for. */
    static Optional<Refusal> growing(Journal journal, Collection<Id<Pot>> pots, Day day, Hand hand) {
        return firstOf(inHand(journal, pots, day, hand), Ending.refuseAfter(journal, pots, day));
    }

    /** What care for pots asks for, growing or finished. */
    static Optional<Refusal> inHand(Journal journal, Collection<Id<Pot>> pots, Day day, Hand hand) {
        return firstOf(
                firstOf(somePots(pots), hasHappened(day, hand), potted(journal, pots, day)),
                Ending.refuseOnceGone(journal, pots, day));
    }

    static Optional<Refusal> refuse(String sentence) {
        return Optional.of(new Refusal(sentence));
    }
}
