// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import java.util.Optional;

/**
 * What one look at the program shows.
 *
 * @param cursor where the terminal's cursor stands, which is where the eye or a screen reader should be
 */
public record Frame(Cells cells, Optional<Point> cursor) {}
