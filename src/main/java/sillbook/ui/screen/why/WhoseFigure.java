// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.why;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import sillbook.change.Change;
import sillbook.change.Remove;
import sillbook.change.Together;
import sillbook.change.WriteDown;
import sillbook.handbook.FigureName;
import sillbook.model.Id;
import sillbook.model.OwnFigure;
import sillbook.model.Pot;
import sillbook.season.LearntLength;
import sillbook.season.SetAside;
import sillbook.season.Why;
import sillbook.season.WhyLearnt;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;

/** Whose figure holds, where own pots taught one: theirs, or the handbook's. */
public final class WhoseFigure {
    private WhoseFigure() {}

    /** The offer to change it for the figure a why is about. */
    static Offer offer(State state, Why<?> why) {
        return offer(state, Stream.<Why<?>>of(why), one -> true);
    }

    /** The offer to change it for one of the figures that a pot's days rest on: the one of that name, if any. */
    public static Offer offer(State state, Id<Pot> pot, Optional<FigureName> name) {
        Stream<Why<?>> whys = name.stream().flatMap(any -> state.almanac().outlook().whys(pot).stream());
        return offer(state, whys, why -> why.length().span().figure().equals(name));
    }

    private static Offer offer(State state, Stream<Why<?>> whys, Predicate<WhyLearnt> which) {
        return offer(
                state,
                whys.filter(WhyLearnt.class::isInstance)
                        .map(WhyLearnt.class::cast)
                        .filter(why -> why.length().span().figure().isPresent())
                        .filter(which)
                        .findFirst());
    }

    private static Offer offer(State state, Optional<WhyLearnt> learnt) {
        boolean isSetAside = learnt.flatMap(WhyLearnt::setAside).isPresent();
        return Offer.of(
                        Action.HANDBOOKS,
                        () -> learnt.map(why -> keep(state, why)).orElse(Step.to(state)))
                .saying(isSetAside ? "your pots'" : "handbook's")
                .offIf(learnt.isEmpty(), "no pot of yours taught a figure here")
                .offIf(state.copy().isReadOnly(), "the journal is read only");
    }

    private static Step keep(State state, WhyLearnt why) {
        Change change = why.setAside().map(WhoseFigure::ownAgain).orElseGet(() -> handbooks(state, why.length()));
        return Step.keep(state, change, state.layers().over().size());
    }

    private static Change ownAgain(SetAside setAside) {
        List<Change> changes =
                setAside.asked().stream().<Change>map(Remove::new).toList();
        return new Together("", changes);
    }

    private static Change handbooks(State state, LearntLength length) {
        Id<OwnFigure> id = state.kit().ids().next();
        String figure = length.span().figure().orElseThrow().key();
        return new WriteDown(new OwnFigure(id, length.scope(), figure, Optional.empty(), ""));
    }
}
