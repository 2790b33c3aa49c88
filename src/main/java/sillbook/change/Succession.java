// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Journal;
import sillbook.model.Labels;
import sillbook.model.Pot;
import sillbook.model.Subject;

/**
 * Pots like one that is there, to be potted one after the other, so that something is always in flower. Each is made and waits for its
 * day.
 *
 * @param everyDays days from one potting to the next
 * @param until the last day of potting
 */
public record Succession(Id<Pot> model, int everyDays, LocalDate until) implements Change {
    /** Ten to fourteen days are usual (Iowa State University Extension); what is far from it is a slip of the finger. */
    public static final int LEAST_DAYS = 5;

    public static final int MOST_DAYS = 28;

    /** A row of pots reaches no further than a winter. */
    private static final int LONGEST_DAYS = 250;

    @Override
    public Stream<? extends Id<?>> names() {
        return Stream.of(model);
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        return refusal(journal, hand).<Decision>map(refusal -> refusal).orElseGet(() -> step(journal, hand));
    }

    private Optional<Refusal> refusal(Journal journal, Hand hand) {
        if (everyDays < LEAST_DAYS || everyDays > MOST_DAYS) {
            return Rules.refuse("Every " + Said.plural(everyDays, "day") + " is no usual row: 10 to 14 days are, and "
                    + LEAST_DAYS + " to " + MOST_DAYS + " can be written.");
        }
        if (ChronoUnit.DAYS.between(hand.today(), until) > LONGEST_DAYS) {
            return Rules.refuse(Said.day(until) + " is too far ahead for one winter. Write an earlier last day.");
        }
        return days(journal, hand).isEmpty()
                ? Rules.refuse("Up to " + Said.day(until) + " no other potting falls due. Write a later last day.")
                : Optional.empty();
    }

    /** The days of potting to come, counted on from the model's. */
    public List<LocalDate> days(Journal journal, Hand hand) {
        LocalDate last = Rules.pottingDay(journal, model).map(Day::likely).orElse(hand.today());
        return Stream.iterate(last.plusDays(everyDays), day -> !day.isAfter(until), day -> day.plusDays(everyDays))
                .filter(day -> day.isAfter(hand.today()))
                .toList();
    }

    private Step step(Journal journal, Hand hand) {
        Pot like = journal.pots().get(model);
        List<LocalDate> days = days(journal, hand);
        List<String> inUse =
                journal.potsOf(like.season()).stream().map(Pot::label).toList();
        List<String> labels = Labels.nextFree(Labels.letters(like.label()), days.size(), inUse);
        List<Edit> edits = new ArrayList<>();
        for (int i = 0; i < days.size(); i++) {
            Pot pot = like(like, labels.get(i), hand);
            edits.add(new Edit.Put(pot));
            edits.add(new Edit.Put(hand.event(
                    journal,
                    new Subject.OfPot(pot.id()),
                    Day.on(hand.today()),
                    new Happening.PutOff(JobKind.POT_UP, days.get(i), ""))));
        }
        return new Step(
                Labels.say(labels) + " like " + like.label() + ", to be potted every " + everyDays + " days", edits);
    }

    /** No bulbs are taken from a purchase before the pot is potted up. */
    private static Pot like(Pot model, String label, Hand hand) {
        List<Pot.Planting> plantings = model.plantings().stream()
                .map(planting -> new Pot.Planting(planting.variety(), planting.count(), Optional.empty()))
                .toList();
        return new Pot(
                hand.ids().next(),
                model.season(),
                label,
                plantings,
                model.way(),
                model.container(),
                model.across(),
                model.pottingMix(),
                model.potting(),
                Optional.empty(),
                Optional.empty(),
                "");
    }
}
