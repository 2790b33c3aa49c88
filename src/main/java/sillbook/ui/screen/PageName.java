// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The pages of the book, each on its digit. */
public enum PageName {
    TODAY('1', "Today"),
    POTS('2', "Pots"),
    PLACES('3', "Places"),
    BULBS('4', "Bulbs"),
    PLAN('5', "Plan"),
    SEASONS('6', "Seasons"),
    DIARY('7', "Diary");

    private final char digit;
    private final String words;

    PageName(char digit, String words) {
        this.digit = digit;
        this.words = words;
    }

    public static Optional<PageName> of(int digit) {
        return Arrays.stream(values()).filter(page -> page.digit == digit).findFirst();
    }

    public char digit() {
        return digit;
    }

    /** As the title row writes it. */
    public String words() {
        return words;
    }

    /** In the title row; the open page in capitals. */
    String title(boolean isOpen) {
        return isOpen ? words.toUpperCase(Locale.ROOT) : words;
    }
}
