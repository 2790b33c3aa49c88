// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import java.util.Optional;
import sillbook.handbook.Figure;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.handbook.Source;
import sillbook.model.Kind;
import sillbook.reckon.fit.Suggestion.Published;

/**
 * How many bulbs of a kind are published for a pot of six inches.
 *
 * @param rows one of each source
 * @param figure the one that is used
 */
public record PerPot(Handbook handbook, List<Figure> rows, Optional<Figure> figure) {
    /** Six inches, in cm. */
    public static final double ACROSS = 15.24;

    public PerPot {
        rows = List.copyOf(rows);
    }

    public static PerPot of(Handbook handbook, Optional<Kind> kind) {
        return new PerPot(
                handbook,
                kind.map(known -> handbook.published(known, FigureName.PER_POT)).orElse(List.of()),
                kind.flatMap(known -> handbook.figure(known, FigureName.PER_POT)));
    }

    /** The usual count. */
    public Optional<Published> usual() {
        return figure.map(known -> new Published(known.range().typical(), ACROSS));
    }

    /** Who published it. */
    public String source(Figure row) {
        return row.sources().stream()
                .flatMap(key -> handbook.source(key).stream())
                .map(Source::institution)
                .findFirst()
                .orElse(Source.COMMON_PRACTICE);
    }

    /** A line of each source. */
    List<String> lines() {
        return rows.stream()
                .map(row -> "published for 6 in: " + range(row) + ", " + source(row))
                .toList();
    }

    private static String range(Figure row) {
        String least = Decimal.say(row.low(), 0);
        return row.low() == row.high() ? least : least + " to " + Decimal.say(row.high(), 0);
    }
}
