// SPDX-License-Identifier: Apache-2.0
/** One pot as every page shows it: its line under the ruler, its two lines in the foot. It must not know any page. */
@NullMarked
package sillbook.ui.screen.pot;

import org.jspecify.annotations.NullMarked;
