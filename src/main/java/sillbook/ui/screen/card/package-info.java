// SPDX-License-Identifier: Apache-2.0
/** The card of one pot: what is ahead, its cold, its history, its care. */
@NullMarked
package sillbook.ui.screen.card;

import org.jspecify.annotations.NullMarked;
