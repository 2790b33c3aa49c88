// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

/**
 * A style as a terminal is told it.
 *
 * @param dim for pencil where no colour says it
 */
public record Paint(Colour foreground, Colour background, boolean bold, boolean dim, boolean underlined) {}
