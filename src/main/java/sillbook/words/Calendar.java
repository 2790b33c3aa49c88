// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.DayOfWeek;
import java.time.Month;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The English names of months and days of the week; not from the machine's language. */
final class Calendar {
    private static final int SHORTEST = 3;

    private Calendar() {}

    /** {@code January}. */
    static String name(Month month) {
        return capital(month);
    }

    /** {@code Jan}. */
    static String shortName(Month month) {
        return capital(month).substring(0, SHORTEST);
    }

    /** {@code jan}, as it is typed. */
    static String typed(Month month) {
        return shortName(month).toLowerCase(Locale.ROOT);
    }

    /** {@code Monday}. */
    static String name(DayOfWeek day) {
        return capital(day);
    }

    /** {@code Mon}. */
    static String shortName(DayOfWeek day) {
        return capital(day).substring(0, SHORTEST);
    }

    /** By its first three letters or more, in small letters. */
    static Optional<Month> month(String word) {
        return beginning(Month.values(), word);
    }

    /** By its first three letters or more, in small letters. */
    static Optional<DayOfWeek> dayOfWeek(String word) {
        return beginning(DayOfWeek.values(), word);
    }

    private static <E extends Enum<E>> Optional<E> beginning(E[] all, String word) {
        if (word.length() < SHORTEST) {
            return Optional.empty();
        }
        return Arrays.stream(all)
                .filter(one -> one.name().toLowerCase(Locale.ROOT).startsWith(word))
                .findFirst();
    }

    private static String capital(Enum<?> one) {
        return one.name().charAt(0) + one.name().substring(1).toLowerCase(Locale.ROOT);
    }
}
