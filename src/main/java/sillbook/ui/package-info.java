// SPDX-License-Identifier: Apache-2.0
/** The full screen, in three layers: what is drawn, what each screen says, and the terminal it is shown on. */
@NullMarked
package sillbook.ui;

import org.jspecify.annotations.NullMarked;
