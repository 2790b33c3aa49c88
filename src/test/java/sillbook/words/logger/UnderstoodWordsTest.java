// SPDX-License-Identifier: Apache-2.0
package sillbook.words.logger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import sillbook.model.DateOrder;
import sillbook.model.LoggerFormat;
import sillbook.model.LoggerFormat.DecimalSign;
import sillbook.model.LoggerFormat.Separator;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.words.logger.Counted.Span;
import sillbook.words.logger.CountedWords.Line;
import sillbook.words.logger.Understood.Basis;
import sillbook.words.logger.Understood.Clock;
import sillbook.words.logger.Understood.Column;
import sillbook.words.logger.Understood.Dates;
import sillbook.words.logger.Understood.Form;
import sillbook.words.logger.Understood.Found;
import sillbook.words.logger.Understood.Proof;
import sillbook.words.logger.Understood.Question;
import sillbook.words.logger.Understood.TextCode;
import sillbook.words.logger.Understood.When;
import sillbook.words.logger.UnderstoodWords.Fact;

class UnderstoodWordsTest {
    private static final When TOGETHER = new When(Form.TOGETHER, List.of(new Column(1, "Time")));

    private static List<String> says(Understood understood) {
        return new UnderstoodWords(understood).facts().stream().map(Fact::says).toList();
    }

    private static String clock(Clock clock, Form form) {
        When when = new When(form, TOGETHER.columns());
        return says(SomeFile.with(when, SomeFile.PROVEN, clock, List.of(), Optional.empty()))
                .get(2);
    }

    private static String dates(Dates dates) {
        return says(SomeFile.with(TOGETHER, dates, SomeFile.SILENT, List.of(), Optional.empty()))
                .get(1);
    }

    @Test
    void aClearFileIsSaidAFactALine() {
        assertThat(says(SomeFile.clear()))
                .containsExactly(
                        "a heading; commas between, decimal point",
                        "column 1, day.month.year; line 9 proves it: 13/11/2026",
                        "UTC (no zone is named, so the journal's)",
                        "column 2, \"Temp\", in C (as the file says)");
        assertThat(new UnderstoodWords(SomeFile.clear()).calledThere()).contains("called LOG-2 in the file");
        assertThat(new UnderstoodWords(SomeFile.clear()).assumed()).containsExactly("times in UTC");
        assertThat(SomeFile.clear().questions()).isEmpty();
    }

    @Test
    void whatIsOpenIsSaidAndAsked() {
        UnderstoodWords words = new UnderstoodWords(SomeFile.open());

        assertThat(says(SomeFile.open()))
                .containsExactly(
                        "3 lines, then no heading; tabs between (as you said), decimal comma (as you said); Latin-1",
                        "columns 1 and 2, day.month.year or month.day.year?",
                        "UTC (no zone is named, so the journal's)",
                        "column 3 or 4 \"Temp\"?",
                        "A, B, C, D, E and F ..: which?");
        assertThat(words.facts()).extracting(Fact::isOpen).containsExactly(false, true, false, true, true);
        assertThat(SomeFile.open().questions()).containsExactly(Question.DATES, Question.COLUMN, Question.DEVICE);
        assertThat(words.asks(Question.DATES))
                .isEqualTo("Every date of it can be read as day.month.year and as month.day.year.");
        assertThat(words.asks(Question.COLUMN))
                .isEqualTo("Each of its columns 3 and 4 \"Temp\" may be the temperature.");
        assertThat(words.asks(Question.DEVICE)).startsWith("It has readings of 7 devices: A, B, ");
        assertThat(words.ordersTyped()).containsExactly("dmy", "mdy");
        assertThat(words.calledThere()).isEmpty();
        assertThat(words.assumed()).containsExactly("temperatures in C", "times in UTC");
    }

    @Test
    void oneOfSeveralDevicesIsNamed() {
        Understood two = SomeFile.with(TOGETHER, SomeFile.PROVEN, SomeFile.SILENT, List.of("A", "B"), Optional.of("B"));

        assertThat(says(two).get(4)).isEqualTo("B, of 2 devices");
        assertThat(two.questions()).isEmpty();
    }

    @Test
    void theOrderOfDatesIsSaidWithWhatItRestsOn() {
        Found<DateOrder> told = new Found<>(DateOrder.MONTH_DAY_YEAR, Basis.TOLD);
        Found<DateOrder> seen = new Found<>(DateOrder.YEAR_MONTH_DAY, Basis.SEEN);
        Proof step = new Proof(7, "26-11-12", Optional.of("26-11-11"));

        assertThat(dates(new Dates(Optional.of(told), Optional.empty(), Set.of(told.value()))))
                .isEqualTo("column 1, month.day.year (as you said)");
        assertThat(dates(new Dates(Optional.of(seen), Optional.of(step), Set.of(seen.value()))))
                .isEqualTo("column 1, year.month.day; line 7 proves it: 26-11-12 follows 26-11-11");
        assertThat(says(SomeFile.with(
                                new When(Form.UNIX, TOGETHER.columns()),
                                new Dates(Optional.empty(), Optional.empty(), Set.of()),
                                SomeFile.SILENT,
                                List.of(),
                                Optional.empty()))
                        .get(1))
                .isEqualTo("column 1, seconds since 1970");
    }

    @Test
    void theClockIsSaidWithWhatItRestsOn() {
        ZoneId vienna = ZoneId.of("Europe/Vienna");
        Found<ZoneId> stated = new Found<>(ZoneOffset.ofHours(-6), Basis.STATED);

        assertThat(clock(SomeFile.clock(vienna, Basis.TOLD), Form.TOGETHER)).isEqualTo("Europe/Vienna (as you said)");
        assertThat(clock(new Clock(stated, false, true, false), Form.TOGETHER))
                .isEqualTo("-06:00 (as the file says); twelve hours, with AM and PM");
        assertThat(clock(new Clock(stated, true, false, false), Form.TOGETHER))
                .isEqualTo("as far from Greenwich as each line says");
        assertThat(clock(new Clock(new Found<>(vienna, Basis.TOLD), true, false, false), Form.TOGETHER))
                .isEqualTo("Europe/Vienna (as you said)");
        assertThat(clock(new Clock(stated, false, false, true), Form.TOGETHER))
                .isEqualTo("-06:00 all along: it goes through the hour that summer time leaves out");
        assertThat(clock(SomeFile.SILENT, Form.UNIX)).isEqualTo("UTC");
    }

    @Test
    void whatWasToldOfAnEarlierFileIsSaidToBeSo() {
        LoggerFormat before = new LoggerFormat(
                Optional.of(Separator.TAB),
                Optional.of(DecimalSign.COMMA),
                Optional.of(DateOrder.DAY_MONTH_YEAR),
                Optional.of(TemperatureUnit.FAHRENHEIT),
                Optional.of(ZoneOffset.ofHours(1)),
                Optional.of(3),
                Optional.of("B"),
                Set.of(0, 25_500));
        Dates told = new Dates(
                Optional.of(new Found<>(DateOrder.DAY_MONTH_YEAR, Basis.TOLD)),
                Optional.empty(),
                Set.of(DateOrder.DAY_MONTH_YEAR));
        Understood understood = new Understood(
                TextCode.UTF_8,
                0,
                true,
                new Found<>(Separator.TAB, Basis.TOLD),
                new Found<>(DecimalSign.COMMA, Basis.TOLD),
                TOGETHER,
                told,
                SomeFile.clock(ZoneOffset.ofHours(1), Basis.TOLD),
                Optional.of(new Column(3, "Temp")),
                List.of(new Column(2, "Temp"), new Column(3, "Temp")),
                new Found<>(TemperatureUnit.FAHRENHEIT, Basis.TOLD),
                false,
                List.of("A", "B"),
                Optional.of("B"),
                before);

        assertThat(says(understood))
                .containsExactly(
                        "a heading; tabs between (as told before), decimal comma (as told before)",
                        "column 1, day.month.year (as told before)",
                        "+01:00 (as told before)",
                        "column 3, \"Temp\" (as told before), in F (as told before); 0 C and 25.5 C suspicious (as told before)",
                        "B, of 2 devices (as told before)");
    }

    @Test
    void unitsInLinesAndCodesAreSaid() {
        Understood understood = new Understood(
                TextCode.UTF_16,
                1,
                true,
                new Found<>(Separator.SEMICOLON, Basis.STATED),
                new Found<>(DecimalSign.COMMA, Basis.SEEN),
                TOGETHER,
                SomeFile.PROVEN,
                new Clock(new Found<>(ZoneOffset.UTC, Basis.ASSUMED), true, false, false),
                Optional.of(new Column(3, "")),
                List.of(new Column(3, "")),
                new Found<>(TemperatureUnit.CELSIUS, Basis.ASSUMED),
                true,
                List.of(),
                Optional.empty(),
                LoggerFormat.OPEN);

        assertThat(says(understood))
                .contains("1 line, then a heading; semicolons between, decimal comma; UTF-16")
                .contains("column 3, in the unit each line names");
        assertThat(new UnderstoodWords(understood).assumed()).isEmpty();
    }

    private static List<String> counted(Counted counted, Optional<Compared> compared) {
        return new CountedWords(counted, ZoneOffset.UTC, TemperatureUnit.CELSIUS)
                .lines(compared).stream()
                        .map(line -> line.count() + (line.wants() ? " ! " : " ") + line.says())
                        .toList();
    }

    @Test
    void whatLinesComeToIsSaidACountALine() {
        assertThat(counted(SomeFile.counted(), Optional.empty()))
                .containsExactly(
                        "1200 with a reading, 1 to 30 Nov",
                        "1 without a value",
                        "2 of something else",
                        "5 ! suspicious, line 3 85, line 4 -999, line 5 85 and 2 more; kept, marked, left out of sums",
                        "3 ! after now, left out: clock ahead, or dates the wrong way round",
                        "1 ! unreadable, line 7 \"(a remark that goes on and on ..\"");
    }

    @Test
    void whatTheyAreBesideTheBookIsSaid() {
        Compared compared = new Compared(
                1000,
                190,
                12,
                6,
                4,
                false,
                List.of(new Compared.Difference(8, 9100, 9400, true), new Compared.Difference(9, 9400, 9100, false)));

        assertThat(counted(SomeFile.counted(), Optional.of(compared)))
                .startsWith(
                        "1000 new, 1 to 30 Nov",
                        "190 already here, skipped",
                        "12 twice in it, skipped",
                        "6 ! changed: line 8 9.4 was 9.1",
                        "4 ! other than here, which stays: line 9 9.1 not 9.4");
    }

    @Test
    void aFileWithoutReadingsHasNoDays() {
        Counted none = new Counted(0, 1, 0, 0, 0, 0, List.of(), Optional.<Span>empty(), new TreeMap<>(), List.of());

        assertThat(counted(none, Optional.empty())).containsExactly("0 with a reading", "1 without a value");
        assertThat(counted(none, Optional.of(new Compared(0, 0, 0, 0, 0, false, List.of()))))
                .containsExactly("0 new", "1 without a value");
        assertThat(new CountedWords(SomeFile.counted(), ZoneOffset.UTC, TemperatureUnit.FAHRENHEIT)
                        .lines(Optional.empty()))
                .extracting(Line::topic)
                .filteredOn(Optional::isPresent)
                .hasSize(1);
    }
}
