// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Locale;
import java.util.Optional;

/**
 * What a wish asks for.
 *
 * @param manner on one of its days, or on each
 * @param pots how many are to be in flower at once
 * @param stage how far their flowers should be on the day; where it is not said, one is open
 * @param kind of bulb, when one is named
 * @param colour words that the variety's colour should hold, any case; empty for any
 * @param scented whether only what smells will do
 * @param tallest the full height they may have
 * @param room where they should stand in flower, when a place is named
 */
public record WishedFor(
        Manner manner,
        int pots,
        Optional<FlowerStage> stage,
        Optional<Kind> kind,
        String colour,
        boolean scented,
        Optional<Length> tallest,
        Optional<Id<Place>> room) {

    /** More pots than this are not wished for at once; it is a slip of the finger. */
    public static final int MOST_POTS = 99;

    public WishedFor {
        if (pots < 1 || pots > MOST_POTS) {
            throw new IllegalArgumentException("a wish for " + pots + " pots");
        }
    }

    /** When something should be in flower. */
    public enum Manner {
        /** On one of the days. */
        SOME_DAY,
        /** On each of them. */
        EVERY_DAY
    }

    /** How far flowers are. */
    public enum FlowerStage {
        BUD_COLOUR,
        FIRST_OPEN,
        FULL
    }

    /** One pot, on one of the days, of a kind or of any. */
    public static WishedFor one(Optional<Kind> kind) {
        return new WishedFor(Manner.SOME_DAY, 1, Optional.empty(), kind, "", false, Optional.empty(), Optional.empty());
    }

    public boolean isEveryDay() {
        return manner == Manner.EVERY_DAY;
    }

    /** Whether one pot of anything will do. */
    public boolean isForAnyPot() {
        return pots == 1 && kind.isEmpty() && colour.isEmpty() && !scented && tallest.isEmpty() && room.isEmpty();
    }

    /** Whether a variety is what is asked for; what it does not say of itself does not speak against it, but a scent that is asked for must be known. */
    public boolean suits(Variety variety) {
        return kind.filter(asked -> !isOf(asked, variety.kind())).isEmpty()
                && variety.colour().toLowerCase(Locale.ROOT).contains(colour.toLowerCase(Locale.ROOT))
                && (!scented || variety.scent().isScented())
                && tallest.flatMap(most -> variety.height().filter(height -> height.tenths() > most.tenths()))
                        .isEmpty();
    }

    private static boolean isOf(Kind asked, Kind kind) {
        return asked.name().equals(kind.name())
                && (asked.group().isEmpty() || asked.group().equals(kind.group()));
    }
}
