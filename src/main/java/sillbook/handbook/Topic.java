// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.util.Optional;

/** What the handbook says in words, not figures. */
public enum Topic {
    /** Roots and shoot of a pot that may come in. */
    READY("ready"),
    COOL_ROOM_LIGHT("cool-room-light"),
    /** The sign to move on from the cool room. */
    COOL_ROOM_END("cool-room-end"),
    WARM_ROOM_LIGHT("warm-room-light"),
    /** The sign that the warm room has done its work. */
    WARM_ROOM_END("warm-room-end"),
    BLOOM_CARE("bloom-care"),
    DEPTH("depth"),
    SPACING("spacing"),
    /** What of it suits pots. */
    POTS("pots"),
    TOO_LITTLE_COLD("too-little-cold"),
    TOO_MUCH_COLD("too-much-cold"),
    DRY_COLD("dry-cold"),
    /** How bulbs are kept until they are potted. */
    DRY_KEEPING("dry-keeping"),
    /** How cold gets into the ground about buried pots. */
    GROUND("ground"),
    /** What else is peculiar to a kind. */
    NOTE("note"),
    AFTERCARE("aftercare"),
    CAUTION_PEOPLE("caution-people"),
    CAUTION_PETS("caution-pets"),
    CAUTION_SKIN("caution-skin"),
    CAUTION_DUST("caution-dust"),
    CAUTION_FRIDGE("caution-fridge"),
    CAUTION_FUMES("caution-fumes"),
    CAUTION_ROT("caution-rot"),
    /** A harmful plant that shares a name. */
    CAUTION_LOOKALIKE("caution-lookalike");

    private final String key;

    Topic(String key) {
        this.key = key;
    }

    public String key() {
        return key;
    }

    public boolean isCaution() {
        return compareTo(CAUTION_PEOPLE) >= 0;
    }

    /** The one with that key. */
    public static Optional<Topic> of(String key) {
        for (Topic topic : values()) {
            if (topic.key.equals(key)) {
                return Optional.of(topic);
            }
        }
        return Optional.empty();
    }
}
