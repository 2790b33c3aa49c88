// SPDX-License-Identifier: Apache-2.0
/**
 * The quick line: a line as the grower writes it, read against the journal into a change, with what was understood, what
 * follows from it, and what the word being typed may become. {@link sillbook.words.line.QuickLine} is the door.
 *
 * <p>The grammar is a table of forms, one class each. A form names the slots it has; each slot names the sense it makes
 * of words. Slots are filled in whatever order the line has them. Nothing is written here, and nothing asks the clock.
 */
@NullMarked
package sillbook.words.line;

import org.jspecify.annotations.NullMarked;
