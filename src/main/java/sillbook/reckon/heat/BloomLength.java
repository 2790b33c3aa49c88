// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.heat;

/**
 * How long a bloom lasts: so many days at one temperature, and by a factor fewer for every ten degrees warmer. A rough rule: worked out from published storage of
 * daffodils (Agriculture 12:2114, 2022), respiration and vase life go together in other cut flowers (F. G. Celikel and M. S. Reid, HortScience 37, 2002).
 *
 * @param days it lasts at that temperature, above 0
 * @param celsius that temperature
 * @param factor above 0
 */
public record BloomLength(double days, double celsius, double factor) {
    /** The usual factor for ten degrees; what was worked out from trials lies between 2 and 3.2. */
    public static final double USUAL_FACTOR = 2.5;

    private static final double TEN_DEGREES = 10;

    public BloomLength {
        if (!(days > 0) || !(factor > 0)) {
            throw new IllegalArgumentException(days + " days, a factor of " + factor);
        }
    }

    /** Days it lasts at a temperature from its first to its last. */
    public double daysAt(double other) {
        return days * Math.pow(factor, (celsius - other) / TEN_DEGREES);
    }

    /** Days that are left at a temperature after some at another; none when it is over by then. */
    public double daysLeft(double after, double at, double other) {
        return Math.max(0, 1 - after / daysAt(at)) * daysAt(other);
    }
}
