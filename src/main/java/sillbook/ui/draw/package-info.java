// SPDX-License-Identifier: Apache-2.0
/**
 * What a screen is drawn with: cells, styles, rectangles, signs and the widgets of the page; and the words for what is typed on it.
 * Pure. Must not know what stands on the page, nor any terminal.
 */
@NullMarked
package sillbook.ui.draw;

import org.jspecify.annotations.NullMarked;
