// SPDX-License-Identifier: Apache-2.0
/** The pots of all winters behind a line that counts or sums them up, on whatever page it stands. It must not count them itself. */
@NullMarked
package sillbook.ui.screen.grown;

import org.jspecify.annotations.NullMarked;
