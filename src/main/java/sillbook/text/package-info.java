// SPDX-License-Identifier: Apache-2.0
/**
 * Text as a terminal takes it: how wide it is, what must never be sent, how it is cut to columns, and how it is compared
 * without accents or case. Must not know the journal, the screens or any terminal.
 */
@NullMarked
package sillbook.text;

import org.jspecify.annotations.NullMarked;
