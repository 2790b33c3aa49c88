// SPDX-License-Identifier: Apache-2.0
/** x */
@NullMarked
package sillbook.reckon.cover;

import org.jspecify.annotations.NullMarked;
