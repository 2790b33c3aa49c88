// SPDX-License-Identifier: Apache-2.0
/** What did well: plain counts of all winters, and the pots behind each. It must not count or compare anything itself. */
@NullMarked
package sillbook.ui.screen.seasons;

import org.jspecify.annotations.NullMarked;
