// SPDX-License-Identifier: Apache-2.0
package sillbook.words.logger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import sillbook.model.DateOrder;
import sillbook.model.LoggerFormat;
import sillbook.model.LoggerFormat.DecimalSign;
import sillbook.model.LoggerFormat.Separator;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.words.Complaint;
import sillbook.words.logger.UnderstoodWords.Topic;

class CorrectionTest {
    private static LoggerFormat read(Topic topic, String words) {
        return new Correction(topic, LoggerFormat.OPEN).read(words).value().orElseThrow();
    }

    @Test
    void aLayoutIsSaidInPartsOrWhole() {
        LoggerFormat both = read(Topic.LAYOUT, "semicolons, decimal comma");

        assertThat(both.separator()).contains(Separator.SEMICOLON);
        assertThat(both.decimalSign()).contains(DecimalSign.COMMA);
        assertThat(read(Topic.LAYOUT, "tabs between").separator()).contains(Separator.TAB);
        assertThat(read(Topic.LAYOUT, "decimal point")).isEqualTo(LoggerFormat.OPEN.withDecimalSign(DecimalSign.POINT));
    }

    @Test
    void eachOtherThingIsSaidInItsWords() {
        assertThat(read(Topic.INSTANT, "mdy").dates()).contains(DateOrder.MONTH_DAY_YEAR);
        assertThat(read(Topic.DEVICE, " box B ").device()).contains("box B");
        assertThat(read(Topic.SUSPICIOUS, "0, 41F").suspicious()).isEqualTo(Set.of(0, 5000));
        assertThat(read(Topic.READING, "column 3, F"))
                .isEqualTo(LoggerFormat.OPEN.withColumn(3).withUnit(TemperatureUnit.FAHRENHEIT));
        assertThat(read(Topic.READING, "4").column()).contains(4);
        assertThat(read(Topic.READING, "in C").unit()).contains(TemperatureUnit.CELSIUS);
    }

    @Test
    void aZoneIsSaidByDistanceOrName() {
        assertThat(read(Topic.CLOCK, "UTC-6").zone()).contains(ZoneOffset.ofHours(-6));
        assertThat(read(Topic.CLOCK, "\u221203:30").zone()).contains(ZoneOffset.ofHoursMinutes(-3, -30));
        assertThat(read(Topic.CLOCK, "UTC").zone()).contains(ZoneOffset.UTC);
        assertThat(read(Topic.CLOCK, "Europe/Vienna").zone()).contains(ZoneId.of("Europe/Vienna"));
    }

    @Test
    void whatWasSaidBeforeStands() {
        LoggerFormat before = LoggerFormat.OPEN
                .withDates(DateOrder.YEAR_MONTH_DAY)
                .withZone(ZoneOffset.UTC)
                .withDevice("A")
                .withSeparator(Separator.COMMA)
                .withSuspicious(Set.of(7));

        assertThat(new Correction(Topic.READING, before).read("2").value()).contains(before.withColumn(2));
        assertThatThrownBy(() -> before.withColumn(0)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({
        "LAYOUT, dots, no separator",
        "LAYOUT, decimal dash, no decimal sign",
        "INSTANT, day first, no order of dates",
        "CLOCK, Nowhere, no zone",
        "READING, '', no column",
        "READING, 0, no column",
        "READING, '3, K', no unit",
        "READING, column three four, no column",
        "SUSPICIOUS, hot, no temperature"
    })
    void whatIsNoneIsSaid(Topic topic, String words, String says) {
        assertThat(new Correction(topic, LoggerFormat.OPEN)
                        .read(words)
                        .complaint()
                        .map(Complaint::sentence))
                .hasValueSatisfying(sentence -> assertThat(sentence).contains(says));
    }

    /** What the field begins with can be read, and says what was understood. */
    @ParameterizedTest
    @EnumSource(names = {"LAYOUT", "INSTANT", "CLOCK", "READING", "DEVICE"})
    void whatWasUnderstoodIsWrittenAsItIsRead(Topic topic) {
        Understood understood = SomeFile.clear();
        Correction correction = new Correction(topic, LoggerFormat.OPEN);

        assertThat(correction.read(correction.before(understood)).value()).isPresent();
        assertThat(correction.advice()).hasSize(2);
        assertThat(correction.choices(understood)).isEmpty();
    }

    @Test
    void whatIsOpenBeginsEmpty() {
        Understood open = SomeFile.open();

        assertThat(new Correction(Topic.INSTANT, LoggerFormat.OPEN).before(open))
                .isEmpty();
        assertThat(new Correction(Topic.INSTANT, LoggerFormat.OPEN).choices(open))
                .contains("It can be dmy or mdy.");
        assertThat(new Correction(Topic.READING, LoggerFormat.OPEN).before(open))
                .isEmpty();
        assertThat(new Correction(Topic.READING, LoggerFormat.OPEN).choices(open))
                .isEmpty();
        assertThat(new Correction(Topic.DEVICE, LoggerFormat.OPEN).before(open)).isEmpty();
        assertThat(new Correction(Topic.SUSPICIOUS, LoggerFormat.OPEN.withSuspicious(Set.of(500, 0))).before(open))
                .isEqualTo("0, 0.5");
        assertThat(new Correction(Topic.SUSPICIOUS, LoggerFormat.OPEN).advice()).hasSize(2);
    }

    /** What is written goes in the stead of what was told before, which therefore stands there to be added to. */
    @Test
    void whatWasToldBeforeToBeSuspiciousIsWrittenThereAlready() {
        Understood known = SomeFile.toldBefore(LoggerFormat.OPEN.withSuspicious(Set.of(25_500)));

        assertThat(new Correction(Topic.SUSPICIOUS, LoggerFormat.OPEN).before(known))
                .isEqualTo("25.5");
        assertThat(new Correction(Topic.SUSPICIOUS, LoggerFormat.OPEN.withSuspicious(Set.of(0))).before(known))
                .isEqualTo("0");
    }

    @Test
    void columnsAreCountedFromOne() {
        Correction column = new Correction(Topic.READING, LoggerFormat.OPEN);

        assertThat(column.read("column 03").value()).contains(LoggerFormat.OPEN.withColumn(3));
        assertThat(List.of("0", "00", "column 000"))
                .allSatisfy(none -> assertThat(column.read(none).complaint()).isPresent());
    }

    @Test
    void aFileThatWasLookedAtIsOpenUntilItIsCounted() {
        Looked looked = Looked.open("~/box.csv", "box.csv", 1000, LoggerFormat.OPEN, SomeFile.clear());
        Compared compared = new Compared(0, 3, 0, 0, 0, false, List.of());

        assertThat(looked.counted()).isEmpty();
        assertThat(looked.with(SomeFile.counted(), compared).compared()).isEqualTo(Optional.of(compared));
        assertThat(compared.hasNews()).isFalse();
        assertThat(new Compared(0, 3, 0, 1, 0, false, List.of()).hasNews()).isTrue();
        assertThat(new Compared(1, 3, 0, 0, 0, true, List.of()).hasNews()).isFalse();
    }
}
