// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the grower said of a figure: a value of their own, which stands over the handbook's and over what was learnt, or
 * that the handbook's is to hold whatever was learnt. It holds until it is taken back.
 *
 * @param scope what it holds for
 * @param figure the figure's key as the handbook writes it; one this handbook does not know stays kept
 * @param range its value, in the unit the handbook gives that figure; empty where the handbook's was asked for
 * @param note why, in the grower's words
 */
public record OwnFigure(Id<OwnFigure> id, Scope scope, String figure, Optional<Range> range, String note)
        implements Entity<OwnFigure> {

    /** What an own figure holds for: a variety, a kind (with or without its group), or every kind that needs cold. */
    public record Scope(Optional<Id<Variety>> variety, Optional<Kind> kind) {
        public Scope {
            if (variety.isPresent() && kind.isPresent()) {
                throw new IllegalArgumentException("a figure holds for a variety or for a kind, not for both");
            }
        }

        public static Scope of(Id<Variety> variety) {
            return new Scope(Optional.of(variety), Optional.empty());
        }

        public static Scope of(Kind kind) {
            return new Scope(Optional.empty(), Optional.of(kind));
        }

        /** The house rule: every kind that needs cold. */
        public static Scope ofAllHardy() {
            return new Scope(Optional.empty(), Optional.empty());
        }

        public boolean isHouseRule() {
            return variety.isEmpty() && kind.isEmpty();
        }
    }

    /** Low, typical and high of a figure, in that order. */
    public record Range(double low, double typical, double high) {
        public Range {
            if (!(low <= typical && typical <= high)) {
                throw new IllegalArgumentException("not in order: " + low + ", " + typical + ", " + high);
            }
        }

        public static Range of(double only) {
            return new Range(only, only, only);
        }
    }

    @Override
    public Stream<Id<?>> refersTo() {
        return scope.variety().stream().map(id -> id);
    }
}
