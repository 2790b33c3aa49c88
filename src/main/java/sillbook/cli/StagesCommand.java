// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sillbook.exchange.StagesJson;
import sillbook.model.OwnFigure.Range;
import sillbook.reckon.stages.NormalInverseGamma;
import sillbook.reckon.stages.Outliers;
import sillbook.reckon.stages.Sample;
import sillbook.reckon.stages.StudentT;
import sillbook.reckon.stages.ThreePoints;
import sillbook.words.LearntWords;
import sillbook.words.Provisos;

/** Works out how long the next stage lasts, from what was published and one's own, without a journal. */
@Command(
        name = "stages",
        description = {
            "Work out how long a stage lasts next time, from what was published and what it took before.",
            "Days, or weeks where 'wk' follows. L,T,H is the least, the usual and the most; it counts as much as two"
                    + " lengths of your own."
        })
final class StagesCommand implements Callable<Integer> {
    private final Printer printer;

    @Option(names = "--prior", paramLabel = "L,T,H", description = "What was published, always wanted.")
    private Optional<String> prior = Optional.empty();

    @Option(names = "--own", paramLabel = "D,D,...", description = "How long it took so far, a number for each time.")
    private Optional<String> own = Optional.empty();

    @Mixin
    private final JsonOption json = new JsonOption();

    StagesCommand(Printer printer) {
        this.printer = printer;
    }

    @Override
    public Integer call() {
        NormalInverseGamma before = NormalInverseGamma.before(published());
        List<Double> days = own.map(Given::daysList).orElse(List.of());
        StudentT next = before.after(Sample.of(days)).next();
        LearntWords words = new LearntWords();
        Provisos provisos = new Provisos(
                words
                        .outliers(Outliers.among(days, before).stream()
                                .map(days::get)
                                .toList())
                        .stream()
                        .toList(),
                List.of());
        new Sight(() -> StagesJson.write(next, provisos), () -> words.lines(next), provisos.warnings(), "")
                .show(json, printer);
        return ExitCode.DONE;
    }

    private ThreePoints published() {
        Range range = Given.daysRange(
                prior.orElseThrow(() -> new Misused("No published length is given. Write --prior and L,T,H.")));
        return new ThreePoints(range.low(), range.typical(), range.high());
    }
}
