// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sillbook.cli.TemperatureFile.Contents;
import sillbook.reckon.cold.ColdWeight;
import sillbook.reckon.cold.HourWorth;
import sillbook.reckon.cold.StrictCount;
import sillbook.words.Provisos;
import sillbook.words.Warned;

/** Adds up the cold of a file of temperatures, without a journal. */
@Command(
        name = "cold",
        description = {
            "Add up the cold in a thermometer's file, or in a CSV file of days with their lowest and highest, or of spans"
                    + " from and to with theirs; - reads the standard input.",
            "graded counts an hour from 2 to 9 C in full, and less and less of it down to 0 and up to 13 C; count takes"
                    + " an hour above 0 and up to 9 C for one, and any other for none."
        })
final class ColdCommand implements Callable<Integer> {
    private static final double USUAL_NEED = 14;

    private final Printer printer;
    private final InputStream in;

    @Parameters(paramLabel = "FILE", description = TemperatureFile.DESCRIPTION)
    private String file = "";

    @Option(names = "--from", paramLabel = "WHEN", description = "The first day, or a moment; all of it if not said.")
    private Optional<String> from = Optional.empty();

    @Option(names = "--to", paramLabel = "WHEN", description = "The last day, which is in it, or a moment.")
    private Optional<String> to = Optional.empty();

    @Option(names = "--profile", paramLabel = "HOW", description = "graded or count; graded if not said.")
    private String profile = "graded";

    @Option(names = "--need", paramLabel = "N", description = "Weeks of which the day is wanted; 14 if not said.")
    private Optional<String> need = Optional.empty();

    @Mixin
    private final LoggerOptions logger = new LoggerOptions();

    @Mixin
    private final JsonOption json = new JsonOption();

    ColdCommand(Printer printer, InputStream in) {
        this.printer = printer;
        this.in = in;
    }

    @Override
    public Integer call() {
        HourWorth worth = worth();
        double weeks = need.map(Given::weeks).orElse(USUAL_NEED);
        Contents read = new TemperatureFile(new FileIn(file, in), logger).read();
        Thermograph all = read.thermograph().between(from, to);
        Provisos provisos = new Provisos(warnings(all, read), read.assumed());
        new Sight(() -> all.document(worth, weeks, provisos), () -> all.lines(worth, weeks), provisos.warnings(), "")
                .show(json, printer);
        return ExitCode.DONE;
    }

    private HourWorth worth() {
        return switch (profile) {
            case "graded" -> ColdWeight.USUAL;
            case "count" -> StrictCount.HOURS;
            default -> throw new Misused("'" + profile + "' is no way to count cold. Write graded or count.");
        };
    }

    private static List<Warned> warnings(Thermograph all, Contents read) {
        return all.isEmpty()
                ? List.of(new Warned("no-readings", "There is no temperature in that stretch."))
                : read.warnings();
    }
}
