// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.form;

/**
 * Something said under the blanks: what follows from them, cautions.
 *
 * @param label before it: {@code Then}; may be empty
 */
public record Note(String label, String sentence) {}
