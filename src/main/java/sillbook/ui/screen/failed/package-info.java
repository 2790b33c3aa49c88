// SPDX-License-Identifier: Apache-2.0
/** What went wrong with a pot: its signs, and the causes the journal speaks for. Knows no words of its own for a clue. */
@NullMarked
package sillbook.ui.screen.failed;

import org.jspecify.annotations.NullMarked;
