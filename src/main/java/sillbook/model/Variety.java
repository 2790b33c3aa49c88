// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Optional;

/**
 * A named bulb.
 *
 * @param name the cultivar's epithet without quotes; they are drawn when it is shown
 * @param packetName the name as the packet prints it, where that differs; else empty
 * @param height full height in flower
 * @param bloomSeason when it flowers in the garden among its kind, as catalogues say
 * @param colour in the grower's words; empty when not said
 * @param packetForcing what the packet says of flowering indoors
 * @param forPots what the grower holds of it in pots, whatever its class is said to be
 * @param note in the grower's words; may be empty
 */
public record Variety(
        Id<Variety> id,
        String name,
        String packetName,
        Kind kind,
        Optional<Length> height,
        BloomSeason bloomSeason,
        String colour,
        Scent scent,
        PacketForcing packetForcing,
        ForPots forPots,
        String note)
        implements Entity<Variety> {

    public Variety {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a variety has a name");
        }
    }

    /** Early, mid or late among its kind. */
    public enum BloomSeason {
        NOT_SAID,
        EARLY,
        MID,
        LATE
    }

    /** How strongly it smells, as far as known. */
    public enum Scent {
        NOT_SAID,
        NONE,
        LIGHT,
        STRONG;

        /** Whether it is known to smell. */
        public boolean isScented() {
            return this == LIGHT || this == STRONG;
        }
    }

    /** What the packet says of forcing. */
    public enum PacketForcing {
        NOT_STATED,
        YES,
        NO
    }

    /** The grower's own mark. */
    public enum ForPots {
        NOT_MARKED,
        SUITS,
        TALL,
        UNSUITED
    }

    /** A variety of which only the name and the kind are known. */
    public static Variety of(Id<Variety> id, String name, Kind kind) {
        return new Variety(
                id,
                name,
                "",
                kind,
                Optional.empty(),
                BloomSeason.NOT_SAID,
                "",
                Scent.NOT_SAID,
                PacketForcing.NOT_STATED,
                ForPots.NOT_MARKED,
                "");
    }
}
