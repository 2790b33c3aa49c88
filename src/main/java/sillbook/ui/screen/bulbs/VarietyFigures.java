// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.handbook.KindEntry;
import sillbook.model.Variety;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Labelled;
import sillbook.ui.screen.list.Row;
import sillbook.words.SourceWords;

/** The figures on a variety's card: those its dates and its potting rest on. */
record VarietyFigures(State state, Variety variety) {
    private static final List<FigureName> SHOWN = List.of(
            FigureName.COLD,
            FigureName.COLD_LIMIT,
            FigureName.COLD_BAND,
            FigureName.AFTER_COLD,
            FigureName.COOL_ROOM,
            FigureName.IN_BLOOM,
            FigureName.READY_SHOOT,
            FigureName.WARM_SHOOT,
            FigureName.PER_POT,
            FigureName.HEIGHT);

    /** Told only of kinds that need cold. */
    private static final Set<FigureName> OF_COLD = Set.of(
            FigureName.COLD,
            FigureName.COLD_LIMIT,
            FigureName.COLD_BAND,
            FigureName.COOL_ROOM,
            FigureName.READY_SHOOT,
            FigureName.WARM_SHOOT);

    List<Row> rows() {
        SourceWords sources =
                new SourceWords(state.kit().handbook(), state.journal().settings());
        return SHOWN.stream()
                .filter(name -> needsCold() || !OF_COLD.contains(name))
                .map(name -> Row.of(thing(name), new FigureLine(name, held(name), sources))
                        .withMark(Labelled.TEXT))
                .toList();
    }

    private boolean needsCold() {
        return state.kit()
                .handbook()
                .entry(variety.kind())
                .map(KindEntry::needsCold)
                .orElse(true);
    }

    private Optional<FigureInForce> held(FigureName name) {
        return state.almanac().outlook().figures().find(variety, name);
    }

    private static Thing thing(FigureName name) {
        return new Thing.Named("figure " + name.key());
    }

    /** The figure a thing of the card stands for; empty when it is none. */
    static Optional<FigureName> of(Thing thing) {
        return SHOWN.stream().filter(name -> thing(name).equals(thing)).findFirst();
    }
}
