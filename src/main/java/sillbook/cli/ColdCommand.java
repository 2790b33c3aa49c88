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
import sillbook.reckon.cold.ColdWeight;
import sillbook.reckon.cold.HourWorth;
import sillbook.reckon.cold.StrictCount;
import sillbook.reckon.cold.Trace;
import sillbook.words.Counts;
import sillbook.words.Provisos;
import sillbook.words.Warned;

/** Adds up the cold of a file of temperatures, without a journal. */
@Command(
        name = "cold",
        description = {
            "Add up the cold in a CSV file of temperatures: moments with one each, days with their lowest and highest, or"
                    + " spans from and to with theirs; - reads the standard input.",
            "graded counts an hour from 2 to 9 C in full, and less and less of it down to 0 and up to 13 C; count takes"
                    + " an hour above 0 and up to 9 C for one, and any other for none."
        })
final class ColdCommand implements Callable<Integer> {
    private static final double USUAL_NEED = 14;

    private final Printer printer;
    private final InputStream in;

    @Parameters(paramLabel = "FILE", description = "Separated values in UTF-8, the columns named in the first row.")
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
    private final JsonOption json = new JsonOption();

    ColdCommand(Printer printer, InputStream in) {
        this.printer = printer;
        this.in = in;
    }

    @Override
    public Integer call() {
        HourWorth worth = worth();
        double weeks = need.map(Given::weeks).orElse(USUAL_NEED);
        TemperatureTable table = new TemperatureTable(new FileIn(file, in).readTable());
        Thermograph all = table.read(Trace.HALF_A_DAY).between(from, to);
        Provisos provisos = new Provisos(warnings(all, table), table.assumed());
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

    private static List<Warned> warnings(Thermograph all, TemperatureTable table) {
        if (all.isEmpty()) {
            return List.of(new Warned("no-readings", "There is no temperature in that stretch."));
        }
        return table.leftOut().isEmpty()
                ? List.of()
                : List.of(new Warned(
                        "no-value",
                        "Left out, without a temperature: "
                                + Counts.of(table.leftOut().size(), "row") + "."));
    }
}
