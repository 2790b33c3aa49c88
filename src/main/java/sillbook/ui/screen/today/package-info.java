// SPDX-License-Identifier: Apache-2.0
/** The page of today: what is late, ready, due, to be checked and to come. Must not know how any of it was found. */
@NullMarked
package sillbook.ui.screen.today;

import org.jspecify.annotations.NullMarked;
