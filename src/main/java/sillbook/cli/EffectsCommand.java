// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.io.InputStream;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sillbook.exchange.EffectsJson;
import sillbook.reckon.effects.Confounding;
import sillbook.reckon.effects.Design;
import sillbook.reckon.effects.Effects;
import sillbook.words.EffectWords;
import sillbook.words.Provisos;

/** Tells apart what made scores high or low, without a journal. */
@Command(
        name = "effects",
        description = {
            "Tell apart what made scores high or low: a CSV file of scores, one a row, and of what each was made under;"
                    + " - reads the standard input.",
            "average takes in how little is known of the spread, for scores of about 1 to 5; reml takes one spread for"
                    + " certain, the likeliest."
        })
final class EffectsCommand implements Callable<Integer> {
    private final Printer printer;
    private final InputStream in;

    @Parameters(paramLabel = "FILE", description = "Separated values in UTF-8, the columns named in the first row.")
    private String file = "";

    @Option(names = "--score", paramLabel = "COLUMN", description = "The column of scores, always wanted.")
    private Optional<String> score = Optional.empty();

    @Option(
            names = "--factors",
            paramLabel = "A,B,C",
            description = "The columns of what they were made under, always wanted.")
    private Optional<String> factors = Optional.empty();

    @Option(names = "--method", paramLabel = "METHOD", description = "reml or average; average if not said.")
    private String method = "average";

    @Mixin
    private final JsonOption json = new JsonOption();

    EffectsCommand(Printer printer, InputStream in) {
        this.printer = printer;
        this.in = in;
    }

    @Override
    public Integer call() {
        EffectsMethod by = EffectsMethod.named(method);
        String of =
                score.orElseThrow(() -> new Misused("It is not said which column holds the scores. Write --score."));
        List<String> under = names();
        ScoreTable scores = ScoreTable.read(new FileIn(file, in).readTable(), of, under);
        Design design = EffectsMethod.design(under, scores.observations());
        Effects effects = by.effects(design, scores.observations());
        Provisos provisos = by.provisos(design, scores);
        Confounding confounding = Confounding.of(design);
        EffectWords words = EffectWords.of(effects);
        new Sight(
                        () -> EffectsJson.write(effects, confounding, design.nested(), provisos),
                        () -> words.lines(effects, confounding, design),
                        provisos.warnings(),
                        "")
                .show(json, printer);
        return ExitCode.DONE;
    }

    private List<String> names() {
        List<String> names = factors.map(text ->
                        Stream.of(text.split(",", -1)).map(String::strip).toList())
                .orElseThrow(() -> new Misused("It is not said what the scores were made under. Write --factors A,B."));
        if (names.stream().anyMatch(String::isEmpty)) {
            throw new Misused("'" + factors.orElse("") + "' names an empty column. Write --factors A,B.");
        }
        if (names.stream().distinct().count() < names.size()) {
            throw new Misused("'" + factors.orElse("") + "' names a column twice.");
        }
        return names;
    }
}
