// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import java.time.LocalDate;

/**
 * How warm a day was.
 *
 * @param weight how much of the day is known, above 0; days share a column by it
 */
public record WarmDay(LocalDate day, double weight, Warmth warmth) {
    public WarmDay {
        if (!(weight > 0)) {
            throw new IllegalArgumentException("nothing is known of " + day);
        }
    }
}
