// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

/** Where a figure in force comes from. */
public enum Origin {
    OWN_FOR_VARIETY("own"),
    /** Learnt from the grower's own pots of the variety. */
    LEARNT_FOR_VARIETY("learnt"),
    OWN_FOR_KIND("own"),
    /** Learnt from the grower's own pots of the kind, whatever their variety. */
    LEARNT_FOR_KIND("learnt"),
    /** The grower's house rule for all kinds that need cold. */
    OWN_FOR_HARDY("own"),
    HANDBOOK_CLASS("handbook"),
    HANDBOOK_KIND("handbook"),
    /** Published for hardy bulbs at large, or for every bulb. */
    HANDBOOK_GENERAL("handbook"),
    /** Published for hardy bulbs, and taken for granted of a kind the handbook does not know. */
    ASSUMED("assumed");

    private final String word;

    Origin(String word) {
        this.word = word;
    }

    /** Whether the grower typed it. */
    public boolean isTyped() {
        return this == OWN_FOR_VARIETY || this == OWN_FOR_KIND || this == OWN_FOR_HARDY;
    }

    /** Whether it came out of the grower's own pots. */
    public boolean isLearnt() {
        return this == LEARNT_FOR_VARIETY || this == LEARNT_FOR_KIND;
    }

    /** Whether it is the grower's, typed or learnt. */
    public boolean isOwn() {
        return isTyped() || isLearnt();
    }

    /** One of {@code own}, {@code learnt}, {@code handbook}, {@code assumed}. */
    public String word() {
        return word;
    }
}
