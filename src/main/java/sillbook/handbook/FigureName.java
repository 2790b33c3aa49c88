// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.util.Optional;

/** The quantities the handbook has figures of. The key is how data files and the grower's own figures name them. */
public enum FigureName {
    /** The whole cold, weeks had dry included. */
    COLD("cold", Unit.WEEKS),
    /** The cold after which waiting longer is not advised. */
    COLD_LIMIT("cold-limit", Unit.WEEKS),
    /** Where the cold works well; the typical value works best. */
    COLD_BAND("cold-band", Unit.CELSIUS),
    /** Weeks of the cold that may be had dry, before potting. */
    DRY_COLD("dry-cold", Unit.WEEKS),
    /** Weeks of the cold that must follow potting, for the roots. */
    POTTED_COLD("potted-cold", Unit.WEEKS),
    /** A pot must be taken out of frost below this. */
    POT_FROST("pot-frost", Unit.CELSIUS),
    /** From the end of the cold, or from potting where none is needed, to the first flower. */
    AFTER_COLD("after-cold", Unit.WEEKS),
    COOL_ROOM("cool-room", Unit.DAYS),
    COOL_ROOM_BAND("cool-room-band", Unit.CELSIUS),
    WARM_ROOM_BAND("warm-room-band", Unit.CELSIUS),
    /** The warmest that flowers should stand in. */
    BLOOM_WARMTH("bloom-warmth", Unit.CELSIUS),
    /** From first flower to past bloom. */
    IN_BLOOM("in-bloom", Unit.DAYS),
    /** The shoot of a pot that may come in. */
    READY_SHOOT("ready-shoot", Unit.CENTIMETRES),
    /** The shoot or leaves of a pot that may leave the cool room for the warm. */
    WARM_SHOOT("warm-shoot", Unit.CENTIMETRES),
    /** Bulbs in a pot of 15 cm (6 in). */
    PER_POT("per-pot", Unit.BULBS),
    /** How much wider than its one bulb a pot should be. */
    POT_WIDER("pot-wider", Unit.CENTIMETRES),
    /** How much of the bulb stands out of the potting mix. */
    EXPOSED("exposed", Unit.SHARE),
    /** Full height in flower. */
    HEIGHT("height", Unit.CENTIMETRES),
    /** The most height for small pots. */
    SMALL_POT_HEIGHT("small-pot-height", Unit.CENTIMETRES),
    /** Days between two pots brought in, for flowers without a gap. */
    SUCCESSION("succession", Unit.DAYS),
    /** Days between two looks at a pot in the cold. */
    CHECK("check", Unit.DAYS),
    /** From one feeding of a plant that lives on to the next, while it is in leaf. */
    FEED("feed", Unit.WEEKS),
    /** The yearly rest of a plant that lives on; a kind that has one is such a plant. */
    REST("rest", Unit.WEEKS),
    REST_BAND("rest-band", Unit.CELSIUS);

    private final String key;
    private final Unit unit;

    FigureName(String key, Unit unit) {
        this.key = key;
        this.unit = unit;
    }

    public String key() {
        return key;
    }

    public Unit unit() {
        return unit;
    }

    /** The one with that key. */
    public static Optional<FigureName> of(String key) {
        for (FigureName name : values()) {
            if (name.key.equals(key)) {
                return Optional.of(name);
            }
        }
        return Optional.empty();
    }
}
