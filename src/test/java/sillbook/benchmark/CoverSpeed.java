// SPDX-License-Identifier: Apache-2.0
package sillbook.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import sillbook.benchmark.CoverProgram.Solved;
import sillbook.reckon.cover.Plan;
import sillbook.reckon.cover.Planner;
import sillbook.reckon.cover.PotGroup;
import sillbook.reckon.cover.Room;
import sillbook.reckon.cover.Season;
import sillbook.reckon.cover.Tally;
import sillbook.reckon.cover.Task;
import sillbook.reckon.cover.Watch;

/** How long it takes to find and prove the best days to bring pots in, and how long CBC takes for the same seasons in the same run. */
record CoverSpeed(Path folder) {
    private static final int[][] KINDS = {{21, 8}, {16, 9}, {14, 10}, {24, 12}, {18, 7}, {28, 6}};
    private static final int SEASONS = 5;
    private static final int POTS = 60;
    private static final Season WINTER = new Season(100, 219);

    /** The figures, a line each. */
    String measure() throws IOException {
        Planner.plan(season(0));
        List<String> lines = new ArrayList<>();
        for (Map.Entry<String, Task> task : tasks().entrySet()) {
            lines.add(measure(task.getKey(), task.getValue()));
        }
        return String.join(System.lineSeparator(), lines);
    }

    private String measure(String name, Task task) throws IOException {
        Stopwatch watch = new Stopwatch();
        Plan plan = Planner.plan(task, Planner.USUAL_EFFORT, watch);
        double seconds = watch.seconds();
        String beside = new CoverProgram(task, folder)
                .solve()
                .map(cbc -> said(cbc, seconds))
                .orElse("CBC is not here: no ratio");
        return String.format(
                Locale.ROOT,
                "cover, %-9s %s, %s; first plan %.3f s, all %.3f s; %s",
                name,
                said(plan.tally()),
                plan.isProven() ? "proven" : "not below " + said(plan.bound()),
                watch.first,
                seconds,
                beside);
    }

    private static String said(Tally tally) {
        return tally.gapDays() + " days without, " + tally.used() + " pots, overlap " + tally.overlap();
    }

    private static String said(List<Solved> cbc, double seconds) {
        double all = cbc.stream().mapToDouble(Solved::seconds).sum();
        boolean isOptimal = cbc.stream().allMatch(Solved::isOptimal);
        return String.format(
                Locale.ROOT,
                "CBC %d days without, %d pots, %d in bloom%s, %.2f s: %.3f of its time",
                cbc.get(0).value(),
                cbc.get(1).value(),
                cbc.get(2).value(),
                isOptimal ? "" : " when its time was up",
                all,
                seconds / all);
    }

    private static Map<String, Task> tasks() {
        Map<String, Task> tasks = new LinkedHashMap<>();
        for (int room : new int[] {4, 3, 2}) {
            tasks.put("room " + room, twelve(room));
        }
        for (int seed = 1; seed <= SEASONS; seed++) {
            tasks.put("season " + seed, season(seed));
        }
        return tasks;
    }

    /** Six tulips, four hyacinths and two large narcissus on one shelf. */
    private static Task twelve(int room) {
        List<PotGroup> pots = new ArrayList<>();
        IntStream.range(0, 6).forEach(i -> pots.add(PotGroup.of(35 + 5 * i, 55 + 5 * i, 21, 7, 1)));
        IntStream.range(0, 4).forEach(i -> pots.add(PotGroup.of(40 + 8 * i, 60 + 8 * i, 14, 9, 1)));
        IntStream.range(0, 2).forEach(i -> pots.add(PotGroup.of(45 + 20 * i, 70 + 20 * i, 17, 8, 2)));
        return new Task(new Season(60, 114), List.of(Room.of(room)), List.of(), pots, List.of());
    }

    /** Sixty pots, each another, on three tight sills. */
    private static Task season(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<PotGroup> pots =
                IntStream.range(0, POTS).mapToObj(pot -> pot(random)).toList();
        List<Room> sites = List.of(Room.of(1 + seed % 2), Room.of(1), Room.of(1 + seed % 3));
        return new Task(WINTER, sites, List.of(), pots, List.of());
    }

    private static PotGroup pot(SplittableRandom random) {
        int[] kind = KINDS[random.nextInt(KINDS.length)];
        int toBloom = kind[0] + random.nextInt(5) - 2;
        int lasts = kind[1] + random.nextInt(3) - 1;
        int earliest = WINTER.first() - toBloom - 5 + random.nextInt(WINTER.days());
        int takes = random.nextInt(4) == 0 ? 2 : 1;
        return PotGroup.of(earliest, earliest + 2 + random.nextInt(9), toBloom, lasts, takes);
    }

    /** Notes when the first plan that uses a pot is there. */
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
