// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;

/**
 * Writes a series of readings as a thermometer would that has some of the habits files are known for.
 *
 * @param home the zone of a clock of which the file says nothing
 */
record SeriesWriter(Set<Habit> habits, ZoneId home, Random random) {
    private static final int PRECISION = 2;

    /** What files are known for. Those of one group exclude each other. */
    enum Habit {
        MARK(Group.CODE),
        LATIN(Group.CODE),
        UTF_16(Group.CODE),
        TITLE(Group.BEFORE),
        PREAMBLE(Group.BEFORE),
        BARE(Group.BEFORE),
        FAHRENHEIT(Group.UNIT),
        UNIT_IN_ROWS(Group.UNIT),
        SEMICOLONS(Group.SEPARATOR),
        TABS(Group.SEPARATOR),
        CUT_BY_COMMAS(Group.SEPARATOR),
        DECIMAL_COMMA(Group.DECIMAL),
        MONTH_FIRST(Group.DATES),
        DAY_FIRST(Group.DATES),
        TWO_DIGIT_YEARS(Group.DATES),
        UNIX(Group.DATES),
        HALF_DAYS(Group.CLOCK),
        WITHOUT_SECONDS(Group.SECONDS),
        PARTS_OF_SECONDS(Group.SECONDS),
        ZONE_IN_HEADING(Group.ZONE),
        GREENWICH(Group.ZONE),
        OFFSET_COLUMN(Group.ZONE),
        EVENTS(Group.EVENTS),
        RAGGED(Group.TAIL),
        METADATA(Group.TAIL),
        COMMENTS(Group.COMMENTS),
        SECOND_SENSOR(Group.SENSORS),
        TWO_DEVICES(Group.SENSORS),
        MISSING_WORDS(Group.MISSING),
        LONG_MINUS(Group.MINUS),
        REPEATED(Group.REPEATED),
        QUOTED(Group.QUOTES),
        UNENDED(Group.END);

        private final Group group;

        Habit(Group group) {
            this.group = group;
        }

        boolean goesWith(Habit other) {
            return group != other.group && clash(this, other) && clash(other, this);
        }

        private static boolean clash(Habit one, Habit other) {
            return switch (one) {
                case UNIX -> other.group != Group.CLOCK && other.group != Group.SECONDS && other.group != Group.ZONE;
                case BARE ->
                    other != ZONE_IN_HEADING && other != FAHRENHEIT && other != CUT_BY_COMMAS && other != TITLE;
                case CUT_BY_COMMAS -> other != DECIMAL_COMMA && other != QUOTED;
                case LONG_MINUS -> other != LATIN;
                default -> true;
            };
        }
    }

    private enum Group {
        CODE,
        BEFORE,
        UNIT,
        SEPARATOR,
        DECIMAL,
        DATES,
        CLOCK,
        SECONDS,
        ZONE,
        EVENTS,
        TAIL,
        COMMENTS,
        SENSORS,
        MISSING,
        MINUS,
        REPEATED,
        QUOTES,
        END
    }

    private boolean has(Habit habit) {
        return habits.contains(habit);
    }

    /** The whole file. */
    byte[] write(List<Taken> series) {
        List<String> lines = new ArrayList<>(before());
        if (!has(Habit.BARE)) {
            lines.add(line(heading()));
        }
        for (int i = 0; i < series.size(); i++) {
            lines.addAll(lines(series.get(i), i));
        }
        if (has(Habit.REPEATED)) {
            for (int i = series.size() / 2; i < series.size(); i++) {
                lines.addAll(lines(series.get(i), i));
            }
        }
        return bytes(String.join(random.nextBoolean() ? "\r\n" : "\n", lines) + (has(Habit.UNENDED) ? "" : "\n"));
    }

    private byte[] bytes(String text) {
        if (has(Habit.UTF_16)) {
            return ("\uFEFF" + text).getBytes(UTF_16LE);
        }
        return (has(Habit.MARK) ? "\uFEFF" + text : text).getBytes(has(Habit.LATIN) ? ISO_8859_1 : UTF_8);
    }

    private List<String> before() {
        if (has(Habit.TITLE)) {
            return List.of("What the cellar was like");
        }
        return has(Habit.PREAMBLE)
                ? List.of("Box: LOG-2", "Interval: 20 min", "Started: 2026-10-24 08:00:00", "Battery: 3.05 V", "")
                : List.of();
    }

    private List<String> heading() {
        List<String> names = new ArrayList<>();
        if (has(Habit.TWO_DEVICES)) {
            names.add("Device");
        }
        names.add(has(Habit.ZONE_IN_HEADING) ? "Date Time, GMT+02:00" : has(Habit.UNIX) ? "Timestamp" : "Date Time");
        if (has(Habit.OFFSET_COLUMN)) {
            names.add("Offset");
        }
        if (has(Habit.UNIT_IN_ROWS)) {
            names.add("Unit");
        }
        names.add(has(Habit.UNIT_IN_ROWS) ? "Value" : has(Habit.FAHRENHEIT) ? "Temp, °F" : "Temp, °C");
        if (has(Habit.SECOND_SENSOR)) {
            names.add(names.get(names.size() - 1));
        }
        if (has(Habit.RAGGED)) {
            names.add("Remark");
        }
        return names;
    }

    private List<String> lines(Taken reading, int index) {
        List<String> lines = new ArrayList<>();
        lines.add(line(row(reading.at(), figure(reading.milli()), "box A", index)));
        if (has(Habit.TWO_DEVICES)) {
            lines.add(line(row(reading.at(), figure(reading.milli() + 3000), "box B", index)));
        }
        if (has(Habit.EVENTS) && index % 5 == 2) {
            lines.add(line(row(reading.at().plusSeconds(60), "", "box A", index)));
        }
        if (has(Habit.MISSING_WORDS) && index % 5 == 3) {
            lines.add(line(row(
                    reading.at().plusSeconds(120),
                    List.of("NaN", "NA", "-", "n/a").get(index % 4),
                    "box A",
                    index)));
        }
        if (has(Habit.COMMENTS) && index % 6 == 4) {
            lines.add("(Parameter changed: interval)");
        }
        return lines;
    }

    private List<String> row(Instant at, String figure, String device, int index) {
        List<String> cells = new ArrayList<>();
        if (has(Habit.TWO_DEVICES)) {
            cells.add(device);
        }
        cells.add(instant(at));
        if (has(Habit.OFFSET_COLUMN)) {
            cells.add("+02:00");
        }
        if (has(Habit.UNIT_IN_ROWS)) {
            cells.add(index % 3 == 0 && !figure.isEmpty() ? "F" : "C");
        }
        cells.add(inUnit(figure, index));
        if (has(Habit.SECOND_SENSOR)) {
            cells.add(figure.isEmpty() ? "" : inUnit(figure(20_150 + index * 10), index));
        }
        if (has(Habit.RAGGED) && index % 4 == 0) {
            cells.add("ok");
        }
        if (has(Habit.METADATA)) {
            cells.add("");
            cells.add(index < 4 ? "Made by hand " + index : "");
        }
        return cells;
    }

    /** In hundredths of a degree, so that C and F are the same to the thousandth when read. */
    private String figure(int milli) {
        return BigDecimal.valueOf(milli, 3).toPlainString();
    }

    private String inUnit(String figure, int index) {
        if (!figure.matches("-?[0-9.]+")) {
            return figure;
        }
        boolean isF = has(Habit.FAHRENHEIT) || (has(Habit.UNIT_IN_ROWS) && index % 3 == 0);
        BigDecimal value = new BigDecimal(figure);
        BigDecimal shown = isF
                ? value.multiply(new BigDecimal("1.8")).add(new BigDecimal(32))
                : value.setScale(PRECISION, RoundingMode.HALF_UP);
        String text = shown.stripTrailingZeros().toPlainString();
        String signed = has(Habit.LONG_MINUS) ? text.replace('-', '\u2212') : text;
        return has(Habit.DECIMAL_COMMA) || has(Habit.CUT_BY_COMMAS) ? signed.replace('.', ',') : signed;
    }

    private String instant(Instant at) {
        if (has(Habit.UNIX)) {
            return Long.toString(at.getEpochSecond());
        }
        LocalDateTime local = LocalDateTime.ofInstant(at, zone());
        return DateTimeFormatter.ofPattern(datePattern() + " " + timePattern(), Locale.ENGLISH)
                        .format(local)
                + (has(Habit.GREENWICH) ? "Z" : "");
    }

    private ZoneId zone() {
        if (has(Habit.GREENWICH)) {
            return ZoneOffset.UTC;
        }
        return has(Habit.ZONE_IN_HEADING) || has(Habit.OFFSET_COLUMN) ? ZoneOffset.ofHours(2) : home;
    }

    private String datePattern() {
        if (has(Habit.TWO_DIGIT_YEARS)) {
            return "uu-MM-dd";
        }
        return has(Habit.MONTH_FIRST) ? "MM/dd/uuuu" : has(Habit.DAY_FIRST) ? "d.M.uuuu" : "uuuu-MM-dd";
    }

    private String timePattern() {
        String seconds = has(Habit.WITHOUT_SECONDS) ? "" : has(Habit.PARTS_OF_SECONDS) ? ":ss.SSS" : ":ss";
        return has(Habit.HALF_DAYS) ? "hh:mm" + seconds + "  a" : "HH:mm" + seconds;
    }

    private char separator() {
        return has(Habit.TABS) ? '\t' : has(Habit.SEMICOLONS) ? ';' : ',';
    }

    private String line(List<String> cells) {
        List<String> written = new ArrayList<>();
        for (String cell : cells) {
            boolean isFigure = cell.matches("[-\u2212]?[0-9]+,[0-9]+");
            boolean mustQuote = cell.indexOf(separator()) >= 0 && !(isFigure && has(Habit.CUT_BY_COMMAS));
            written.add(mustQuote || has(Habit.QUOTED) ? '"' + cell + '"' : cell);
        }
        return String.join(Character.toString(separator()), written);
    }

    /** Every pair of habits that go together, each habit alone, and none. */
    static List<Set<Habit>> pairs() {
        List<Set<Habit>> all = new ArrayList<>();
        all.add(EnumSet.noneOf(Habit.class));
        for (Habit one : Habit.values()) {
            all.add(EnumSet.of(one));
            for (Habit other : Habit.values()) {
                if (one.compareTo(other) < 0 && one.goesWith(other)) {
                    all.add(EnumSet.of(one, other));
                }
            }
        }
        return all;
    }
}
