// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.model.DateOrder;
import sillbook.model.Id;
import sillbook.model.LoggerFormat;
import sillbook.model.LoggerFormat.DecimalSign;
import sillbook.model.LoggerFormat.Separator;
import sillbook.model.LoggerProfile;
import sillbook.model.LoggerProfile.Mark;
import sillbook.model.Settings.TemperatureUnit;

/** What was told of the files of thermometers, with the temperatures that can hardly be true. */
final class LoggerProfileRows implements Mapping<LoggerProfile> {
    private static final Table TABLE = Table.of(
            "logger_profile",
            "id",
            "place",
            "heading",
            "parted_by",
            "columns",
            "separator",
            "decimal_sign",
            "dates",
            "unit",
            "zone",
            "temperature_column",
            "device");
    private static final Parts<LoggerProfile, Integer> PARTS = new Parts<>(
            Table.of("logger_profile_suspicious", "logger_profile", "position", "temperature"),
            profile -> List.copyOf(profile.format().suspicious()),
            (milli, row) -> row.number(milli),
            Row::number);

    @Override
    public Class<LoggerProfile> type() {
        return LoggerProfile.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public Optional<Parts<LoggerProfile, ?>> parts() {
        return Optional.of(PARTS);
    }

    @Override
    public void write(LoggerProfile profile, Values row) {
        LoggerFormat format = profile.format();
        row.id(profile.id())
                .id(profile.place())
                .text(profile.mark().heading())
                .word(profile.mark().separator())
                .number(profile.mark().columns())
                .optionalWord(format.separator())
                .optionalWord(format.decimalSign())
                .optionalWord(format.dates())
                .optionalWord(format.unit())
                .optionalText(format.zone().map(ZoneId::getId))
                .optionalNumber(format.column())
                .optionalText(format.device());
    }

    @Override
    public LoggerProfile read(Row row) throws SQLException {
        Id<LoggerProfile> id = row.id();
        return new LoggerProfile(
                id,
                row.id(),
                new Mark(row.text(), row.word(Separator.class), row.number()),
                format(row, Set.copyOf(row.parts(id))));
    }

    private static LoggerFormat format(Row row, Set<Integer> suspicious) throws SQLException {
        return new LoggerFormat(
                row.optionalWord(Separator.class),
                row.optionalWord(DecimalSign.class),
                row.optionalWord(DateOrder.class),
                row.optionalWord(TemperatureUnit.class),
                row.optionalText().map(ZoneId::of),
                row.optionalNumber(),
                row.optionalText(),
                suspicious);
    }
}
