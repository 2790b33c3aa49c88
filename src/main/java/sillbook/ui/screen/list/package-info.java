// SPDX-License-Identifier: Apache-2.0
/** Lists with a cursor: rows, headings between them, rows that stay in sight at the end. Must not know what the rows are about. */
@NullMarked
package sillbook.ui.screen.list;

import org.jspecify.annotations.NullMarked;
