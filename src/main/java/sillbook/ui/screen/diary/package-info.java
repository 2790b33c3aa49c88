// SPDX-License-Identifier: Apache-2.0
/** The page of everything written, and finding in it. It must not word an entry or read a search itself. */
@NullMarked
package sillbook.ui.screen.diary;

import org.jspecify.annotations.NullMarked;
