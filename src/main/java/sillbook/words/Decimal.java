// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers with a fraction, written with a point or a comma, said with a point. */
final class Decimal {
    /** A number as a pattern: {@code 7}, {@code 7.5}, {@code 7,5}, {@code .5}. */
    static final String PATTERN = "\\d{1,6}(?:[.,]\\d{1,4})?|[.,]\\d{1,4}";

    private Decimal() {}

    static BigDecimal parse(String digits) {
        return new BigDecimal(digits.replace(',', '.'));
    }

    /** Rounded half away from zero to so many places; without noughts at the end, and never {@code -0}. */
    static String say(double value, int places) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** Rounded to so many places, which are all written: {@code 4.0}. */
    static String sayFixed(double value, int places) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
        return rounded.toPlainString();
    }
}
