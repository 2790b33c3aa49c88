// SPDX-License-Identifier: Apache-2.0
/** The page on which the pots of a place, or some pots, are looked at one by one. It must not know what follows from a check. */
@NullMarked
package sillbook.ui.screen.round;

import org.jspecify.annotations.NullMarked;
