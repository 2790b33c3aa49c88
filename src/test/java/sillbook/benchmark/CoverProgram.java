// SPDX-License-Identifier: Apache-2.0
package sillbook.benchmark;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import sillbook.reckon.cover.PotGroup;
import sillbook.reckon.cover.Season;
import sillbook.reckon.cover.Task;

/** A season to be kept in bloom as an integer program, a goal after the other, solved by CBC (Debian: {@code coinor-cbc}): each day to come in at each site is a variable. */
record CoverProgram(Task task, Path folder) {
    private static final int MOST_SECONDS = 60;

    /**
     * What a goal came to.
     *
     * @param isOptimal whether the time sufficed to prove it
     */
    record Solved(int value, boolean isOptimal, double seconds) {}

    private record Variable(int group, int day, int site, int first, int last) {
        String name() {
            return "x_" + group + "_" + day + "_" + site;
        }
    }

    /** Days without bloom, pots used, days in bloom; empty where there is no CBC. */
    Optional<List<Solved>> solve() throws IOException {
        List<Variable> variables = variables();
        List<String> rows = rows(variables);
        List<Solved> solved = new ArrayList<>();
        for (String goal : List.of(gaps(), sum(variables, way -> 1), sum(variables, this::length))) {
            Optional<Solved> one = solve(goal, rows, variables);
            if (one.isEmpty()) {
                return Optional.empty();
            }
            solved.add(one.get());
            rows.add(goal + " <= " + one.get().value());
        }
        return Optional.of(solved);
    }

    private List<Variable> variables() {
        List<Variable> variables = new ArrayList<>();
        for (int group = 0; group < task.pots().size(); group++) {
            PotGroup pots = task.pots().get(group);
            for (int day = pots.earliest(); day <= pots.latest(); day++) {
                for (int site = 0; site < task.sites().size(); site++) {
                    variables.add(new Variable(group, day, site, pots.firstBloom(day), pots.lastBloom(day)));
                }
            }
        }
        return variables;
    }

    private int length(Variable way) {
        Season season = task.season();
        return Math.max(0, Math.min(way.last(), season.last()) - Math.max(way.first(), season.first()) + 1);
    }

    private String gaps() {
        StringBuilder sum = new StringBuilder();
        for (int day = task.season().first(); day <= task.season().last(); day++) {
            sum.append(" + u_").append(day);
        }
        return sum.toString();
    }

    private static String sum(List<Variable> variables, ToIntFunction<Variable> times) {
        return variables.stream()
                .filter(way -> times.applyAsInt(way) > 0)
                .map(way -> " + " + times.applyAsInt(way) + " " + way.name())
                .collect(Collectors.joining("\n"));
    }

    private List<String> rows(List<Variable> variables) {
        List<String> rows = new ArrayList<>();
        for (int day = task.season().first(); day <= task.season().last(); day++) {
            int bloom = day;
            rows.add(some(variables, way -> way.first() <= bloom && bloom <= way.last()) + " + u_" + day + " >= 1");
        }
        for (int group = 0; group < task.pots().size(); group++) {
            int number = group;
            rows.add(some(variables, way -> way.group() == number) + " <= "
                    + task.pots().get(group).count());
        }
        for (int site = 0; site < task.sites().size(); site++) {
            addRoom(site, variables, rows);
        }
        return rows;
    }

    private void addRoom(int site, List<Variable> variables, List<String> rows) {
        int[] days =
                variables.stream().mapToInt(Variable::day).distinct().sorted().toArray();
        if (task.sites().get(site).most().isPresent()) {
            for (int day : days) {
                Predicate<Variable> stands = way -> way.site() == site && way.day() <= day && day <= way.last();
                rows.add(sum(
                                variables,
                                way -> stands.test(way)
                                        ? task.pots().get(way.group()).takes()
                                        : 0) + " <= "
                        + task.sites().get(site).most().getAsInt());
            }
        }
    }

    private static String some(List<Variable> variables, Predicate<Variable> wanted) {
        return sum(variables, way -> wanted.test(way) ? 1 : 0);
    }

    private Optional<Solved> solve(String goal, List<String> rows, List<Variable> variables) throws IOException {
        String names = variables.stream().map(Variable::name).collect(Collectors.joining("\n"));
        Files.writeString(
                folder.resolve("cover.lp"),
                "minimize\n" + goal + "\nsubject to\n" + String.join("\n", rows) + "\nbinaries\n" + names + "\n"
                        + gaps().replace(" + ", "\n") + "\nend\n",
                UTF_8);
        long begun = System.nanoTime();
        try {
            Process cbc = new ProcessBuilder(
                            "cbc", "cover.lp", "sec", Integer.toString(MOST_SECONDS), "solve", "solu", "cover.txt")
                    .directory(folder.toFile())
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            cbc.waitFor();
        } catch (IOException notThere) {
            return Optional.empty();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
        double seconds = (System.nanoTime() - begun) / 1e9;
        String said = Files.readAllLines(folder.resolve("cover.txt"), UTF_8).get(0);
        double value = Double.parseDouble(said.substring(said.lastIndexOf(' ') + 1));
        return Optional.of(new Solved((int) Math.round(value), said.startsWith("Optimal"), seconds));
    }
}
