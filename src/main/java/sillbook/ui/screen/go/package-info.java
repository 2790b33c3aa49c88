// SPDX-License-Identifier: Apache-2.0
/** The slip that goes to anything by its name, from any page. It must not know how a page or a card draws what it goes to. */
@NullMarked
package sillbook.ui.screen.go;

import org.jspecify.annotations.NullMarked;
