// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.model.Band;
import sillbook.model.Length;
import sillbook.model.Purchase.Money;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.model.Temperature;

/** Lengths, temperatures, weeks and money: read in every unit, said in the grower's. */
class QuantitiesTest {
    /** An inch is 25.4 mm exactly (international yard, 1959). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "19 | 1900 | 19 cm | 7.5 in",
                "19 cm | 1900 | 19 cm | 7.5 in",
                "7.5in | 1905 | 19 cm | 7.5 in",
                "7 1/2 in | 1905 | 19 cm | 7.5 in",
                "3/4\" | 191 | 1.9 cm | 0.8 in",
                "6 inches | 1524 | 15 cm | 6 in",
                "7,5 cm | 750 | 7.5 cm | 3 in",
                "60 mm | 600 | 6 cm | 2.4 in",
                "1.2 m | 12000 | 120 cm | 47.2 in",
            })
    void aLengthIsReadInEitherUnitAndSaidInTheGrowers(String written, int tenths, String cm, String inches) {
        assertThat(Lengths.parse(written)).isEqualTo(Heard.as(new Length(tenths, written)));
        assertThat(Lengths.say(new Length(tenths, written), LengthUnit.CENTIMETRES))
                .isEqualTo(cm);
        assertThat(Lengths.say(new Length(tenths, written), LengthUnit.INCHES)).isEqualTo(inches);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "tall", "19 kg", "1/0 in", "-3 cm", "99999999 m", "5 6 cm", "999999 m"})
    void whatIsNoLengthIsRefused(String written) {
        assertThat(Lengths.parse(written).complaint())
                .get()
                .extracting(Complaint::sentence)
                .isEqualTo("'" + written + "' is no length. Write it as 19, 19 cm or 7.5in.");
    }

    @Test
    void onlyAUnitMakesALengthSure() {
        assertThat(Lengths.isSure("19 cm")).isTrue();
        assertThat(Lengths.isSure("7.5in")).isTrue();
        assertThat(Lengths.isSure("19")).isFalse();
        assertThat(Lengths.isSure("in")).isFalse();
    }

    /** Fahrenheit's scale: 32 F is 0 C, 212 F is 100 C. */
    @ParameterizedTest
    @CsvSource({
        "41F,    5000,  5 C,    41 F",
        "5 C,    5000,  5 C,    41 F",
        "5,      5000,  5 C,    41 F",
        "-2,    -2000, -2 C,    28.4 F",
        "9.6 °C, 9600,  9.6 C,  49.3 F",
        "32 degrees F, 0, 0 C,  32 F",
        "-40f, -40000, -40 C,   -40 F",
    })
    void aTemperatureIsReadInEitherUnitAndSaidInTheGrowers(String written, int milli, String c, String f) {
        assertThat(Temperatures.parse(written)).isEqualTo(Heard.as(new Temperature(milli, written)));
        assertThat(Temperatures.say(new Temperature(milli, written), TemperatureUnit.CELSIUS))
                .isEqualTo(c);
        assertThat(Temperatures.say(new Temperature(milli, written), TemperatureUnit.FAHRENHEIT))
                .isEqualTo(f);
    }

    @ParameterizedTest
    @CsvSource({
        "10 to 15 C,  10000, 15000, 10-15 C,   10 to 15 C",
        "2-9,          2000,  9000, 2-9 C,     2 to 9 C",
        "36 to 48F,    2222,  8889, 2.2-8.9 C, 2.2 to 8.9 C",
        "-2 to 4 C,   -2000,  4000, -2 to 4 C, -2 to 4 C",
        "-5 - -1 C,   -5000, -1000, -5 to -1 C, -5 to -1 C",
        "3 C to 8 C,   3000,  8000, 3-8 C,     3 to 8 C",
    })
    void aBandHasOneUnitForBothItsEnds(String written, int low, int high, String said, String sentence) {
        Band band = Temperatures.parseBand(written).value().orElseThrow();

        assertThat(band.low().milli()).isEqualTo(low);
        assertThat(band.high()).isEqualTo(new Temperature(high, written));
        assertThat(Temperatures.say(band, TemperatureUnit.CELSIUS)).isEqualTo(said);
        assertThat(Temperatures.fromTo(band, TemperatureUnit.CELSIUS)).isEqualTo(sentence);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "9 to 2 C | '9 to 2 C' ends lower than it begins. Write the lower temperature first.",
                "0 to 500 C | 500 is not the temperature of a place. Write one from -60 to 80 C.",
                "minus 3 to 4 C | Write 'minus 3 to 4 C' as -3 to 4 C.",
                "cold | 'cold' is no band of temperatures. Write it as 2 to 9 C or 36 to 48F.",
            })
    void aBandThatCannotBeIsRefused(String written, String sentence) {
        assertThat(Temperatures.parseBand(written).complaint())
                .get()
                .extracting(Complaint::sentence)
                .isEqualTo(sentence);
    }

    @Test
    void onlyAUnitMakesATemperatureSure() {
        assertThat(Temperatures.isSure("5 C")).isTrue();
        assertThat(Temperatures.isSure("10 to 15 C")).isTrue();
        assertThat(Temperatures.isSure("5")).isFalse();
        assertThat(Temperatures.isSure("2-9")).isFalse();
        assertThat(Temperatures.parse("warm").complaint()).isPresent();
    }

    @ParameterizedTest
    @CsvSource({
        "12,             12,   12 weeks",
        "2wk,            2,    2 weeks",
        "1 week,         1,    1 week",
        "11.5,           11.5, 11 and a half weeks",
        "11 and a half,  11.5, 11 and a half weeks",
        "half a week,    0.5,  half a week",
        "14 days,        2,    2 weeks",
        "15.1,           15.1, 15 weeks",
        "0,              0,    0 weeks",
    })
    void weeksAreSaidToTheNearestHalf(String written, double weeks, String said) {
        assertThat(Weeks.parse(written)).isEqualTo(Heard.as(weeks));
        assertThat(Weeks.say(weeks)).isEqualTo(said);
    }

    @Test
    void aFigureInWeeksHasOneValueOrThree() {
        assertThat(Weeks.range(12, 15, 17)).isEqualTo("12, 15, 17 wk");
        assertThat(Weeks.range(14.5, 14.5, 14.5)).isEqualTo("14.5 wk");
        assertThat(Weeks.parse("a while").complaint()).isPresent();
        assertThat(Weeks.parse("5000").complaint()).isPresent();
    }

    /** ISO 4217 gives the yen no smaller unit and the Kuwaiti dinar three decimals. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "9.50 | 950 | '' | 9.50",
                "9,5 | 950 | '' | 9.50",
                "9 | 900 | '' | 9.00",
                "EUR 9.50 | 950 | EUR | EUR 9.50",
                "9.50 gbp | 950 | GBP | GBP 9.50",
                "£9.50 | 950 | GBP | GBP 9.50",
                "€ 9.50 | 950 | EUR | EUR 9.50",
                "JPY 950 | 950 | JPY | JPY 950",
                "KWD 1.234 | 1234 | KWD | KWD 1.234",
            })
    void aPriceIsReadWithOrWithoutItsCurrency(String written, long minor, String currency, String said) {
        assertThat(Prices.parse(written)).isEqualTo(Heard.as(new Money(minor, currency)));
        assertThat(Prices.say(new Money(minor, currency))).isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "$9.50 | $ stands for more than one currency. Write its code, as USD 9.50.",
                "9.505 | '9.505' has more decimals than the coin. Write it as 9.50.",
                "JPY 9.5 | '9.5' has more decimals than the coin. Write it as 9.50.",
                "QQQ 9 | 'qqq' is no currency. Write its code of three letters, as EUR, or none.",
                "cheap | 'cheap' is no price. Write it as 9.50 or EUR 9.50.",
            })
    void aPriceThatCannotBeIsRefused(String written, String sentence) {
        assertThat(Prices.parse(written).complaint())
                .get()
                .extracting(Complaint::sentence)
                .isEqualTo(sentence);
    }

    @Test
    void countsAndRows() {
        assertThat(Counts.of(1, "pot")).isEqualTo("1 pot");
        assertThat(Counts.of(20, "pot")).isEqualTo("20 pots");
        assertThat(Counts.grouped(2544)).isEqualTo("2 544");
        assertThat(Counts.grouped(1_030_000)).isEqualTo("1 030 000");
        assertThat(Counts.grouped(672)).isEqualTo("672");
        assertThat(Counts.and(java.util.List.of("a", "b", "c"))).isEqualTo("a, b and c");
        assertThat(Counts.or(java.util.List.of("a", "b"))).isEqualTo("a or b");
        assertThat(Counts.and(java.util.List.of())).isEmpty();
    }
}
