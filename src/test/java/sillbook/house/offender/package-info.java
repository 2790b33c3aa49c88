// SPDX-License-Identifier: Apache-2.0
/** One class for each way to break the rules of the house, in packages named as the real ones are. */
@NullMarked
package sillbook.house.offender;

import org.jspecify.annotations.NullMarked;
