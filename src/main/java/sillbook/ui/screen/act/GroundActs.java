// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import sillbook.model.Happening.Care;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Subject;
import sillbook.season.Job;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.form.Form;
import sillbook.ui.screen.why.WhySlip;

/** What can be done with a job of a trench. */
record GroundActs(State state, Thing.OfGround of) {

    /** Dug and covered want their day; pots are moved. */
    Offer doJob() {
        return switch (of.job()) {
            case DIG_TRENCH -> tend(Care.DUG);
            case COVER_TRENCH -> tend(Care.COVERED);
            default ->
                lay(Action.DO_JOB, () -> Form.of(new MoveSheet(Pots.growing(state, pots()), to(), "")))
                        .offIf(pots().isEmpty(), "no potted pot waits for the cold");
        };
    }

    private Offer tend(Care care) {
        return lay(Action.DO_JOB, () -> Form.of(new GroundSheet(of.place(), care)));
    }

    /** Pots go into the trench; where they go out of it the grower says. */
    private String to() {
        return of.job() == JobKind.POTS_IN ? place().name() : "";
    }

    private List<Id<Pot>> pots() {
        return state.almanac().today().ground().stream()
                .filter(job -> job.place().equals(of.place()) && job.kind() == of.job())
                .map(Job.OfGround::pots)
                .findFirst()
                .orElse(List.of());
    }

    private Place place() {
        return state.journal().places().get(of.place());
    }

    Offer anotherDay() {
        List<Subject> subjects = List.of(new Subject.OfPlace(of.place()));
        return lay(Action.ANOTHER_DAY, () -> Form.of(new PutOffSheet(subjects, of.job(), place().name())));
    }

    Offer why() {
        return WhySlip.ofPlace(state, Optional.of(place()));
    }

    private Offer lay(Action action, Supplier<Layer> layer) {
        Optional<String> readOnly =
                state.copy().isReadOnly() ? Optional.of("the journal is read only") : Optional.empty();
        return Offer.of(action, () -> Step.to(state.laid(layer.get()))).offIf(readOnly);
    }
}
