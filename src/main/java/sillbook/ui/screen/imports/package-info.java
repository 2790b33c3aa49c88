// SPDX-License-Identifier: Apache-2.0
/** Importing a list of bulbs: which file, what its rows come to, then all of it as one step. Must not know how a file is read. */
@NullMarked
package sillbook.ui.screen.imports;

import org.jspecify.annotations.NullMarked;
