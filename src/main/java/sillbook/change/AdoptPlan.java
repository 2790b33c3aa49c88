// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Intention;
import sillbook.model.Journal;
import sillbook.model.Labels;
import sillbook.model.Pot;
import sillbook.model.Proposal;
import sillbook.model.SeasonPlan;
import sillbook.model.Variety;
import sillbook.model.Wish;

/**
 * A plan becomes pots that wait for their potting day, with its purchases and containers kept for them. Pots that are there already are
 * meant to go on by it. What another plan of the season meant for pots no longer holds, and those of its pots that were never potted and
 * that this one does not want go; whatever has happened stays.
 *
 * @param letters what the label of a pot begins with, by what is in it
 * @param meets for each wish that the plan meets, which of its pots are meant for it, counted from 0
 */
public record AdoptPlan(Id<SeasonPlan> plan, Map<Id<Variety>, String> letters, Map<Id<Wish>, Set<Integer>> meets)
        implements Change {
    public AdoptPlan {
        letters = Map.copyOf(letters);
        meets = Map.copyOf(meets);
    }

    @Override
    public Stream<? extends Id<?>> names() {
        return Stream.concat(Stream.of(plan), meets.keySet().stream());
    }

    @Override
    public Decision decide(Journal journal, Hand hand) {
        SeasonPlan adopted = journal.seasonPlans().get(plan);
        return refusal(journal, adopted)
                .<Decision>map(refusal -> refusal)
                .orElseGet(() -> step(journal, adopted, hand));
    }

    private static Optional<Refusal> refusal(Journal journal, SeasonPlan adopted) {
        if (adopted.adopted().isPresent()) {
            return Rules.refuse("Plan " + adopted.name() + " of " + Said.season(journal, adopted.season())
                    + " is adopted already. Change it by hand or search anew, and keep that as another plan first.");
        }
        return adopted.pots().isEmpty()
                ? Rules.refuse("Plan " + adopted.name() + " has no pots yet. Put some into it first.")
                : Optional.empty();
    }

    private Step step(Journal journal, SeasonPlan adopted, Hand hand) {
        List<Edit> edits = new ArrayList<>(laidAside(journal, adopted));
        Making making = new Making(journal.with(edits), adopted, hand);
        List<Proposal> made = making.all(adopted.pots());
        edits.addAll(making.edits);
        edits.add(new Edit.Put(adopted.adoptedOn(hand.today(), made)));
        edits.addAll(wishes(journal.with(edits), adopted, made));
        return new Step(name(adopted, making.labels), edits);
    }

    private static String name(SeasonPlan adopted, List<String> labels) {
        String pots = labels.isEmpty() ? "" : ", " + Labels.say(labels) + " to be potted";
        return "plan " + adopted.name() + " adopted" + pots;
    }

    /** Pots of another plan that were never potted, and that this one does not want: they go when it is adopted. */
    public static List<Id<Pot>> dropped(Journal journal, SeasonPlan adopted) {
        Set<Id<Pot>> kept =
                adopted.pots().stream().flatMap(one -> one.pot().stream()).collect(Collectors.toSet());
        return meant(journal, adopted)
                .map(Intention::pot)
                .filter(pot ->
                        !kept.contains(pot) && Rules.pottingDay(journal, pot).isEmpty())
                .toList();
    }

    /** What is meant for pots of its season. */
    private static Stream<Intention> meant(Journal journal, SeasonPlan adopted) {
        return journal.intentions().all().stream()
                .filter(meant -> journal.pots().get(meant.pot()).season().equals(adopted.season()));
    }

    /** What of other plans no longer holds. */
    private static List<Edit> laidAside(Journal journal, SeasonPlan adopted) {
        List<Id<Pot>> dropped = dropped(journal, adopted);
        List<Edit> edits = new ArrayList<>();
        meant(journal, adopted).forEach(meant -> edits.add(new Edit.Remove(meant)));
        SeasonPlan.of(adopted.season(), journal).stream()
                .filter(other -> other.adopted().isPresent())
                .forEach(other -> edits.add(new Edit.Put(other.laidAside(dropped))));
        if (!dropped.isEmpty()) {
            edits.addAll(RemovePots.edits(journal.with(edits), dropped));
        }
        return edits;
    }

    /** Wishes are met by the pots of this plan, and by those that were meant for them and are potted. */
    private List<Edit> wishes(Journal after, SeasonPlan adopted, List<Proposal> made) {
        Set<Id<Pot>> planned = made.stream()
                .flatMap(one -> one.pot().stream())
                .filter(pot -> Rules.pottingDay(after, pot).isEmpty())
                .collect(Collectors.toSet());
        List<Edit> edits = new ArrayList<>();
        for (Wish wish : after.wishes().all()) {
            if (wish.season().equals(adopted.season())) {
                Set<Id<Pot>> pots = new HashSet<>(wish.pots());
                pots.removeAll(planned);
                meets.getOrDefault(wish.id(), Set.of()).stream()
                        .filter(number -> number < made.size())
                        .forEach(number -> made.get(number).pot().ifPresent(pots::add));
                if (!pots.equals(wish.pots())) {
                    edits.add(new Edit.Put(wish.meantFor(pots)));
                }
            }
        }
        return edits;
    }

    /** Makes the pots. */
    private final class Making {
        private final Journal journal;
        private final SeasonPlan adopted;
        private final Hand hand;
        private final List<Edit> edits = new ArrayList<>();
        private final List<String> labels = new ArrayList<>();
        private final Map<String, List<String>> inUse = new HashMap<>();

        Making(Journal journal, SeasonPlan adopted, Hand hand) {
            this.journal = journal;
            this.adopted = adopted;
            this.hand = hand;
        }

        List<Proposal> all(Collection<Proposal> proposals) {
            return proposals.stream().map(this::one).toList();
        }

        private Proposal one(Proposal proposal) {
            proposal.pot().ifPresent(there -> sentInstead(there, proposal));
            Id<Pot> pot = proposal.pot().orElseGet(() -> made(proposal));
            edits.add(new Edit.Put(new Intention(hand.ids().next(), pot, plan, proposal.course())));
            return proposal.about(Optional.of(pot));
        }

        /** A pot that waits gets what was sent for it, where that is another variety. */
        private void sentInstead(Id<Pot> id, Proposal proposal) {
            Pot pot = journal.pots().get(id);
            boolean isOther = !pot.first().variety().equals(proposal.variety());
            if (isOther && !pot.isMixed() && Rules.pottingDay(journal, id).isEmpty()) {
                edits.add(new Edit.Put(pot.filledWith(
                        List.of(new Pot.Planting(proposal.variety(), proposal.bulbs(), proposal.purchase())))));
            }
        }

        private Id<Pot> made(Proposal proposal) {
            String label = label(letters.getOrDefault(proposal.variety(), "P"));
            labels.add(label);
            Pot pot = Pot.waiting(
                    hand.ids().next(),
                    adopted.season(),
                    label,
                    List.of(new Pot.Planting(proposal.variety(), proposal.bulbs(), proposal.purchase())),
                    proposal.container());
            edits.add(new Edit.Put(pot));
            return pot.id();
        }

        private String label(String letter) {
            List<String> taken = inUse.computeIfAbsent(
                    letter,
                    any -> new ArrayList<>(journal.potsOf(adopted.season()).stream()
                            .map(Pot::label)
                            .toList()));
            String label = Labels.nextFree(letter, 1, taken).get(0);
            taken.add(label);
            return label;
        }
    }
}
