// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Pattern;
import sillbook.model.Length;
import sillbook.model.Settings.LengthUnit;
import sillbook.text.Fold;

/** Lengths in centimetres or inches. A number without a unit is centimetres. */
public final class Lengths {
    private static final double TENTHS_PER_INCH = 254;
    private static final BigDecimal LONGEST = BigDecimal.valueOf(1_000_000);
    private static final Pattern FORM = Pattern.compile(
            "(?:(\\d{1,3}) )?(?:(\\d{1,2})/(\\d{1,2})|(" + Decimal.PATTERN + ")) ?(cm|mm|m|inch(?:es)?|in|\"|'')?");

    private Lengths() {}

    /** {@code 19 cm}, {@code 7.5in}, {@code 7 1/2 in}, {@code 60 mm}; kept with what was written. */
    public static Heard<Length> parse(String text) {
        String said = Fold.of(text).strip();
        return Groups.of(FORM, said)
                .flatMap(Lengths::tenths)
                .filter(tenths -> tenths.compareTo(LONGEST) <= 0)
                .map(tenths -> Heard.as(new Length(tenths.intValueExact(), text.strip())))
                .orElseGet(() -> Heard.not(
                        "a length, as 19 cm or 7.5in",
                        "'" + text.strip() + "' is no length. Write it as 19, 19 cm or 7.5in."));
    }

    /** Whether the text has a unit of length in it, so that it can be nothing else. */
    public static boolean isSure(String text) {
        return Groups.of(FORM, Fold.of(text).strip())
                .filter(said -> said.has(5))
                .flatMap(Lengths::tenths)
                .isPresent();
    }

    private static Optional<BigDecimal> tenths(Groups said) {
        BigDecimal whole = said.has(1) ? Decimal.parse(said.text(1)) : BigDecimal.ZERO;
        if (said.has(4)) {
            return said.has(1) ? Optional.empty() : Optional.of(inTenths(Decimal.parse(said.text(4)), said.text(5)));
        }
        BigDecimal parts = Decimal.parse(said.text(3));
        if (parts.signum() == 0) {
            return Optional.empty();
        }
        BigDecimal fraction = Decimal.parse(said.text(2)).divide(parts, 6, RoundingMode.HALF_UP);
        return Optional.of(inTenths(whole.add(fraction), said.text(5)));
    }

    private static BigDecimal inTenths(BigDecimal number, String unit) {
        return number.multiply(BigDecimal.valueOf(
                        switch (unit) {
                            case "mm" -> 10;
                            case "m" -> 10_000;
                            case "", "cm" -> 100;
                            default -> TENTHS_PER_INCH;
                        }))
                .setScale(0, RoundingMode.HALF_UP);
    }

    /** In the grower's unit, {@code 19 cm} or {@code 7.5 in}: whole centimetres from ten up, tenths below. */
    public static String say(Length length, LengthUnit unit) {
        return number(length, unit) + " " + unit(unit);
    }

    /** The figure alone, for a column whose heading has the unit. */
    public static String number(Length length, LengthUnit unit) {
        if (unit == LengthUnit.INCHES) {
            return Decimal.say(length.tenths() / TENTHS_PER_INCH, 1);
        }
        return Decimal.say(length.centimetres(), length.tenths() < 1000 ? 1 : 0);
    }

    /** {@code cm} or {@code in}. */
    public static String unit(LengthUnit unit) {
        return unit == LengthUnit.INCHES ? "in" : "cm";
    }
}
