// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

/** How many colours the terminal shows, or may be asked for. */
public enum ColourDepth {
    NONE,
    SIXTEEN,
    INDEXED_256,
    DIRECT_24_BIT
}
