// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.List;
import java.util.Optional;
import sillbook.change.Remove;
import sillbook.model.Entity;
import sillbook.model.ReadingSource;
import sillbook.ui.draw.Sentences;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Action;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.Look;
import sillbook.ui.screen.Offer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Step;
import sillbook.words.Counts;
import sillbook.words.plan.PlanRemoved;

/**
 * Asks whether a place, variety or purchase is to go, a thermometer's file with its readings, or a plan, whose pots stay. Nothing else
 * refers to it, so nothing else goes with it.
 *
 * @param called what it is called, as {@code place cellar}
 */
public record RemoveEntry(Remove remove, String called) implements Layer {
    /** What the key does on such an entry: ask; where something still refers to it, say what. */
    public static Offer offer(State state, Optional<? extends Entity<?>> entity) {
        Optional<Remove> remove = entity.map(Remove::new);
        return Offer.of(
                        Action.REMOVE,
                        () -> Step.to(remove.<Layer>map(of -> new RemoveEntry(of, of.called(state.journal())))
                                .map(state::laid)
                                .orElse(state)))
                .offIf(remove.isEmpty(), "there is nothing here to remove")
                .offIf(remove.flatMap(of -> of.usedBy(state.journal()))
                        .map(user -> "it is still used by " + user + ": remove or correct that first"))
                .offIf(remove.flatMap(of -> of.mingled(state.journal()))
                        .map(other -> "its readings lie among those of " + other.name() + ": take them back instead"))
                .offIf(state.copy().isReadOnly(), "the journal is read only");
    }

    @Override
    public Reach reach() {
        return Reach.FIELD;
    }

    @Override
    public Look look(State state, Size body) {
        Sentences told = Sentences.of(List.of(told(state) + " Enter removes it, Esc leaves it."), body.columns());
        return Look.slip("Remove " + called, told.rows(), told)
                .withAside(Aside.of("", "U can bring it back later.", ""))
                .withFoot(Action.AGREE, Action.BACK, Action.KEYS);
    }

    private String told(State state) {
        return remove.entity() instanceof ReadingSource source
                ? "What it read goes with it: " + Counts.of(source.readings(), "reading") + "."
                : PlanRemoved.left(remove.entity(), state.journal())
                        .map(left -> left + ".")
                        .orElse("Nothing in the journal refers to it.");
    }

    @Override
    public List<Offer> offers(State state) {
        int layersAfter = state.layers().over().size() - 1;
        return List.of(Offer.of(Action.AGREE, () -> Step.keep(state, remove, layersAfter))
                .saying("remove"));
    }
}
