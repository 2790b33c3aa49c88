// SPDX-License-Identifier: Apache-2.0
/** What is done to pots wherever they are: slips for moving, putting off, jotting and removing. Must not know on which page they were asked for. */
@NullMarked
package sillbook.ui.screen.act;

import org.jspecify.annotations.NullMarked;
