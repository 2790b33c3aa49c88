// SPDX-License-Identifier: Apache-2.0
package sillbook.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import sillbook.benchmark.CoverProgram.Solved;
import sillbook.reckon.cover.Plan;
import sillbook.reckon.cover.Planner;
import sillbook.reckon.cover.Tally;
import sillbook.reckon.cover.Task;
import sillbook.reckon.cover.Watch;
import sillbook.reckon.cover.WorkedSeason;

/** How long it takes to find and prove the best days to bring pots in, and how long CBC takes for the same seasons in the same run; of several runs the best. */
record CoverSpeed(Path folder) {
    private static final int SEASONS = 5;
    private static final int RUNS = 3;

    /** A run that takes longer is not done again, in seconds. */
    private static final double LONG = 8;

    /** The figures, a line each. */
    String measure() throws IOException {
        Planner.plan(new SeededSeason(0).plain());
        List<String> lines = new ArrayList<>();
        lines.add(
                "cover: pots lacking for wishes, days without bloom, pots, overlap; first plan; all; CBC, of which ours is so much");
        for (Map.Entry<String, Task> task : tasks().entrySet()) {
            lines.add(measure(task.getKey(), task.getValue()));
        }
        return String.join(System.lineSeparator(), lines);
    }

    private static Map<String, Task> tasks() {
        Map<String, Task> tasks = new LinkedHashMap<>();
        WorkedSeason.all().forEach(season -> tasks.put(season.toString(), season.task()));
        for (int seed = 1; seed <= SEASONS; seed++) {
            tasks.put("60 pots, season " + seed, new SeededSeason(seed).plain());
        }
        for (int seed = 1; seed <= SEASONS; seed++) {
            tasks.put("60 pots, crowded season " + seed, new SeededSeason(seed).crowded());
        }
        return tasks;
    }

    private String measure(String name, Task task) throws IOException {
        Run own = Run.of(task);
        for (int run = 1; run < RUNS && own.seconds < LONG; run++) {
            own = own.or(Run.of(task));
        }
        Plan plan = own.plan;
        return String.format(
                Locale.ROOT,
                "%-32s %s, %s; first %.3f s, all %.3f s; %s",
                name,
                said(plan.tally()),
                plan.isProven() ? "proven" : "at least " + said(plan.bound()),
                own.first,
                own.seconds,
                beside(task, own));
    }

    private String beside(Task task, Run own) throws IOException {
        Optional<Solved> cbc = new CoverProgram(task, folder).solve();
        if (cbc.isEmpty()) {
            return "CBC is not here: no ratio";
        }
        double seconds = cbc.get().seconds();
        for (int run = 1; run < RUNS && seconds < LONG; run++) {
            seconds = Math.min(
                    seconds,
                    new CoverProgram(task, folder).solve().orElseThrow().seconds());
        }
        return String.format(
                Locale.ROOT,
                "CBC %s, %s, %.2f s: %.3f of its time, %s",
                said(cbc.get().tally()),
                cbc.get().isOptimal() ? "proven" : "when its time was up",
                seconds,
                own.seconds / seconds,
                cbc.get().tally().equals(own.plan.tally()) ? "the same" : "not the same");
    }

    private static String said(Tally tally) {
        return tally.unmet() + " " + tally.gapDays() + " " + tally.used() + " " + tally.overlap();
    }

    /**
     * One search.
     *
     * @param first when the first plan that uses a pot was there
     */
    private record Run(Plan plan, double first, double seconds) {
        static Run of(Task task) {
            Stopwatch watch = new Stopwatch();
            Plan plan = Planner.plan(task, Planner.USUAL_EFFORT, watch);
            return new Run(plan, watch.first, watch.seconds());
        }

        /** The quicker of two that found the same, as all do. */
        Run or(Run other) {
            return other.seconds < seconds ? other : this;
        }
    }

    private static final class Stopwatch implements Watch {
        private final long begun = System.nanoTime();
        private double first = Double.NaN;

        double seconds() {
            return (System.nanoTime() - begun) / 1e9;
        }

        @Override
        public boolean wantsStop() {
            return false;
        }

        @Override
        public void found(Plan best) {
            if (Double.isNaN(first) && best.tally().used() > 0) {
                first = seconds();
            }
        }
    }
}
