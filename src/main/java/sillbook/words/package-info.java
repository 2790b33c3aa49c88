// SPDX-License-Identifier: Apache-2.0
/**
 * What the book says and what it understands: days, lengths, temperatures, names, jobs, warnings, whys, and the quick
 * line. Each thing is said once here, for screens, commands and printed sheet alike, and what is said is read back.
 *
 * <p>English only, no locale: units and the season's start come from the journal's settings. Everything is pure; today's
 * day is handed in. It must not know how text is drawn, nor where the journal is kept.
 */
@NullMarked
package sillbook.words;

import org.jspecify.annotations.NullMarked;
