// SPDX-License-Identifier: Apache-2.0
package sillbook.words.logger;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.LoggerFormat;
import sillbook.model.LoggerProfile;
import sillbook.model.Settings;
import sillbook.words.Counts;
import sillbook.words.Temperatures;

/** What was told of a thermometer's files, and is kept for the next one like them. */
public record ProfileWords(Settings settings) {
    private static final double MILLI = 1000;

    /** {@code files of 2 columns, commas between: day.month.year, column 2}. */
    public String say(LoggerProfile profile) {
        String like = "files of " + Counts.of(profile.mark().columns(), "column") + ", "
                + FormatWords.SEPARATORS.say(profile.mark().separator()) + " between: ";
        return like + String.join(", ", told(profile.format()));
    }

    private List<String> told(LoggerFormat format) {
        return Stream.of(
                        format.separator().map(separator -> FormatWords.SEPARATORS.say(separator) + " between"),
                        format.decimalSign().map(sign -> "decimal " + FormatWords.DECIMALS.say(sign)),
                        format.dates().map(FormatWords::inFull),
                        format.unit().map(unit -> "in " + Temperatures.unit(unit)),
                        format.zone().map(zone -> "clock " + FormatWords.say(zone)),
                        format.column().map(column -> "column " + column),
                        format.device().map(device -> "of " + device),
                        Optional.of(format.suspicious())
                                .filter(some -> !some.isEmpty())
                                .map(some -> some.stream().map(this::degrees).collect(Collectors.joining(" and "))
                                        + " suspicious"))
                .flatMap(Optional::stream)
                .toList();
    }

    private String degrees(int milli) {
        return Temperatures.number(milli / MILLI, settings.temperatures()) + " "
                + Temperatures.unit(settings.temperatures());
    }
}
