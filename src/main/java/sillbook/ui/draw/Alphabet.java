// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

/** Which characters the terminal can be trusted with. */
public enum Alphabet {
    UNICODE,
    /** Where the locale is not UTF-8, or the grower asks for it. */
    ASCII
}
