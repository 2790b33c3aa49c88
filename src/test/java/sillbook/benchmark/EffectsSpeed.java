// SPDX-License-Identifier: Apache-2.0
package sillbook.benchmark;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sillbook.reckon.effects.Averaging;
import sillbook.reckon.effects.Design;
import sillbook.reckon.effects.Effects;
import sillbook.reckon.effects.Nested;
import sillbook.reckon.effects.Observation;
import sillbook.reckon.effects.Prior;
import sillbook.reckon.effects.Reml;

/** How long effects take for thirty winters of two hundred pots, and how long R's lme4 takes for the same fit in the same run. */
record EffectsSpeed(Path folder) {
    private static final List<String> FACTORS = List.of("kind", "variety", "mix", "place", "winter");
    private static final int[] LEVELS = {12, 60, 6, 8, 30};
    private static final int POTS_A_WINTER = 200;
    private static final int TIMES = 15;

    private static final String SCRIPT = """
            suppressMessages(library(lme4))
            pots <- read.csv("pots.csv", stringsAsFactors = TRUE)
            for (f in c("kind", "variety", "mix", "place", "winter")) pots[[f]] <- factor(pots[[f]])
            millis <- c()
            for (i in 1:15) {
              begun <- proc.time()[["elapsed"]]
              fit <- suppressMessages(lmer(score ~ 1 + (1|kind) + (1|variety) + (1|mix) + (1|place) + (1|winter), pots))
              millis <- c(millis, 1000 * (proc.time()[["elapsed"]] - begun))
            }
            cat(median(millis), sprintf("%.4f", REMLcrit(fit)), "\\n")
            """;

    /** The figures, a line each. */
    String measure() throws IOException {
        List<Observation> pots = pots();
        Design design = Design.of(FACTORS, pots, List.of(new Nested("variety", "kind")));
        long begun = System.nanoTime();
        Effects staying = Averaging.over(design, Prior.WHOLE_SCORES).orElseThrow();
        double averaged = (System.nanoTime() - begun) / 1e6;
        Sample reml = new Sample();
        Effects effects = Reml.fit(design).orElseThrow();
        for (int i = 0; i < TIMES; i++) {
            begun = System.nanoTime();
            effects = Reml.fit(design).orElseThrow();
            reml.add(System.nanoTime() - begun);
        }
        double criterion = effects.criterion().orElseThrow();
        return String.format(
                Locale.ROOT,
                "effects         averaged %.0f ms the first time, of %d pots, as good as %.0f points%neffects, REML   median %.1f ms, criterion"
                        + " %.4f; %s",
                averaged,
                pots.size(),
                staying.effectiveSize().orElseThrow(),
                reml.medianMillis(),
                criterion,
                beside(pots).map(r -> said(r, reml.medianMillis())).orElse("R with lme4 is not here: no ratio"));
    }

    private static String said(double[] r, double millis) {
        return String.format(Locale.ROOT, "lme4 %.0f ms, criterion %.4f: %.3f of its time", r[0], r[1], millis / r[0]);
    }

    private static List<Observation> pots() {
        SplittableRandom random = new SplittableRandom(30);
        double[][] truths = Arrays.stream(LEVELS)
                .mapToObj(levels -> random.doubles(levels)
                        .map(any -> .4 * random.nextGaussian())
                        .toArray())
                .toArray(double[][]::new);
        List<Observation> pots = new ArrayList<>();
        for (int pot = 0; pot < LEVELS[4] * POTS_A_WINTER; pot++) {
            int variety = random.nextInt(LEVELS[1]);
            int[] levels = {
                variety % LEVELS[0], variety, random.nextInt(LEVELS[2]), random.nextInt(LEVELS[3]), pot / POTS_A_WINTER
            };
            double score = 3.5 + .7 * random.nextGaussian();
            for (int f = 0; f < levels.length; f++) {
                score += truths[f][levels[f]];
            }
            pots.add(Observation.of(
                    Math.max(1, Math.min(5, Math.rint(score))),
                    IntStream.of(levels).mapToObj(String::valueOf).toList()));
        }
        return pots;
    }

    /** The milliseconds R took for the fit alone, and its criterion; empty where there is no R, or no lme4 in it. */
    private Optional<double[]> beside(List<Observation> pots) throws IOException {
        Files.writeString(folder.resolve("pots.csv"), table(pots), UTF_8);
        Files.writeString(folder.resolve("effects.R"), SCRIPT, UTF_8);
        try {
            Process r = new ProcessBuilder("Rscript", "effects.R")
                    .directory(folder.toFile())
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            String answer = new String(r.getInputStream().readAllBytes(), UTF_8).strip();
            return r.waitFor() == 0
                    ? Optional.of(Arrays.stream(answer.split(" "))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    : Optional.empty();
        } catch (IOException notThere) {
            return Optional.empty();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }

    private static String table(List<Observation> pots) {
        return pots.stream()
                .map(pot -> pot.score() + "," + String.join(",", pot.levels()))
                .collect(Collectors.joining("\n", "score," + String.join(",", FACTORS) + "\n", "\n"));
    }
}
