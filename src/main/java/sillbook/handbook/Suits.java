// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

/** How a kind, or a class of one, suits pots. */
public enum Suits {
    /** Named before others. */
    FIRST,
    WELL,
    /** Its stems are long for a pot. */
    TALL,
    /** Nothing is published here. */
    NO_WORD
}
