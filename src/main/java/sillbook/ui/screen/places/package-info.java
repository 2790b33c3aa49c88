// SPDX-License-Identifier: Apache-2.0
/** The places, what stands at each, and a place's card. It must not work out where a pot stands or when a round is due. */
@NullMarked
package sillbook.ui.screen.places;

import org.jspecify.annotations.NullMarked;
