// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.util.Arrays;
import java.util.Optional;
import sillbook.model.Settings.TemperatureUnit;

/** Reads one line after the other by a layout. Everything it holds is that of the last line. Nothing is made for a line. */
final class RowReader {
    private static final long[] NO_VALUE = {-9999, 9999, -100, 404};
    private static final long FREEZING_F = 32 * Figure.ONE;
    private static final long MICRO_IN_MILLI = 1000;
    private static final long MOST_MILLI = 10_000_000;

    private final Layout layout;
    private final Cells cells;
    private final Figure figure;
    private final Moment moment = new Moment();
    private final byte[] device;
    private int milli;
    private long written;

    /** What a line is. */
    enum Kind {
        READING,
        NO_VALUE,
        /** Of another device or another quantity. */
        OTHER,
        UNREADABLE,
        BLANK
    }

    /**
     * Of one device's lines, or of all.
     *
     * @param device as its column names it
     */
    RowReader(Layout layout, Optional<byte[]> device) {
        this.layout = layout;
        this.device = device.orElse(new byte[0]);
        cells = new Cells(layout.separator(), layout.cellsWanted());
        figure = new Figure(layout.decimalSign());
    }

    Kind read(Lines line) {
        if (!readInstant(line)) {
            return isBlank() ? Kind.BLANK : Kind.UNREADABLE;
        }
        return isOfDevice() ? value() : Kind.OTHER;
    }

    /** Reads where and when alone; false where a line does not say it. */
    boolean readInstant(Lines line) {
        cells.split(line);
        return layout.instants().read(cells, moment)
                && !isShifted()
                && (layout.offset().isEmpty() || readOffset(layout.offset().getAsInt()));
    }

    private boolean isBlank() {
        for (int column = 0; column < cells.count(); column++) {
            if (!cells.isBlank(column)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a figure without decimals moves what stands behind it, so that it is not sure where that is. */
    private boolean isShifted() {
        Joined joined = layout.joined();
        return !joined.isNone()
                && cells.count() < joined.columns() + joined.cut().size()
                && Math.max(
                                layout.unit().orElse(0),
                                Math.max(
                                        layout.device().orElse(0),
                                        layout.offset().orElse(0)))
                        > joined.cut().get(0);
    }

    private boolean readOffset(int column) {
        return !cells.isBlank(column) && moment.readOffset(cells.bytes(), cells.from(column), cells.to(column));
    }

    /** Whether the line is of the device that is meant. */
    boolean isOfDevice() {
        if (device.length == 0) {
            return true;
        }
        int column = layout.device().orElse(Cells.MOST);
        return column < cells.count()
                && Arrays.equals(cells.bytes(), cells.from(column), cells.to(column), device, 0, device.length);
    }

    private Kind value() {
        Joined joined = layout.joined();
        int cell = joined.isNone() ? layout.temperature() : joined.cell(layout.temperature());
        if (cells.isBlank(cell)) {
            return Kind.NO_VALUE;
        }
        int end = joined.isNone() ? cells.to(cell) : joined.end(cells, layout.temperature());
        if (end < 0) {
            return Kind.UNREADABLE;
        }
        if (!figure.read(cells.bytes(), cells.from(cell), end)) {
            return Holdings.hasDigit(cells.bytes(), cells.from(cell), end) ? Kind.UNREADABLE : Kind.NO_VALUE;
        }
        return isNoValue(figure.micro()) ? Kind.NO_VALUE : inUnit();
    }

    private static boolean isNoValue(long micro) {
        for (long one : NO_VALUE) {
            if (micro == one * Figure.ONE) {
                return true;
            }
        }
        return false;
    }

    private Kind inUnit() {
        int unit = unit();
        if (unit == 0) {
            return Kind.OTHER;
        }
        written = figure.micro();
        long rounded = unit == 'F'
                ? Math.floorDiv((written - FREEZING_F) * 5 * 2 + 9 * MICRO_IN_MILLI, 18 * MICRO_IN_MILLI)
                : Math.floorDiv(written + MICRO_IN_MILLI / 2, MICRO_IN_MILLI);
        milli = (int) rounded;
        return Math.abs(rounded) > MOST_MILLI ? Kind.UNREADABLE : Kind.READING;
    }

    /** {@code C} or {@code F}; 0 where the line names another unit. */
    private int unit() {
        if (figure.unitSaid() != 0) {
            return figure.unitSaid();
        }
        if (layout.unit().isPresent() && !cells.isBlank(layout.unit().getAsInt())) {
            int column = layout.unit().getAsInt();
            return Glyphs.unit(cells.bytes(), cells.from(column), cells.to(column));
        }
        return layout.usualUnit() == TemperatureUnit.FAHRENHEIT ? 'F' : 'C';
    }

    Moment moment() {
        return moment;
    }

    Cells cells() {
        return cells;
    }

    /** The temperature, in thousandths of a degree Celsius. */
    int milli() {
        return milli;
    }

    /** The figure as it stands there, in millionths of its own unit. */
    long written() {
        return written;
    }
}
