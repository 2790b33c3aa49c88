// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Optional;

/**
 * A named bulb.
 *
 * @param name the cultivar's epithet without quotes; they are drawn when it is shown
 * @param packetName the name as the packet prints it, where that differs; else empty
 * @param height full height in flower
 * @param colour in the grower's words; empty when not said
 * @param packetForcing what the packet says of flowering indoors
 * @param note in the grower's words; may be empty
 */
public record Variety(
        Id<Variety> id,
        String name,
        String packetName,
        Kind kind,
        Optional<Length> height,
        String colour,
        Scent scent,
        PacketForcing packetForcing,
        String note)
        implements Entity<Variety> {

    public Variety {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a variety has a name");
        }
    }

    /** How strongly it smells, as far as known. */
    public enum Scent {
        NOT_SAID,
        NONE,
        LIGHT,
        STRONG
    }

    /** What the packet says of forcing. */
    public enum PacketForcing {
        NOT_STATED,
        YES,
        NO
    }

    /** A variety of which only the name and the kind are known. */
    public static Variety of(Id<Variety> id, String name, Kind kind) {
        return new Variety(id, name, "", kind, Optional.empty(), "", Scent.NOT_SAID, PacketForcing.NOT_STATED, "");
    }
}
