// SPDX-License-Identifier: Apache-2.0
/** The keys, live and searchable. Must not know what any action does. */
@NullMarked
package sillbook.ui.screen.help;

import org.jspecify.annotations.NullMarked;
