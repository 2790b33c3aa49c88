// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import static sillbook.model.LoggerFormat.DecimalSign.COMMA;
import static sillbook.model.LoggerFormat.DecimalSign.POINT;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import sillbook.model.LoggerFormat.DecimalSign;

/** What the columns of the lines with instants hold. Columns are cells of these lines, counted from 0. */
record Holdings(Titled titled, Joined joined) {
    /** As most of the cells of a column: one line in twenty may be torn. */
    private static final double MOST = 0.95;

    private static final int FEWEST_CELLS_OF_A_DEVICE = 2;
    private static final int MOST_DEVICES = 40;

    private Grid data() {
        return titled.data();
    }

    private long filled(int column) {
        return data().count(column, (bytes, from, to) -> true);
    }

    private boolean isMostly(int column, CellTest test) {
        long filled = filled(column);
        return filled > 0 && data().count(column, test) >= MOST * filled;
    }

    private static CellTest figure(DecimalSign sign) {
        return new Figure(sign.sign())::read;
    }

    private static CellTest anyFigure() {
        return (bytes, from, to) ->
                figure(POINT).is(bytes, from, to) || figure(COMMA).is(bytes, from, to);
    }

    /** Whether figures stand in it, and hardly anything else with digits. */
    boolean hasFigures(int column) {
        CellTest figure = anyFigure();
        long figures = data().count(column, figure);
        long torn = data().count(column, (bytes, from, to) -> hasDigit(bytes, from, to) && !figure.is(bytes, from, to));
        return figures > torn;
    }

    static boolean hasDigit(byte[] bytes, int from, int to) {
        for (int at = from; at < to; at++) {
            if (bytes[at] >= '0' && bytes[at] <= '9') {
                return true;
            }
        }
        return false;
    }

    /** Whether a figure in it has decimals. */
    boolean hasDecimals(int column) {
        return written(column, '.') + written(column, ',') > 0;
    }

    /** In how many of its figures this is the last sign. */
    private long written(int column, char sign) {
        return data().count(column, (bytes, from, to) -> last(bytes, from, to) == sign);
    }

    private static int last(byte[] bytes, int from, int to) {
        for (int at = to - 1; at >= from; at--) {
            if (bytes[at] == '.' || bytes[at] == ',') {
                return bytes[at];
            }
        }
        return 0;
    }

    /** The decimal sign of these columns; empty where no figure has any. */
    Optional<DecimalSign> decimalSign(List<Integer> columns) {
        long points = columns.stream().mapToLong(column -> written(column, '.')).sum();
        long commas = columns.stream().mapToLong(column -> written(column, ',')).sum();
        if (points + commas == 0) {
            return joined.isNone() ? Optional.empty() : Optional.of(COMMA);
        }
        return Optional.of(points >= commas ? POINT : COMMA);
    }

    private IntStream others() {
        return data().columns().filter(column -> !titled.instants().has(column));
    }

    /** The column that names a unit of temperature, line by line. */
    OptionalInt unit() {
        return others().filter(column -> data().count(column, Holdings::isUnit) > 0)
                .filter(column -> isMostly(column, Holdings::isUnit) || Heading.isOfUnit(name(column)))
                .findFirst();
    }

    static boolean isUnit(byte[] bytes, int from, int to) {
        return Glyphs.unit(bytes, from, to) != 0;
    }

    /** The column that says how far the clock is from Greenwich. */
    OptionalInt offset() {
        Moment moment = new Moment();
        return others().filter(column -> isMostly(column, moment::readOffset))
                .filter(column -> Heading.isOffset(name(column))
                        || isMostly(column, (bytes, from, to) -> to - from > 4 && bytes[from + 3] == ':'))
                .findFirst();
    }

    /** The column that tells devices apart, or would if there were more than one. */
    OptionalInt device() {
        return others().filter(column -> filled(column) >= MOST * data().rows().size())
                .filter(column -> titled.hasHeading() ? isDeviceNamed(column) : isDeviceUnnamed(column))
                .filter(column -> data().distinct(column).size() <= MOST_DEVICES)
                .findFirst();
    }

    /** The column in which this name stands. */
    OptionalInt naming(String device) {
        return others().filter(column -> spelled(column, device).isPresent()).findFirst();
    }

    /** How a column spells a name, if it has it: it may be told in other capitals. */
    Optional<String> spelled(int column, String device) {
        return data().distinct(column).stream()
                .filter(device::equalsIgnoreCase)
                .min(Comparator.comparing((String name) -> !name.equals(device)).thenComparing(name -> name));
    }

    private boolean isDeviceNamed(int cell) {
        return Heading.isDevice(name(cell)) && !hasDecimals(cell);
    }

    private String name(int cell) {
        return titled.name(joined.column(cell));
    }

    /** Words that come again and again. */
    private boolean isDeviceUnnamed(int column) {
        boolean isText = !hasFigures(column)
                && !isMostly(column, Holdings::isUnit)
                && data().count(column, new Moment()::readOffset) == 0;
        Map<String, Integer> counts = new HashMap<>();
        data().rows().forEach(row -> counts.merge(row.text(column), 1, Integer::sum));
        return isText
                && filled(column) > 0
                && counts.values().stream().min(Comparator.naturalOrder()).orElse(0) >= FEWEST_CELLS_OF_A_DEVICE;
    }

    /** The columns that may be the temperature: by their names; without any, all that hold figures and are nothing else. */
    List<Integer> temperatures() {
        List<Integer> figures = columns()
                .filter(column -> hasFigures(joined.cell(column)))
                .boxed()
                .toList();
        List<Integer> named = figures.stream()
                .filter(column -> Heading.isTemperature(titled.name(column)))
                .toList();
        if (!named.isEmpty()) {
            return named;
        }
        List<Integer> open = figures.stream()
                .filter(column -> !Heading.isOther(titled.name(column)) && !isDeviceNamed(joined.cell(column)))
                .toList();
        List<Integer> decimal =
                open.stream().filter(column -> hasDecimals(joined.cell(column))).toList();
        return titled.hasHeading() || decimal.isEmpty() ? open : decimal;
    }

    /** The columns as the heading has them, without those of the instants. */
    private IntStream columns() {
        IntStream all = titled.hasHeading() ? IntStream.range(0, Math.max(titled.named(), 1)) : data().columns();
        return all.filter(column -> !titled.instants().has(column));
    }
}
