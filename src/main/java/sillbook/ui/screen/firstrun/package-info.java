// SPDX-License-Identifier: Apache-2.0
/** What stands on the screen before a journal is open. Must not know where journals are kept. */
@NullMarked
package sillbook.ui.screen.firstrun;

import org.jspecify.annotations.NullMarked;
