// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

/** Something that draws itself into a part of the page, of whatever size, even none. */
@FunctionalInterface
public interface Widget {
    void render(Rect area, Cells cells);
}
