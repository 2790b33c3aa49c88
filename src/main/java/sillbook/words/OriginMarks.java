// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import sillbook.handbook.FigureInForce;
import sillbook.handbook.Origin;

/** The marks that tell whose a figure is; where there is room a word says it. */
public final class OriginMarks {
    private OriginMarks() {}

    /** Stands right before the figure: {@code ▪} own, {@code ▫} the handbook's, {@code ?} assumed. */
    public static String mark(Origin origin) {
        return switch (origin) {
            case OWN_FOR_VARIETY, OWN_FOR_KIND, OWN_FOR_HARDY -> "▪";
            case HANDBOOK_CLASS, HANDBOOK_KIND, HANDBOOK_GENERAL -> "▫";
            case ASSUMED -> "?";
        };
    }

    /** A figure's usual value with its mark: {@code ▫15}. */
    public static String marked(FigureInForce figure) {
        return mark(figure.origin()) + Decimal.say(figure.range().typical(), 1);
    }
}
