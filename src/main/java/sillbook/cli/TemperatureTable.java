// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import sillbook.reckon.cold.DayTrace;
import sillbook.reckon.cold.Span;
import sillbook.reckon.cold.SpanTrace;
import sillbook.reckon.heat.SineDay;
import sillbook.words.Counts;
import sillbook.words.list.Table;

/**
 * A table of the lowest and highest temperatures, of days in a column of their own, or of spans with one where they begin and one where they
 * end. Which is which is told by the names of the columns.
 */
final class TemperatureTable {
    private static final Set<String> WHEN =
            Set.of("date", "day", "time", "datetime", "timestamp", "moment", "at", "when");
    private static final Set<String> FROM = Set.of("from", "since", "reset", "start");
    private static final Set<String> TO = Set.of("to", "until", "read", "end");
    private static final Set<String> TEMPERATURE =
            Set.of("temperature", "temp", "t", "celsius", "fahrenheit", "reading");
    private static final Set<String> LOWEST = Set.of("lowest", "low", "min", "minimum", "tmin", "tempmin", "mintemp");
    private static final Set<String> HIGHEST =
            Set.of("highest", "high", "max", "maximum", "tmax", "tempmax", "maxtemp");
    private static final Pattern UNIT = Pattern.compile("[(\\[ _]+(?:°|deg)?([cf])[)\\]]?$");
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d{1,4}([.,]\\d{1,12})?");
    private static final String NO_ZONE = "times as printed, in no zone";
    private static final double NO_FROST_F = 32;
    private static final double F_PER_C = 1.8;

    private final Table table;
    private final Set<String> assumed = new HashSet<>();
    private final List<Integer> leftOut = new ArrayList<>();

    TemperatureTable(Table table) {
        this.table = table;
    }

    /** What was taken for granted, a phrase each. */
    List<String> assumed() {
        return assumed.stream().sorted().toList();
    }

    /** Numbers of the rows without a temperature. */
    List<Integer> leftOut() {
        return List.copyOf(leftOut);
    }

    /** Whether its columns are of the lowest and highest of days or spans. */
    boolean isOfLowestAndHighest() {
        boolean hasEither = has(LOWEST) || has(HIGHEST);
        return hasEither && (has(FROM) || !has(TEMPERATURE));
    }

    /**
     * Reads all of it.
     *
     * @throws CouldNot when a column is not there, or what stands in it cannot be read
     */
    Thermograph read() {
        return has(FROM) ? new Thermograph.OfSpans(spans()) : new Thermograph.OfDays(days());
    }

    private DayTrace days() {
        int when = wanted("of days", WHEN);
        int lowest = wanted("of the lowest", LOWEST);
        int highest = wanted("of the highest", HIGHEST);
        TreeMap<LocalDate, SineDay> days = new TreeMap<>();
        each(List.of(lowest, highest), (row, degrees) -> {
            LocalDate day =
                    Moments.day(row.cell(when)).orElseThrow(() -> not(row, when, "no day. Write it as 2026-10-01."));
            inOrder(row, lowest, highest, degrees);
            return Optional.ofNullable(days.put(day, new SineDay(degrees.get(0), degrees.get(1))))
                    .map(before -> "Row " + row.number() + ": " + day + " stands in it twice.");
        });
        return new DayTrace(days);
    }

    private SpanTrace spans() {
        int from = wanted("of where spans begin", FROM);
        int to = wanted("of where they end", TO);
        int lowest = wanted("of the lowest", LOWEST);
        int highest = wanted("of the highest", HIGHEST);
        List<Span> spans = new ArrayList<>();
        each(List.of(lowest, highest), (row, degrees) -> {
            inOrder(row, lowest, highest, degrees);
            Instant begun = end(row, from);
            Instant ended = end(row, to);
            if (!begun.isBefore(ended)) {
                throw new CouldNot("Row " + row.number() + ": it ends before it begins.");
            }
            if (spans.stream()
                    .anyMatch(
                            other -> begun.isBefore(other.to()) && other.from().isBefore(ended))) {
                throw new CouldNot("Row " + row.number() + ": it overlaps a span above it.");
            }
            spans.add(new Span(begun, ended, degrees.get(0), degrees.get(1)));
            return Optional.empty();
        });
        return new SpanTrace(spans);
    }

    /** A day stands for its beginning, where one span ends and the next begins. */
    private Instant end(Table.Row row, int column) {
        String cell = row.cell(column);
        if (Moments.day(cell).isPresent()) {
            assumed.add("days from midnight");
        } else if (!Moments.hasOffset(cell)) {
            assumed.add(NO_ZONE);
        }
        return Moments.day(cell)
                .map(day -> Moments.start(day, ZoneOffset.UTC))
                .or(() -> Moments.moment(cell, ZoneOffset.UTC))
                .orElseThrow(() -> not(row, column, "no day and no moment. Write it as 2026-10-01."));
    }

    private static void inOrder(Table.Row row, int lowest, int highest, List<Double> degrees) {
        if (degrees.get(0) > degrees.get(1)) {
            throw new CouldNot("Row " + row.number() + ": the lowest, " + row.cell(lowest) + ", is above the highest, "
                    + row.cell(highest) + ".");
        }
    }

    /** Goes through the rows that have all these temperatures; what is to be done may give a complaint. */
    private void each(List<Integer> columns, BiFunction<Table.Row, List<Double>, Optional<String>> what) {
        for (Table.Row row : table.rows()) {
            if (columns.stream().anyMatch(column -> row.cell(column).isBlank())) {
                leftOut.add(row.number());
            } else {
                List<Double> degrees =
                        columns.stream().map(column -> celsius(row, column)).toList();
                what.apply(row, degrees).ifPresent(complaint -> {
                    throw new CouldNot(complaint);
                });
            }
        }
    }

    private double celsius(Table.Row row, int column) {
        String cell = row.cell(column).strip();
        if (!NUMBER.matcher(cell).matches()) {
            throw not(row, column, "no temperature. Write a number, as 4.5.");
        }
        double degrees = Double.parseDouble(cell.replace(',', '.'));
        Optional<String> unit = unit(table.header().get(column));
        if (unit.isEmpty()) {
            assumed.add("temperatures in C");
        }
        return unit.equals(Optional.of("f")) ? (degrees - NO_FROST_F) / F_PER_C : degrees;
    }

    private static CouldNot not(Table.Row row, int column, String what) {
        return new CouldNot("Row " + row.number() + ": '" + row.cell(column) + "' is " + what);
    }

    private int wanted(String what, Set<String> names) {
        return column(names)
                .orElseThrow(() -> new CouldNot(
                        "There is no column " + what + ". There are " + Counts.and(table.header()) + "; name one "
                                + Counts.or(names.stream().sorted().toList()) + "."));
    }

    private boolean has(Set<String> names) {
        return table.header().stream().anyMatch(name -> names.contains(plain(name)));
    }

    private OptionalInt column(Set<String> names) {
        int[] found = IntStream.range(0, table.header().size())
                .filter(column -> names.contains(plain(table.header().get(column))))
                .toArray();
        if (found.length > 1) {
            throw new CouldNot("The columns " + table.header().get(found[0]) + " and "
                    + table.header().get(found[1]) + " could both be meant. Leave one out.");
        }
        return found.length == 0 ? OptionalInt.empty() : OptionalInt.of(found[0]);
    }

    private static String plain(String name) {
        String small = name.strip().toLowerCase(Locale.ROOT);
        return UNIT.matcher(small).replaceFirst("").replaceAll("[ _-]", "");
    }

    private static Optional<String> unit(String name) {
        String small = name.strip().toLowerCase(Locale.ROOT);
        if (small.equals("celsius") || small.equals("fahrenheit")) {
            return Optional.of(small.substring(0, 1));
        }
        return UNIT.matcher(small).results().findFirst().map(found -> found.group(1));
    }
}
