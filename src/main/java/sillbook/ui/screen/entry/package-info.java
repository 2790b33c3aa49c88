// SPDX-License-Identifier: Apache-2.0
/**
 * The forms in which entries are written down and corrected. What a form's answers mean is left to the quick line: each
 * form says only how its blanks stand in one. It must not know storage, nor the pages that open the forms.
 */
@NullMarked
package sillbook.ui.screen.entry;

import org.jspecify.annotations.NullMarked;
