// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

/** A cell, counted from 0 at the upper left. */
public record Point(int column, int row) {}
