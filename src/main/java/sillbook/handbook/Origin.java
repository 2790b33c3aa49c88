// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

/** Where a figure in force comes from. */
public enum Origin {
    OWN_FOR_VARIETY("own"),
    OWN_FOR_KIND("own"),
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

    public boolean isOwn() {
        return this == OWN_FOR_VARIETY || this == OWN_FOR_KIND || this == OWN_FOR_HARDY;
    }

    /** One of {@code own}, {@code handbook}, {@code assumed}. */
    public String word() {
        return word;
    }
}
