// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

/**
 * A temperature.
 *
 * @param milli thousandths of a degree Celsius
 * @param written as the grower wrote it ({@code 41F}); empty when it was worked out
 */
public record Temperature(int milli, String written) {
    private static final int ABSOLUTE_ZERO = -273_150;

    public Temperature {
        if (milli < ABSOLUTE_ZERO) {
            throw new IllegalArgumentException("colder than can be: " + milli + " thousandths of a degree C");
        }
    }

    /** Rounded to the thousandth of a degree. */
    public static Temperature ofCelsius(double celsius) {
        if (!Double.isFinite(celsius)) {
            throw new IllegalArgumentException("no temperature: " + celsius);
        }
        return new Temperature(Math.toIntExact(Math.round(celsius * 1000)), "");
    }

    public double celsius() {
        return milli / 1000.0;
    }
}
