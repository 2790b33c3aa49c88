// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.model.DateOrder;
import sillbook.model.LoggerFormat;
import sillbook.words.Complaint;
import sillbook.words.Heard;
import sillbook.words.logger.Understood.Basis;
import sillbook.words.logger.Understood.Found;

/** What is told of a file, held against what its lines say. */
class LoggerFileTest {
    private static final LoggerFormat DAY_FIRST = LoggerFormat.OPEN.withDates(DateOrder.DAY_MONTH_YEAR);
    private static final String YEAR_FIRST = "time,C\n2026-11-13 07:00,5.5\n2026-11-14 07:00,5.0\n";
    private static final String MONTH_FIRST = "time,C\n11/03/2026 07:00,5.5\n11/13/2026 07:00,5.0\n";
    private static final String TWO = "Box;Date;Temp\nPorch;2026-11-13 07:00;4.5\nCellar;2026-11-13 07:00;5.5\n";

    private static Heard<LoggerFile> look(String text, LoggerFormat told) {
        return LoggerFile.look(Source.of(text.getBytes(UTF_8)), told, List.of(), ZoneOffset.UTC);
    }

    private static String complaint(String text, LoggerFormat told) {
        return look(text, told).complaint().map(Complaint::sentence).orElseThrow();
    }

    @Test
    void aYearInFrontIsReadFirstWhateverIsTold() {
        assertThat(look(YEAR_FIRST, DAY_FIRST)
                        .value()
                        .orElseThrow()
                        .understood()
                        .dates()
                        .order())
                .contains(new Found<>(DateOrder.YEAR_MONTH_DAY, Basis.STATED));
    }

    @Test
    void anOrderThatLinesDisproveIsRefused() {
        assertThat(complaint(MONTH_FIRST, DAY_FIRST))
                .isEqualTo(
                        "Its dates are not day.month.year: line 3, 11/13/2026 07:00, proves another order. Say that, or"
                                + " none: then it is found.");
        assertThat(look(MONTH_FIRST, LoggerFormat.OPEN.withDates(DateOrder.MONTH_DAY_YEAR))
                        .value())
                .isPresent();
    }

    @Test
    void aColumnOfInstantsIsNoTemperature() {
        assertThat(complaint(YEAR_FIRST, LoggerFormat.OPEN.withColumn(1)))
                .isEqualTo("Column 1 of it holds the instants. Name the column of the temperature.");
    }

    @Test
    void aDeviceIsToldInAnyCapitals() {
        LoggerFile file =
                look(TWO, LoggerFormat.OPEN.withDevice("PORCH")).value().orElseThrow();

        assertThat(file.understood().device()).contains("Porch");
        try (LoggerFeed feed = file.feed()) {
            assertThat(feed.advance()).isTrue();
            assertThat(feed.milli()).isEqualTo(4_500);
            assertThat(feed.advance()).isFalse();
        }
        assertThat(complaint(TWO, LoggerFormat.OPEN.withDevice("attic")))
                .isEqualTo("No column of it names a device 'attic'. It has Cellar and Porch.");
    }
}
