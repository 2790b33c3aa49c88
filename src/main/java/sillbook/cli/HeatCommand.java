// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.InputStream;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sillbook.cli.TemperatureFile.Contents;
import sillbook.exchange.HeatJson;
import sillbook.reckon.heat.ThermalTime;
import sillbook.words.HeatFigures;
import sillbook.words.Provisos;

/** Adds up warmth until a sum is reached, without a journal. */
@Command(
        name = "heat",
        description = {
            "Add up the degree-days in a thermometer's file, or in a CSV file of days with their lowest and highest, until"
                    + " a sum is reached; - reads the standard input.",
            "Between two readings it goes evenly; a day known by its two ends counts as a sine wave between them. Degrees in C."
        })
final class HeatCommand implements Callable<Integer> {
    private final Printer printer;
    private final InputStream in;

    @Parameters(paramLabel = "FILE", description = TemperatureFile.DESCRIPTION)
    private String file = "";

    @Option(names = "--base", paramLabel = "T", description = "What warmth counts above; 4.4 if not said.")
    private Optional<String> base = Optional.empty();

    @Option(names = "--need", paramLabel = "DD", description = "How many degree-days, always wanted.")
    private Optional<String> need = Optional.empty();

    @Option(names = "--from", paramLabel = "DAY", description = "The first day that counts, always wanted.")
    private Optional<String> from = Optional.empty();

    @Mixin
    private final LoggerOptions logger = new LoggerOptions();

    @Mixin
    private final JsonOption json = new JsonOption();

    HeatCommand(Printer printer, InputStream in) {
        this.printer = printer;
        this.in = in;
    }

    @Override
    public Integer call() {
        double sum = need.map(Given::number)
                .orElseThrow(() -> new Misused("It is not said how many degree-days are needed. Write --need."));
        if (!(sum > 0)) {
            throw new Misused("A need of " + need.orElse("") + " degree-days is none. Write a number above 0.");
        }
        LocalDate first = from.map(Moments::givenDay)
                .orElseThrow(() -> new Misused("It is not said from which day on. Write --from 2027-02-01."));
        Contents read = new TemperatureFile(new FileIn(file, in), logger).read();
        ThermalTime time = new ThermalTime(base.map(Given::celsius).orElse(ThermalTime.TULIP_BASE), sum);
        Optional<ThermalTime.Met> met = time.met(read.thermograph().degreeDays(time.base()), first);
        double unaccounted = read.thermograph().between(from, last(met)).unaccounted();
        Provisos provisos = new Provisos(read.warnings(), read.assumed());
        new Sight(
                        () -> HeatJson.write(met, unaccounted, provisos),
                        () -> HeatFigures.lines(time, met, unaccounted),
                        provisos.warnings(),
                        "")
                .show(json, printer);
        return ExitCode.DONE;
    }

    /** What comes after the day that the sum is reached on does not matter. */
    private static Optional<String> last(Optional<ThermalTime.Met> met) {
        return met.map(ThermalTime.Met::day).map(LocalDate::toString);
    }
}
