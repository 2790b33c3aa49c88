// SPDX-License-Identifier: Apache-2.0
/** The page of all pots and batches of a season under the ruler. It must not work out where a pot stands. */
@NullMarked
package sillbook.ui.screen.pots;

import org.jspecify.annotations.NullMarked;
