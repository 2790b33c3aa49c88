// SPDX-License-Identifier: Apache-2.0
/** The book put together: which pages there are, and the keys that mean the same everywhere. Must not know how any page draws itself. */
@NullMarked
package sillbook.ui.screen.contents;

import org.jspecify.annotations.NullMarked;
