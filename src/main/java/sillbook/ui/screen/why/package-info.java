// SPDX-License-Identifier: Apache-2.0
/** Why a figure is what it is, laid over whatever page it stands on. It must not reckon anything itself. */
@NullMarked
package sillbook.ui.screen.why;

import org.jspecify.annotations.NullMarked;
