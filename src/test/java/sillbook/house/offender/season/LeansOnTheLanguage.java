// SPDX-License-Identifier: Apache-2.0
package sillbook.house.offender.season;

import java.text.DecimalFormat;
import java.text.NumberFormat;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.Formatter;
import java.util.Locale;

@SuppressWarnings("StringCaseLocaleUsage") // this class is here to be found out
final class LeansOnTheLanguage {
    private LeansOnTheLanguage() {}

    static String cases(String word) {
        return word.toLowerCase() + word.toUpperCase();
    }

    static String weeks(double weeks) {
        return String.format("%.1f", weeks) + "%.1f".formatted(weeks) + new Formatter().format("%.1f", weeks);
    }

    static String decimals(double weeks) {
        return NumberFormat.getInstance().format(weeks) + new DecimalFormat("0.0").format(weeks);
    }

    static String formatters() {
        return DateTimeFormatter.ofPattern("d MMM") + "" + new DateTimeFormatterBuilder().toFormatter();
    }

    static Locale home() {
        return Locale.getDefault();
    }
}
