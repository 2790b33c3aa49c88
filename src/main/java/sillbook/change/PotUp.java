// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Batch;
import sillbook.model.Container;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Labels;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Potting;
import sillbook.model.PottingMix;
import sillbook.model.Season;

/**
 * Pots are made, all alike.
 *
 * @param season the winter they belong to
 * @param plantings what is in each
 * @param howMany how many pots; more than one make a batch
 * @param labels the first label, or only its letter for the next free one
 * @param potting how each was filled
 * @param potted the day they were potted and watered; empty when they wait for it
 * @param place where they were put on that day
 * @param parent the pot whose plant lives on in this one
 */
public record PotUp(
        Season season,
        List<Pot.Planting> plantings,
        int howMany,
        String labels,
        Pot.Way way,
        Optional<Id<Container>> container,
        Optional<Length> across,
        Optional<Id<PottingMix>> pottingMix,
        Potting potting,
        Optional<Day> potted,
        Optional<Id<Place>> place,
        Optional<Id<Pot>> parent,
        String note)
        implements Change {

    /** More pots than this in one go is a slip of the finger. */
    public static final int MOST_AT_ONCE = 500;

    public PotUp {
        plantings = List.copyOf(plantings);
    }

    @Override
    public Stream<? extends Id<?>> names() {
        return Stream.of(
                        plantings.stream().flatMap(Pot.Planting::refersTo),
                        container.stream(),
                        pottingMix.stream(),
                        place.stream(),
                        parent.stream())
                .flatMap(ids -> ids);
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        return Rules.firstOf(sensible(), potted.flatMap(day -> Rules.hasHappened(day, hand)), younger(journal))
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> labelled(journal, given(journal), hand));
    }

    private Decision labelled(Journal journal, List<String> given, Hand hand) {
        return free(journal, given)
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> new Step(name(journal, given), edits(journal, given, hand)));
    }

    private List<String> given(Journal journal) {
        if (Labels.number(labels) > 0) {
            return Labels.from(labels, howMany);
        }
        List<String> inUse = journal.potsOf(season).stream().map(Pot::label).toList();
        return Labels.nextFree(Labels.letters(labels), howMany, inUse);
    }

    private Optional<Refusal> sensible() {
        if (plantings.isEmpty()) {
            return Rules.refuse("Nothing was named to plant. Name a variety, as 6 x Marrow Lane.");
        }
        if (howMany < 1 || howMany > MOST_AT_ONCE) {
            return Rules.refuse(howMany + " pots cannot be made at once: write 1 to " + MOST_AT_ONCE + ".");
        }
        return Optional.empty();
    }

    private Optional<Refusal> younger(Journal journal) {
        return parent.map(journal.pots()::get)
                .filter(pot -> pot.season().compareTo(season) >= 0)
                .flatMap(pot -> Rules.refuse("The plant of " + pot.label() + " is in that pot until season "
                        + journal.nameOf(pot.season().next())
                        + ". Choose a pot of an earlier season."));
    }

    private Optional<Refusal> free(Journal journal, List<String> given) {
        return given.stream()
                .filter(label -> journal.pot(season, label).isPresent())
                .findFirst()
                .flatMap(label -> Rules.refuse(
                        "The label " + label + " is taken in season " + journal.nameOf(season) + ". Write another."));
    }

    private String name(Journal journal, List<String> given) {
        String made = potted.isPresent() ? " potted" : " to be potted";
        String where = place.map(id -> ", " + Said.place(journal, id)).orElse("");
        return Labels.say(given) + " " + Said.variety(journal, plantings.get(0).variety()) + made + where;
    }

    private List<Edit> edits(Journal journal, List<String> given, Hand hand) {
        Optional<Id<Batch>> batch = howMany > 1 ? Optional.of(hand.ids().next()) : Optional.empty();
        List<Edit> edits = new ArrayList<>();
        for (String label : given) {
            Pot pot = pot(label, batch, hand);
            edits.add(new Edit.Put(pot));
            potted.ifPresent(day -> edits.addAll(Plant.beginning(journal, pot.id(), place, day, hand)));
        }
        return edits;
    }

    private Pot pot(String label, Optional<Id<Batch>> batch, Hand hand) {
        Id<Pot> id = hand.ids().next();
        return new Pot(id, season, label, plantings, way, container, across, pottingMix, potting, batch, parent, note);
    }
}
