// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Variety;
import sillbook.season.past.Influence;
import sillbook.season.past.Merit;
import sillbook.season.past.Trait;
import sillbook.season.past.Trials;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.grown.PotsBehind;
import sillbook.ui.screen.list.Cursor;
import sillbook.ui.screen.list.Find;
import sillbook.ui.screen.list.FindPane;
import sillbook.ui.screen.mark.MarkOffers;
import sillbook.ui.screen.why.ExplanationSlip;
import sillbook.words.MeritWhy;
import sillbook.words.MeritWords;

/**
 * Which varieties, potting mixes or places were worth it, with the rest taken out. The quick answer is drawn first; the
 * one that stays is asked of the shell, and takes its place when it comes.
 *
 * @param asked of which trials the answer that stays was asked for
 * @param averaged that answer, as soon as it has come
 */
record EffectsPage(Trait trait, Cursor cursor, Optional<Trials> asked, Optional<Message.Averaged> averaged)
        implements Layer {
    static final EffectsPage OPEN = new EffectsPage(Trait.VARIETY, Cursor.FIRST, Optional.empty(), Optional.empty());

    @Override
    public Reach reach() {
        return Reach.PAGE;
    }

    private EffectsPage at(Cursor to) {
        return new EffectsPage(trait, to, asked, averaged);
    }

    EffectsPage by(Trait other) {
        return new EffectsPage(other, Cursor.FIRST, asked, averaged);
    }

    /** Whoever asks once is not to ask again: the answer may take a while. */
    @Override
    public Step onTop(State state) {
        Trials trials = state.almanac().trials();
        if (asked.filter(trials::equals).isPresent() || trials.silence().isPresent()) {
            return Step.to(state);
        }
        return Step.to(
                state.withTop(new EffectsPage(trait, cursor, Optional.of(trials), averaged)),
                new Effect.Average(trials));
    }

    @Override
    public Layer averaged(Message.Averaged answer) {
        return new EffectsPage(trait, cursor, asked, Optional.of(answer));
    }

    private MeritRows lines(State state) {
        Trials trials = state.almanac().trials();
        Optional<Message.Averaged> staying =
                averaged.filter(answer -> answer.trials().equals(trials));
        return new MeritRows(
                trials,
                staying.flatMap(answer -> Optional.ofNullable(answer.merits().get(trait)))
                        .orElseGet(() -> state.almanac().merits(trait)),
                new MeritWords(state.journal()),
                new MeritWhy(state.journal()),
                staying.isEmpty(),
                state);
    }

    private FindPane list(State state) {
        MeritRows lines = lines(state);
        return new FindPane(Find.CLOSED, lines.rows(), cursor, lines.heads());
    }

    @Override
    public Optional<Thing> thing(State state) {
        return cursor.thing(list(state).rows());
    }

    private Optional<Merit> under(State state) {
        return lines(state).under(thing(state));
    }

    @Override
    public Look look(State state, Size body) {
        FindPane list = list(state);
        MeritRows lines = lines(state);
        Look look = Look.body(list)
                .withPlace("by score, " + list.place(body.rows()))
                .withAside(lines.under(cursor.thing(list.rows()))
                        .map(merit ->
                                Aside.of(new MeritWords(state.journal()).name(merit.influence()), lines.aside(merit)))
                        .orElse(Aside.NONE))
                .withFoot(
                        Action.OPEN_POTS,
                        Action.VIEW,
                        Action.CHOOSE_VARIETY,
                        Action.SET_ASIDE,
                        Action.WRITE_LINE,
                        Action.WHY,
                        Action.BACK);
        return list.point(body.rows()).map(look::withCursor).orElse(look);
    }

    @Override
    public List<Offer> offers(State state) {
        List<Offer> offers = new ArrayList<>();
        offers.add(Offer.moving(
                state, key -> at(list(state).pressed(key, state.body().rows()))));
        Optional<Merit> under = under(state);
        offers.add(Offer.of(
                        Action.OPEN_POTS,
                        () -> Step.to(under.map(Merit::influence)
                                .flatMap(Influence::shared)
                                .map(shared -> state.laid(PotsBehind.of(shared)))
                                .orElse(state)))
                .offIf(under.isEmpty(), "there is no score yet"));
        offers.add(Offer.of(
                        Action.WHY,
                        () -> Step.to(under.map(merit -> state.laid(
                                        new ExplanationSlip(lines(state).why(merit))))
                                .orElse(state)))
                .offIf(under.isEmpty(), "there is no figure here"));
        offers.add(Offer.of(Action.VIEW, () -> Step.to(state.laid(new EffectsChoice(this)))));
        offers.addAll(new MarkOffers(state, variety(state, under)).offers());
        return offers;
    }

    private static Optional<Variety> variety(State state, Optional<Merit> merit) {
        return merit.map(Merit::influence)
                .flatMap(Influence::shared)
                .flatMap(SeasonsRows::variety)
                .flatMap(state.journal().varieties()::find);
    }

    @Override
    public Layer settled(State before, State after, Cause cause) {
        return cursor.at() == 0
                ? this
                : at(list(after).settled(list(before), cause, after.body().rows()));
    }
}
