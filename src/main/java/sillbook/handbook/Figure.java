// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.util.List;
import java.util.Optional;
import sillbook.model.Kind;
import sillbook.model.OwnFigure.Range;

/**
 * A published figure.
 *
 * @param kind what it is published for: a class, a kind, or {@link Handbook#HARDY}
 * @param low in the unit of its name, as are the others
 * @param typical empty where only a range is published
 * @param sources keys of the list of sources, at least one
 * @param note what more there is to say of it; may be empty
 */
public record Figure(
        Kind kind,
        FigureName name,
        double low,
        Optional<Double> typical,
        double high,
        List<String> sources,
        Sureness sureness,
        String note) {

    public Figure {
        sources = List.copyOf(sources);
        double middle = typical.orElse(low);
        if (!(low <= middle && middle <= high)) {
            throw new IllegalArgumentException("not in order: " + low + ", " + typical + ", " + high);
        }
        if (sources.isEmpty()) {
            throw new IllegalArgumentException("a figure without a source: " + kind + ", " + name.key());
        }
    }

    public Unit unit() {
        return name.unit();
    }

    /** Low, typical and high; the middle of the range stands for a typical value that is not published. */
    public Range range() {
        return new Range(low, typical.orElse((low + high) / 2), high);
    }
}
