// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import sillbook.handbook.FigureName;
import sillbook.handbook.Unit;
import sillbook.model.Length;
import sillbook.model.OwnFigure.Range;
import sillbook.model.Settings;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.model.Temperature;

/** Values of figures, each in the unit of its figure: read with other units accepted, said in the grower's. */
public final class FigureValues {
    private static final double MOST = 10_000;

    private FigureValues() {}

    /** One value for all three, or low, typical and high; or low and high with the middle between them. */
    public static Heard<Range> parse(FigureName figure, List<String> values) {
        List<Double> numbers = new ArrayList<>();
        for (String value : values) {
            Heard<Double> number = parse(figure.unit(), value);
            if (number.complaint().isPresent()) {
                return number.map(Range::of);
            }
            number.value().ifPresent(numbers::add);
        }
        return switch (numbers.size()) {
            case 1 -> Heard.as(Range.of(numbers.get(0)));
            case 2 -> range(numbers.get(0), (numbers.get(0) + numbers.get(1)) / 2, numbers.get(1));
            case 3 -> range(numbers.get(0), numbers.get(1), numbers.get(2));
            default ->
                Heard.not("one value, or three", "A figure has one value, or three: the least, the usual, the most.");
        };
    }

    private static Heard<Range> range(double low, double typical, double high) {
        return low <= typical && typical <= high
                ? Heard.as(new Range(low, typical, high))
                : Heard.not(
                        "not in order",
                        "The values are not in order. Write the least first, then the usual, then the most.");
    }

    private static Heard<Double> parse(Unit unit, String value) {
        return switch (unit) {
            case WEEKS -> Weeks.parse(value);
            case DAYS -> days(value);
            case CELSIUS -> Temperatures.parse(value).map(Temperature::celsius);
            case CENTIMETRES -> Lengths.parse(value).map(Length::centimetres);
            case BULBS, SHARE -> plain(value);
        };
    }

    private static Heard<Double> days(String value) {
        boolean bare = value.strip().matches("[\\d.,]+");
        return Weeks.parse(bare ? value.strip() + " days" : value).map(weeks -> weeks * 7);
    }

    private static Heard<Double> plain(String value) {
        boolean number = value.strip().matches(Decimal.PATTERN);
        double parsed = number ? Decimal.parse(value.strip()).doubleValue() : MOST + 1;
        return parsed <= MOST
                ? Heard.as(parsed)
                : Heard.not("a number", "'" + value.strip() + "' is no number. Write it as 5 or 0.5.");
    }

    /** {@code days in bloom 7, 10, 14 days}. */
    public static String named(FigureName figure, Range range, Settings settings) {
        return Terms.FIGURES.say(figure) + " " + say(figure, range, settings);
    }

    /** {@code 12, 15, 17 wk}; one value where all three are the same. */
    public static String say(FigureName figure, Range range, Settings settings) {
        Function<Double, String> number = value -> number(figure.unit(), value, settings);
        String typical = number.apply(range.typical());
        String values = range.low() == range.high()
                ? typical
                : number.apply(range.low()) + ", " + typical + ", " + number.apply(range.high());
        String unit = unit(figure.unit(), settings);
        return unit.isEmpty() ? values : values + " " + unit;
    }

    private static String number(Unit unit, double value, Settings settings) {
        return switch (unit) {
            case CELSIUS -> Temperatures.number(Temperature.ofCelsius(value), settings.temperatures());
            case CENTIMETRES -> Lengths.number(Length.ofCentimetres(value), settings.lengths());
            case SHARE -> Decimal.say(value, 2);
            case WEEKS, DAYS, BULBS -> Decimal.say(value, 1);
        };
    }

    private static String unit(Unit unit, Settings settings) {
        return switch (unit) {
            case WEEKS -> "wk";
            case DAYS -> "days";
            case CELSIUS -> settings.temperatures() == TemperatureUnit.FAHRENHEIT ? "F" : "C";
            case CENTIMETRES -> settings.lengths() == LengthUnit.INCHES ? "in" : "cm";
            case BULBS -> "bulbs";
            case SHARE -> "";
        };
    }
}
