// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Subject;
import sillbook.model.Variety;
import sillbook.season.Job;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.Said;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.entry.Entry;
import sillbook.ui.screen.form.Form;
import sillbook.ui.screen.round.RoundPage;
import sillbook.ui.screen.why.WhySlip;
import sillbook.words.PotNames;

/**
 * What can be done with pots, wherever they stand on a page: with all that are picked, else with those under the cursor.
 *
 * @param thing what the cursor stands on
 */
public record Acts(State state, Optional<Thing> thing) {
    private static final String NO_POT = "no pot is under the cursor";

    /** Everything but what Enter does. */
    public List<Offer> offers() {
        return offers(why());
    }

    /**
     * The same.
     *
     * @param why what explains the line under the cursor
     */
    public List<Offer> offers(Offer why) {
        List<Offer> offers = new ArrayList<>();
        offers.add(lay(Action.NEW_POT, Entry::newPot));
        offers.add(lay(Action.SAME_AGAIN, () -> Entry.sameAgain(pot(meant().get(0))))
                .offIf(meant().size() != 1, "it wants one pot under the cursor"));
        offers.add(onPots(Action.MOVE, () -> Form.of(MoveSheet.of(Pots.growing(state, meant()))))
                .offIf(!meant().isEmpty() && growing().isEmpty(), "nothing of it is growing"));
        offers.add(check());
        offers.add(anotherDay());
        offers.add(lay(Action.JOT, () -> Form.of(new JotSheet(subjects(), about()))));
        offers.add(onPots(Action.OUTCOME, this::outcome));
        offers.add(correct());
        offers.add(Offer.of(Action.REMOVE, () -> Step.to(state.laid(RemoveSlip.of(meant()))))
                .offIf(meant().isEmpty(), NO_POT)
                .offIf(readOnly()));
        offers.add(Offer.of(Action.PICK, this::pick).offIf(under().isEmpty(), NO_POT));
        offers.add(why);
        return offers;
    }

    /** The offer to explain what stands under the cursor. */
    public Offer why() {
        if (thing.orElse(null) instanceof Thing.OfGround of) {
            return new GroundActs(state, of).why();
        }
        return thing.orElse(null) instanceof Thing.OfPlace of
                ? WhySlip.ofPlace(state, state.journal().places().find(of.place()))
                : WhySlip.offer(state, under().stream().findFirst());
    }

    /** Picks among the pots a page shows. */
    public Offer pickByRule(List<Id<Pot>> shown) {
        return Offer.of(Action.PICK_BY_RULE, () -> Step.to(state.laid(new PickChoice(thing, shown))))
                .offIf(shown.isEmpty(), "no pot is shown here");
    }

    /** What Enter does with the job under the cursor. */
    public Offer doJob() {
        Optional<Job.OfPots> job = job();
        if (thing.orElse(null) instanceof Thing.OfPlace of) {
            return lay(Action.DO_JOB, () -> round(of.place())).saying("start the round");
        }
        if (thing.orElse(null) instanceof Thing.OfGround of) {
            return new GroundActs(state, of).doJob();
        }
        return lay(Action.DO_JOB, () -> JobForm.of(state, job.orElseThrow()))
                .offIf(job.isEmpty(), "there is nothing to do here");
    }

    /** What Enter does where these pots are asked for together. */
    public Offer doRound(List<Id<Pot>> pots) {
        return lay(Action.DO_JOB, () -> RoundPage.of(state, pots)).saying("start the round");
    }

    private Layer round(Id<Place> place) {
        return RoundPage.of(state.journal().places().get(place));
    }

    private Optional<Job.OfPots> job() {
        return under().stream().findFirst().flatMap(state.almanac().outlook()::job);
    }

    /** Several pots fail one by one: each has causes of its own. */
    private Layer outcome() {
        return meant().size() == 1 ? new OutcomeChoice(meant().get(0)) : Entry.outcome(pots());
    }

    private Offer check() {
        if (thing.orElse(null) instanceof Thing.OfPlace of && state.picked().isEmpty()) {
            return lay(Action.CHECK, () -> round(of.place()));
        }
        return Offer.of(Action.CHECK, this::look)
                .offIf(meant().isEmpty(), NO_POT)
                .offIf(readOnly())
                .offIf(growing().isEmpty(), "nothing of it is growing");
    }

    /** Those that are not growing are named and left out. */
    private Step look() {
        Pots pots = Pots.growing(state, meant());
        State looking = state.laid(RoundPage.of(state, pots.fit()));
        String leftOut = pots.leftOutWords(state, "not growing");
        return Step.to(leftOut.isEmpty() ? looking : looking.saying(Said.done(leftOut)));
    }

    private Offer anotherDay() {
        if (thing.orElse(null) instanceof Thing.OfPlace of) {
            List<Subject> place = List.of(new Subject.OfPlace(of.place()));
            return lay(Action.ANOTHER_DAY, () -> Form.of(new PutOffSheet(place, JobKind.CHECK, about())));
        }
        if (thing.orElse(null) instanceof Thing.OfGround of) {
            return new GroundActs(state, of).anotherDay();
        }
        return lay(
                        Action.ANOTHER_DAY,
                        () -> Form.of(
                                new PutOffSheet(subjects(), job().orElseThrow().kind(), about())))
                .offIf(job().isEmpty(), "there is no job to put off");
    }

    private Offer correct() {
        if (thing.orElse(null) instanceof Thing.OfPlace of) {
            return lay(
                    Action.CORRECT,
                    () -> Entry.correct(state, state.journal().places().get(of.place())));
        }
        return onPots(Action.CORRECT, () -> Entry.correct(state, pot(meant().get(0))))
                .offIf(meant().size() > 1, "only one pot at a time can be corrected");
    }

    private Offer onPots(Action action, Supplier<Layer> layer) {
        return lay(action, layer).offIf(meant().isEmpty(), NO_POT);
    }

    private Offer lay(Action action, Supplier<Layer> layer) {
        return Offer.of(action, () -> Step.to(state.laid(layer.get()))).offIf(readOnly());
    }

    private Optional<String> readOnly() {
        return state.copy().isReadOnly() ? Optional.of("the journal is read only") : Optional.empty();
    }

    private Step pick() {
        Set<Id<Pot>> picked = new LinkedHashSet<>(state.picked());
        if (!picked.addAll(under())) {
            under().forEach(picked::remove);
        }
        return Step.to(state.withPicked(picked));
    }

    /** The pots under the cursor. */
    private List<Id<Pot>> under() {
        return thing.orElse(null) instanceof Thing.OfPots of ? of.pots() : List.of();
    }

    /** Those an act is for. */
    private List<Id<Pot>> meant() {
        return state.picked().isEmpty() ? under() : List.copyOf(state.picked());
    }

    private List<Id<Pot>> growing() {
        return Pots.growing(state, meant()).fit();
    }

    private List<Pot> pots() {
        return meant().stream().map(this::pot).toList();
    }

    private Pot pot(Id<Pot> id) {
        return state.journal().pots().get(id);
    }

    private List<Subject> subjects() {
        if (!meant().isEmpty()) {
            return meant().stream().<Subject>map(Subject.OfPot::new).toList();
        }
        Subject other = new Subject.OfSeason(state.shown().season());
        if (thing.orElse(null) instanceof Thing.OfPlace of) {
            other = new Subject.OfPlace(of.place());
        } else if (thing.orElse(null) instanceof Thing.OfGround of) {
            other = new Subject.OfPlace(of.place());
        } else if (thing.orElse(null) instanceof Thing.OfVariety of) {
            other = new Subject.OfVariety(of.variety());
        } else if (thing.orElse(null) instanceof Thing.OfPurchase of) {
            other = new Subject.OfPurchase(of.purchase());
        }
        return List.of(other);
    }

    private String about() {
        PotNames names = new PotNames(state.journal());
        return meant().isEmpty() ? subjects().get(0).fold(new Called(names, state.journal())) : names.labels(meant());
    }

    /** What is said of a subject that is no pot. */
    private record Called(PotNames names, Journal journal) implements Subject.Cases<String> {
        @Override
        public String pot(Id<Pot> pot) {
            return names.labels(List.of(pot));
        }

        @Override
        public String place(Id<Place> place) {
            return journal.places().get(place).name();
        }

        @Override
        public String variety(Id<Variety> variety) {
            return names.variety(variety);
        }

        @Override
        public String purchase(Id<Purchase> purchase) {
            return "the purchase of "
                    + names.variety(journal.purchases().get(purchase).variety());
        }

        @Override
        public String season(Season season) {
            return "this season";
        }
    }
}
