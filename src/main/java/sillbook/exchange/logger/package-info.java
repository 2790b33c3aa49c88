// SPDX-License-Identifier: Apache-2.0
/**
 * The files of thermometers: what one was written as is found by a look at it, and its readings then come one after the other, straight from
 * its bytes. Must not know how readings are kept, nor a clock of its own: in which zone a silent file is read is told from outside.
 */
@NullMarked
package sillbook.exchange.logger;

import org.jspecify.annotations.NullMarked;
