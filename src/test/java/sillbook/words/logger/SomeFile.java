// SPDX-License-Identifier: Apache-2.0
package sillbook.words.logger;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import sillbook.model.DateOrder;
import sillbook.model.LoggerFormat;
import sillbook.model.LoggerFormat.DecimalSign;
import sillbook.model.LoggerFormat.Separator;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.words.logger.Counted.Span;
import sillbook.words.logger.Counted.Strange;
import sillbook.words.logger.Understood.Basis;
import sillbook.words.logger.Understood.Clock;
import sillbook.words.logger.Understood.Column;
import sillbook.words.logger.Understood.Dates;
import sillbook.words.logger.Understood.Form;
import sillbook.words.logger.Understood.Found;
import sillbook.words.logger.Understood.Proof;
import sillbook.words.logger.Understood.TextCode;
import sillbook.words.logger.Understood.When;

/** A thermometer's file as it may be understood. */
final class SomeFile {
    static final Dates PROVEN = new Dates(
            Optional.of(new Found<>(DateOrder.DAY_MONTH_YEAR, Basis.SEEN)),
            Optional.of(new Proof(9, "13/11/2026", Optional.empty())),
            Set.of(DateOrder.DAY_MONTH_YEAR));
    static final Dates DOUBTFUL = new Dates(
            Optional.empty(), Optional.empty(), EnumSet.of(DateOrder.DAY_MONTH_YEAR, DateOrder.MONTH_DAY_YEAR));
    static final Clock SILENT = clock(ZoneOffset.UTC, Basis.ASSUMED);
    private static final Column TEMPERATURE = new Column(2, "Temp");

    private SomeFile() {}

    static Clock clock(ZoneId zone, Basis basis) {
        return new Clock(new Found<>(zone, basis), false, false, false);
    }

    static Understood clear() {
        return with(
                new When(Form.TOGETHER, List.of(new Column(1, "Time"))),
                PROVEN,
                SILENT,
                List.of("LOG-2"),
                Optional.of("LOG-2"));
    }

    static Understood with(When when, Dates dates, Clock clock, List<String> devices, Optional<String> device) {
        return with(when, dates, clock, devices, device, LoggerFormat.OPEN);
    }

    /** A clear one, of whose sort something was told before. */
    static Understood toldBefore(LoggerFormat told) {
        return with(
                new When(Form.TOGETHER, List.of(new Column(1, "Time"))),
                PROVEN,
                SILENT,
                List.of(),
                Optional.empty(),
                told);
    }

    private static Understood with(
            When when,
            Dates dates,
            Clock clock,
            List<String> devices,
            Optional<String> device,
            LoggerFormat toldBefore) {
        return new Understood(
                TextCode.UTF_8,
                0,
                true,
                new Found<>(Separator.COMMA, Basis.SEEN),
                new Found<>(DecimalSign.POINT, Basis.SEEN),
                when,
                dates,
                clock,
                Optional.of(TEMPERATURE),
                List.of(TEMPERATURE),
                new Found<>(TemperatureUnit.CELSIUS, Basis.STATED),
                false,
                devices,
                device,
                toldBefore);
    }

    /** Of which nothing is said that may be open. */
    static Understood open() {
        return new Understood(
                TextCode.LATIN_1,
                3,
                false,
                new Found<>(Separator.TAB, Basis.TOLD),
                new Found<>(DecimalSign.COMMA, Basis.TOLD),
                new When(Form.APART, List.of(new Column(1, ""), new Column(2, ""))),
                DOUBTFUL,
                SILENT,
                Optional.empty(),
                List.of(new Column(3, ""), new Column(4, "Temp")),
                new Found<>(TemperatureUnit.CELSIUS, Basis.ASSUMED),
                false,
                List.of("A", "B", "C", "D", "E", "F", "G"),
                Optional.empty(),
                LoggerFormat.OPEN);
    }

    static Counted counted() {
        return new Counted(
                1200,
                1,
                2,
                5,
                3,
                1,
                List.of(
                        new Strange(3, "85", Optional.of(85_000)),
                        new Strange(4, "-999", Optional.of(-999_000)),
                        new Strange(5, "85", Optional.of(85_000)),
                        new Strange(6, "85", Optional.of(85_000)),
                        new Strange(7, "(a remark that goes on and on and on)", Optional.empty())),
                Optional.of(new Span(Instant.parse("2026-11-01T12:00:00Z"), Instant.parse("2026-11-30T12:00:00Z"))),
                new TreeMap<>(),
                List.of(LocalDate.of(2026, 10, 25)));
    }
}
