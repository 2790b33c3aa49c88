// SPDX-License-Identifier: Apache-2.0
package sillbook.app.demo;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;

/**
 * A file of quick lines in the order of time, each after the day it was written on: {@code 2026-10-14 T4 roots, 6 cm}.
 * A line that begins with {@code #}, and an empty one, says nothing.
 *
 * @param name the file's, to say where something is wrong
 */
record DatedLines(String name, List<Dated> lines) {
    private static final int DAY_LENGTH = 10;

    DatedLines {
        lines = List.copyOf(lines);
    }

    /**
     * One line.
     *
     * @param number counted from 1
     */
    record Dated(int number, LocalDate day, String text) {}

    /**
     * Reads a file's text.
     *
     * @throws IllegalArgumentException when a line has no day, or one earlier than the line before it
     */
    static DatedLines parse(String name, String text) {
        List<Dated> lines = new ArrayList<>();
        LocalDate last = LocalDate.MIN;
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            LocalDate day = day(line, last, name + ", line " + number);
            lines.add(new Dated(number, day, line.substring(DAY_LENGTH).strip()));
            last = day;
        }
        return new DatedLines(name, lines);
    }

    private static LocalDate day(String line, LocalDate last, String where) {
        try {
            LocalDate day = LocalDate.parse(line.substring(0, Math.min(DAY_LENGTH, line.length())));
            if (day.isBefore(last)) {
                throw new IllegalArgumentException(where + ": " + day + " comes after " + last);
            }
            return day;
        } catch (DateTimeParseException noDay) {
            throw new IllegalArgumentException(where + " does not begin with a day, as 2026-10-14", noDay);
        }
    }
}
