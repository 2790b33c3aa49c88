// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

/** The setting {@code colours}: on what background the page is read. */
public enum Ground {
    DARK,
    LIGHT,
    /** Not known; colours that read on black and on white alike. */
    EITHER,
    /** Without colours. */
    NONE
}
