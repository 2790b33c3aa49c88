// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Which levels belong to which. */
final class Nesting {
    private final Design design;

    Nesting(Design design) {
        this.design = design;
    }

    List<Nested> found() {
        List<Nested> found = new ArrayList<>();
        for (Factor inner : design.layout()) {
            for (Factor outer : design.layout()) {
                int outers = outer.levels().size();
                if (outers > 1 && outers < inner.levels().size() && isWithin(inner, outer)) {
                    found.add(new Nested(inner.name(), outer.name()));
                }
            }
        }
        return found;
    }

    void check() {
        for (Nested said : design.nested()) {
            if (!isWithin(design.factor(said.factor()), design.factor(said.within()))) {
                throw new IllegalArgumentException(said.factor() + " is not nested within " + said.within());
            }
        }
    }

    private boolean isWithin(Factor inner, Factor outer) {
        return IntStream.range(0, inner.levels().size())
                .allMatch(level -> partners(inner.column(level), outer).count() == 1);
    }

    /** The columns that count in a level's mean: its own, and what it belongs to. */
    int[] columns(Factor factor, int level) {
        int own = factor.column(level);
        IntStream outer = design.nested().stream()
                .filter(said -> said.factor().equals(factor.name()))
                .flatMapToInt(said -> partners(own, design.factor(said.within())));
        return IntStream.concat(IntStream.of(own), outer).toArray();
    }

    private IntStream partners(int column, Factor other) {
        return IntStream.range(0, other.levels().size())
                .map(other::column)
                .filter(partner -> design.together(column, partner) > 0);
    }
}
