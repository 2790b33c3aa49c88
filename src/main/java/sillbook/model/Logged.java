// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.Instant;

/**
 * A temperature at an instant, as its thermometer gave it.
 *
 * @param milli thousandths of a degree Celsius
 * @param isSuspicious whether it can hardly be true; it is kept and shown, and left out of every sum
 */
public record Logged(Instant at, int milli, boolean isSuspicious) {}
