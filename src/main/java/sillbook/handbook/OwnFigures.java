// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.util.Optional;
import sillbook.model.OwnFigure.Range;
import sillbook.model.OwnFigure.Scope;

/** Where the figures are found that stand over the handbook's: those the grower typed, and those learnt from own pots. */
@FunctionalInterface
public interface OwnFigures {
    /** For a grower who has none. */
    OwnFigures NONE = (scope, name) -> Optional.empty();

    /** The figure typed for exactly this scope, in the unit of its name. */
    Optional<Range> find(Scope scope, FigureName name);

    /** Whether the handbook's was asked for, in the place of what was learnt. */
    default boolean isHandbookAsked(Scope scope, FigureName name) {
        return false;
    }

    /** What was learnt for a scope; the bulb tells which published figure it grew from. */
    default Optional<Learnt> learnt(Scope scope, FigureInForce.Bulb bulb, FigureName name) {
        return Optional.empty();
    }

    /** The same, as if the handbook's had never been asked for. */
    default OwnFigures unasked() {
        OwnFigures asked = this;
        return new OwnFigures() {
            @Override
            public Optional<Range> find(Scope scope, FigureName name) {
                return asked.find(scope, name);
            }

            @Override
            public Optional<Learnt> learnt(Scope scope, FigureInForce.Bulb bulb, FigureName name) {
                return asked.learnt(scope, bulb, name);
            }
        };
    }

    /**
     * A figure learnt from own pots.
     *
     * @param range in the unit of its name: what one time in ten is not reached, the middle, what one time in ten is
     *     passed
     * @param pots how many of them, at least 1
     */
    record Learnt(Range range, int pots) {
        public Learnt {
            if (pots < 1) {
                throw new IllegalArgumentException("learnt from no pot: " + pots);
            }
        }
    }
}
