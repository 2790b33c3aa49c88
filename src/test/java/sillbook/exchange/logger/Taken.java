// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.time.Instant;

/**
 * A reading as it is taken from a file.
 *
 * @param milli thousandths of a degree Celsius
 */
record Taken(Instant at, int milli, boolean isSuspicious) {}
