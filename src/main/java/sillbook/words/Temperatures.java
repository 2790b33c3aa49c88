// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import sillbook.model.Band;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.model.Temperature;
import sillbook.text.Fold;

/** Temperatures in degrees Celsius or Fahrenheit. A number without a unit is Celsius. */
public final class Temperatures {
    /** Nothing a pot or a thermometer could meet lies outside. */
    private static final double COLDEST = -60;

    private static final double HOTTEST = 80;
    private static final String NUMBER = "([+-]?(?:" + Decimal.PATTERN + "))";
    private static final String UNIT = " ?(?:°|deg(?:rees)?\\.?)? ?(c|celsius|f|fahrenheit)?";
    private static final Pattern FORM = Pattern.compile(NUMBER + UNIT);
    private static final Pattern BAND = Pattern.compile(NUMBER + UNIT + "(?: to | ?- ?| and |\\.\\.)" + NUMBER + UNIT);

    private static final Pattern MINUS = Pattern.compile("\\bminus (?=[\\d.])", Pattern.CASE_INSENSITIVE);

    private Temperatures() {}

    /** {@code 41F}, {@code 5 C}, {@code -2}; kept with what was written. */
    public static Heard<Temperature> parse(String text) {
        return tryParse(text)
                .orElseGet(() -> Heard.not(
                        "a temperature, as 5 C or 41F",
                        "'" + text.strip() + "' is no temperature. Write it as 5, 5 C or 41F."));
    }

    /** {@code 10 to 15 C}, {@code 2-9 C}, {@code 41 to 48F}: one unit, at the end, holds for both. */
    public static Heard<Band> parseBand(String text) {
        return tryParseBand(text)
                .orElseGet(() -> Heard.not(
                        "two temperatures, as 2 to 9 C",
                        "'" + text.strip() + "' is no band of temperatures. Write it as 2 to 9 C or 36 to 48F."));
    }

    /** The same; empty where it is not written as one. */
    public static Optional<Heard<Temperature>> tryParse(String text) {
        return tryParse(FORM, text, said -> of(said.text(1), said.text(2), text.strip()));
    }

    /** The same of two. */
    public static Optional<Heard<Band>> tryParseBand(String text) {
        return tryParse(BAND, text, said -> band(said, text.strip()));
    }

    /** What would be one with a sign for the word is told how to write it. */
    private static <T> Optional<Heard<T>> tryParse(Pattern form, String text, Function<Groups, Heard<T>> meaning) {
        String said = Fold.of(text).strip();
        String signed = MINUS.matcher(text.strip()).replaceAll("-");
        Optional<Heard<T>> parsed = Groups.of(form, said).map(meaning);
        return parsed.or(() -> Groups.of(form, Fold.of(signed))
                .map(of -> Heard.not("as -3", "Write '" + text.strip() + "' as " + signed + ".")));
    }

    /** Whether the text is a band or a temperature with its unit, so that it can be nothing else. */
    public static boolean isSure(String text) {
        String said = Fold.of(text).strip();
        return Groups.of(FORM, said).filter(one -> one.has(2)).isPresent()
                || Groups.of(BAND, said).filter(two -> two.has(4)).isPresent();
    }

    private static Heard<Band> band(Groups said, String written) {
        String unit = said.has(4) ? said.text(4) : said.text(2);
        Heard<Temperature> low = of(said.text(1), said.has(2) ? said.text(2) : unit, "");
        Heard<Temperature> high = of(said.text(3), unit, written);
        return low.then(from -> high.then(to -> from.milli() <= to.milli()
                ? Heard.as(new Band(from, to))
                : Heard.not(
                        "the lower first",
                        "'" + written + "' ends lower than it begins. Write the lower temperature first.")));
    }

    private static Heard<Temperature> of(String number, String unit, String written) {
        double value = Decimal.parse(number).doubleValue();
        double celsius = unit.startsWith("f") ? (value - 32) / 1.8 : value;
        if (celsius < COLDEST || celsius > HOTTEST) {
            return Heard.not("-60 to 80 C", number + " is not the temperature of a place. Write one from -60 to 80 C.");
        }
        return Heard.as(new Temperature(Temperature.ofCelsius(celsius).milli(), written));
    }

    /** In the grower's unit: {@code 9.6 C}, {@code 41 F}. */
    public static String say(Temperature temperature, TemperatureUnit unit) {
        return number(temperature, unit) + " " + unit(unit);
    }

    /** {@code 2-9 C}; {@code -2 to 4 C} where a minus sign would be taken for the dash. */
    public static String say(Band band, TemperatureUnit unit) {
        return numbers(band, unit) + " " + unit(unit);
    }

    /** {@code 2 to 9 C}, in a sentence; {@code 14 C} where both ends read the same. */
    public static String fromTo(Band band, TemperatureUnit unit) {
        String low = number(band.low(), unit);
        String high = number(band.high(), unit);
        return (low.equals(high) ? low : low + " to " + high) + " " + unit(unit);
    }

    /** A band's figures alone, for a column whose heading has the unit. */
    public static String numbers(Band band, TemperatureUnit unit) {
        String low = number(band.low(), unit);
        String high = number(band.high(), unit);
        return low + (low.startsWith("-") || high.startsWith("-") ? " to " : "-") + high;
    }

    /** The figure alone, to the tenth of a degree. */
    public static String number(Temperature temperature, TemperatureUnit unit) {
        return number(temperature.celsius(), unit);
    }

    /** The same of what a broken thermometer says, which can be colder than can be. */
    public static String number(double celsius, TemperatureUnit unit) {
        return Decimal.say(degrees(celsius, unit), 1);
    }

    /** Degrees of whichever unit, to the tenth. */
    public static String figure(double degrees) {
        return Decimal.say(degrees, 1);
    }

    /** Degrees Celsius as degrees of the grower's unit. */
    public static double degrees(double celsius, TemperatureUnit unit) {
        return unit == TemperatureUnit.FAHRENHEIT ? celsius * 1.8 + 32 : celsius;
    }

    /** A difference of so many thousandths of a degree Celsius, in the grower's unit: {@code -0.6 C}, {@code +1.1 F}. */
    public static String difference(int milli, TemperatureUnit unit) {
        double shown = milli / 1000.0 * (unit == TemperatureUnit.FAHRENHEIT ? 1.8 : 1);
        return (milli > 0 ? "+" : "") + Decimal.say(shown, 1) + " " + unit(unit);
    }

    /** The figure to a tenth that is always written, for a column. */
    public static String tenths(Temperature temperature, TemperatureUnit unit) {
        return Decimal.sayFixed(degrees(temperature.celsius(), unit), 1);
    }

    /** {@code C} or {@code F}. */
    public static String unit(TemperatureUnit unit) {
        return unit == TemperatureUnit.FAHRENHEIT ? "F" : "C";
    }
}
