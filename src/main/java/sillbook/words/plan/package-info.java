// SPDX-License-Identifier: Apache-2.0
/** Plans of a season as they are said: pots, wishes, what a plan cannot do and what would cure it, the search, what is to be had. */
@NullMarked
package sillbook.words.plan;

import org.jspecify.annotations.NullMarked;
