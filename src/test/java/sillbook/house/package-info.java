// SPDX-License-Identifier: Apache-2.0
/**
 * The rules of the house, held over every class and file: who may import whom, how long things may grow, which names and calls
 * are not used here. {@code offender} holds one class for each way to break them, so that a rule that no longer bites is found
 * out.
 */
@NullMarked
package sillbook.house;

import org.jspecify.annotations.NullMarked;
