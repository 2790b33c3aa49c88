// SPDX-License-Identifier: Apache-2.0
/** Taking back and putting back. Must not know what the steps did. */
@NullMarked
package sillbook.ui.screen.steps;

import org.jspecify.annotations.NullMarked;
