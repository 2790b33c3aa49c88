// SPDX-License-Identifier: Apache-2.0
/**
 * The pages people read, held to the program: what they say to type is typed, what they say comes back is compared, what they link to is
 * there. It knows the commands and the screens from outside, as a reader does.
 */
@NullMarked
package sillbook.manual;

import org.jspecify.annotations.NullMarked;
