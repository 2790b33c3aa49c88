// SPDX-License-Identifier: Apache-2.0
/** Winters told in a few lines, and what must be true of them on a day. {@link sillbook.season.Winter} tells them. */
@NullMarked
package sillbook.season;

import org.jspecify.annotations.NullMarked;
