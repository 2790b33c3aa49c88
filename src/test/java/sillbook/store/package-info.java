// SPDX-License-Identifier: Apache-2.0
/** What every storage must do, held over files and over the double in memory alike; and entries made up from a seed. */
@NullMarked
package sillbook.store;

import org.jspecify.annotations.NullMarked;
