// SPDX-License-Identifier: Apache-2.0
package sillbook.words.logger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sillbook.model.DateOrder;
import sillbook.model.Id;
import sillbook.model.LoggerFormat;
import sillbook.model.LoggerProfile;
import sillbook.model.LoggerProfile.Mark;
import sillbook.model.Settings;
import sillbook.model.Settings.TemperatureUnit;

class ProfileWordsTest {
    private static String said(LoggerFormat format) {
        Mark mark = new Mark("Date;Temp", LoggerFormat.Separator.SEMICOLON, 4);
        return new ProfileWords(Settings.initial(ZoneOffset.UTC))
                .say(new LoggerProfile(new Id<>(1, 1), new Id<>(2, 2), mark, format));
    }

    @Test
    void onlyWhatWasToldIsSaid() {
        assertThat(said(LoggerFormat.OPEN.withDates(DateOrder.MONTH_DAY_YEAR)))
                .isEqualTo("files of 4 columns, semicolons between: month.day.year");
    }

    @Test
    void allThatCanBeToldIsSaid() {
        LoggerFormat all = new LoggerFormat(
                Optional.of(LoggerFormat.Separator.TAB),
                Optional.of(LoggerFormat.DecimalSign.COMMA),
                Optional.of(DateOrder.DAY_MONTH_YEAR),
                Optional.of(TemperatureUnit.FAHRENHEIT),
                Optional.of(ZoneId.of("+01:00")),
                Optional.of(3),
                Optional.of("box A"),
                Set.of(99_000));
        assertThat(said(all))
                .isEqualTo("files of 4 columns, semicolons between: tabs between, decimal comma, day.month.year, in F,"
                        + " clock +01:00, column 3, of box A, 99 C suspicious");
    }
}
