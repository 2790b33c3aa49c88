// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.ZoneId;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Settings.TemperatureUnit;

/**
 * How the file of a thermometer is to be read, as far as the grower has said; what is not said is found in the file.
 *
 * @param dates the order of day, month and year
 * @param zone of its clock, where the file's instants say nothing of it
 * @param column of the temperature, counted from 1
 * @param device whose readings are meant, where a file has those of several
 * @param suspicious temperatures that can hardly be true of this thermometer, in thousandths of a degree Celsius
 */
public record LoggerFormat(
        Optional<Separator> separator,
        Optional<DecimalSign> decimalSign,
        Optional<DateOrder> dates,
        Optional<TemperatureUnit> unit,
        Optional<ZoneId> zone,
        Optional<Integer> column,
        Optional<String> device,
        Set<Integer> suspicious) {

    /** Nothing is said. */
    public static final LoggerFormat OPEN = new LoggerFormat(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Set.of());

    public LoggerFormat {
        suspicious = Sorted.copyOf(suspicious);
        if (column.filter(number -> number < 1).isPresent()) {
            throw new IllegalArgumentException("columns are counted from 1, not " + column);
        }
    }

    /** What parts the cells of a line. */
    public enum Separator {
        COMMA(','),
        SEMICOLON(';'),
        TAB('\t');

        private final char sign;

        Separator(char sign) {
            this.sign = sign;
        }

        public char sign() {
            return sign;
        }
    }

    /** What parts whole degrees from their parts. */
    public enum DecimalSign {
        POINT('.'),
        COMMA(',');

        private final char sign;

        DecimalSign(char sign) {
            this.sign = sign;
        }

        public char sign() {
            return sign;
        }
    }

    /** This, and where this says nothing the other. */
    public LoggerFormat over(LoggerFormat other) {
        return new LoggerFormat(
                separator.or(other::separator),
                decimalSign.or(other::decimalSign),
                dates.or(other::dates),
                unit.or(other::unit),
                zone.or(other::zone),
                column.or(other::column),
                device.or(other::device),
                suspicious.isEmpty() ? other.suspicious : suspicious);
    }

    /** What this says of that of which the other says nothing. */
    public LoggerFormat without(LoggerFormat other) {
        return new LoggerFormat(
                separator.filter(said -> other.separator.isEmpty()),
                decimalSign.filter(said -> other.decimalSign.isEmpty()),
                dates.filter(said -> other.dates.isEmpty()),
                unit.filter(said -> other.unit.isEmpty()),
                zone.filter(said -> other.zone.isEmpty()),
                column.filter(said -> other.column.isEmpty()),
                device.filter(said -> other.device.isEmpty()),
                other.suspicious.isEmpty() ? suspicious : Set.of());
    }

    public LoggerFormat withSeparator(Separator said) {
        return new LoggerFormat(Optional.of(said), decimalSign, dates, unit, zone, column, device, suspicious);
    }

    public LoggerFormat withDecimalSign(DecimalSign said) {
        return new LoggerFormat(separator, Optional.of(said), dates, unit, zone, column, device, suspicious);
    }

    public LoggerFormat withDates(DateOrder said) {
        return new LoggerFormat(separator, decimalSign, Optional.of(said), unit, zone, column, device, suspicious);
    }

    public LoggerFormat withUnit(TemperatureUnit said) {
        return new LoggerFormat(separator, decimalSign, dates, Optional.of(said), zone, column, device, suspicious);
    }

    public LoggerFormat withZone(ZoneId said) {
        return new LoggerFormat(separator, decimalSign, dates, unit, Optional.of(said), column, device, suspicious);
    }

    public LoggerFormat withColumn(int said) {
        return new LoggerFormat(separator, decimalSign, dates, unit, zone, Optional.of(said), device, suspicious);
    }

    public LoggerFormat withDevice(String said) {
        return new LoggerFormat(separator, decimalSign, dates, unit, zone, column, Optional.of(said), suspicious);
    }

    public LoggerFormat withSuspicious(Set<Integer> said) {
        return new LoggerFormat(separator, decimalSign, dates, unit, zone, column, device, said);
    }
}
