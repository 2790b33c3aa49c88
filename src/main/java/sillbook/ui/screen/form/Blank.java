// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.form;

/**
 * One blank of a form.
 *
 * @param name as it stands before it: {@code Potted}
 * @param columns how long its ruled line is
 */
public record Blank(String name, int columns) {}
