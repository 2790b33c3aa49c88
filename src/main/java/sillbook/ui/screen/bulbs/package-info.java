// SPDX-License-Identifier: Apache-2.0
/** The varieties with their records, purchases, and a variety's card. It must not work out a record or look a figure up itself. */
@NullMarked
package sillbook.ui.screen.bulbs;

import org.jspecify.annotations.NullMarked;
