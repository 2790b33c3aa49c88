// SPDX-License-Identifier: Apache-2.0
/** Paper forms: blanks with what is typed in them, suggestions, what is understood beside each. Must not know what any form is for. */
@NullMarked
package sillbook.ui.screen.form;

import org.jspecify.annotations.NullMarked;
