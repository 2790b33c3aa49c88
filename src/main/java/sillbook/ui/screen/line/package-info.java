// SPDX-License-Identifier: Apache-2.0
/** The slip in which a line is written. What a line means is left to the quick line of the words. */
@NullMarked
package sillbook.ui.screen.line;

import org.jspecify.annotations.NullMarked;
