// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.terminal;

/** What {@code --color} asks for. */
public enum ColourWish {
    AUTO,
    ALWAYS,
    NEVER
}
