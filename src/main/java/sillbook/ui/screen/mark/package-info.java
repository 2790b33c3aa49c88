// SPDX-License-Identifier: Apache-2.0
/** Varieties marked for the coming season, on whatever page they stand. It must not know which page that is. */
@NullMarked
package sillbook.ui.screen.mark;

import org.jspecify.annotations.NullMarked;
