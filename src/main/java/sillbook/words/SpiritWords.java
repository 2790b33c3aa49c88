// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.stream.Stream;
import sillbook.handbook.Spirit;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.Settings.LengthUnit;

/** Alcohol against tall paperwhites, as it is said. */
public final class SpiritWords {
    /** The shoot it is begun with at the least. */
    public static final Length SHOOT_LEAST = Length.ofCentimetres(Spirit.SHOOT_LEAST);

    private static final int USUAL_SPIRIT = 40;
    private static final String PAPERWHITE = "paperwhite";

    private SpiritWords() {}

    /** Whether it is published for all that a pot holds: for paperwhites alone. */
    public static boolean isFor(Stream<Kind> kinds) {
        return kinds.allMatch(kind -> kind.name().equals(PAPERWHITE));
    }

    /** {@code 1 part of 40 % spirit to 7 parts of water: 5 % alcohol, 4 to 6 do it, 10 harm (▫)}. */
    public static String mixture() {
        return "1 part of " + USUAL_SPIRIT + " % spirit to " + Decimal.say(Spirit.partsOfWater(USUAL_SPIRIT), 1)
                + " parts of water: " + Spirit.USUAL + " % alcohol, " + Spirit.LEAST + " to " + Spirit.MOST + " do it, "
                + Spirit.HARMS + " harm" + OriginMarks.after(Spirit.SOURCES);
    }

    /** {@code 3 to 5 cm}. */
    public static String shoots(LengthUnit unit) {
        return Lengths.say(SHOOT_LEAST, unit) + " to " + Lengths.say(Length.ofCentimetres(Spirit.SHOOT_MOST), unit);
    }

    /** When to begin, how it is mixed, and with what care. */
    public static String keeping(LengthUnit unit) {
        return "To keep it short: once its shoots have " + shoots(unit) + " give spirit with the water, " + mixture()
                + ". No beer, no wine. Nobody must drink it: keep it from children and pets.";
    }
}
