// SPDX-License-Identifier: Apache-2.0
/** Choosing for the coming season: every variety with what speaks for it, its mark, and what is to be ordered. It must not find a reason itself. */
@NullMarked
package sillbook.ui.screen.choosing;

import org.jspecify.annotations.NullMarked;
