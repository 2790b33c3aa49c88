// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.Origin;
import sillbook.handbook.Source;

/** The marks that tell whose a figure is; where there is room a word says it. */
public final class OriginMarks {
    private static final String PUBLISHED = "▫";

    private OriginMarks() {}

    /** Stands right before the figure: {@code ▪} own, {@code ▫} the handbook's, {@code ?} assumed. */
    public static String mark(Origin origin) {
        return switch (origin) {
            case OWN_FOR_VARIETY, OWN_FOR_KIND, OWN_FOR_HARDY, LEARNT_FOR_VARIETY, LEARNT_FOR_KIND -> "▪";
            case HANDBOOK_CLASS, HANDBOOK_KIND, HANDBOOK_GENERAL -> PUBLISHED;
            case ASSUMED -> "?";
        };
    }

    /** Stands after what is said in words: {@code (▫)}; where nothing is published that mark would say too much. */
    public static String after(List<String> sources) {
        return Source.isAnyPublished(sources) ? " (" + PUBLISHED + ")" : " (common practice)";
    }

    /** Stands after what rests on a figure: {@code (▪)} for an own one; else that of its sources. */
    public static String after(FigureInForce figure) {
        return figure.origin().isOwn() ? " (" + mark(figure.origin()) + ")" : after(figure.sources());
    }

    /** A figure's usual value with its mark: {@code ▫15}. */
    public static String marked(FigureInForce figure) {
        return marked(figure.origin(), figure);
    }

    /** The same where it is published of another kind, and taken for granted of this one: {@code ?5}. */
    static String assumed(FigureInForce figure) {
        return marked(Origin.ASSUMED, figure);
    }

    private static String marked(Origin origin, FigureInForce figure) {
        return mark(origin) + Decimal.say(figure.range().typical(), 1);
    }
}
