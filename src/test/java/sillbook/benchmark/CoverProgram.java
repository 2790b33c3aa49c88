// SPDX-License-Identifier: Apache-2.0
package sillbook.benchmark;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sillbook.reckon.cover.ColdStay;
import sillbook.reckon.cover.DayWish;
import sillbook.reckon.cover.PotGroup;
import sillbook.reckon.cover.Room;
import sillbook.reckon.cover.Season;
import sillbook.reckon.cover.Tally;
import sillbook.reckon.cover.Task;

/** A season to be kept in bloom as an integer program, a goal after the other, solved by CBC (Debian: {@code coinor-cbc}): each day to come in at each site, and from each cold place, is a variable. */
record CoverProgram(Task task, Path folder) {
    private static final int MOST_SECONDS = 60;
    private static final int NO_COLD = -1;

    /**
     * What all goals came to.
     *
     * @param isOptimal whether the time sufficed to prove each
     */
    record Solved(Tally tally, boolean isOptimal, double seconds) {}

    private record One(int value, boolean isOptimal, double seconds) {}

    private record Variable(int group, int day, int site, int cold, int first, int last) {
        String name() {
            return "x_" + group + "_" + day + "_" + site + (cold == NO_COLD ? "" : "_" + cold);
        }
    }

    /** Empty where there is no CBC. */
    Optional<Solved> solve() throws IOException {
        List<Variable> variables = variables();
        List<String> rows = rows(variables);
        List<One> solved = new ArrayList<>();
        for (String goal : List.of(lacks(), gaps(), sum(variables, way -> 1), sum(variables, this::length))) {
            Optional<One> one = goal.isEmpty() ? Optional.of(new One(0, true, 0)) : solve(goal, rows, variables);
            if (one.isEmpty()) {
                return Optional.empty();
            }
            solved.add(one.get());
            if (!goal.isEmpty()) {
                rows.add(goal + " <= " + one.get().value());
            }
        }
        int gapDays = solved.get(1).value();
        int overlap = solved.get(3).value() - (task.season().days() - gapDays);
        return Optional.of(new Solved(
                new Tally(solved.get(0).value(), gapDays, solved.get(2).value(), overlap),
                solved.stream().allMatch(One::isOptimal),
                solved.stream().mapToDouble(One::seconds).sum()));
    }

    /** A pot that is in bloom on no day of the season does nothing in it. */
    private List<Variable> variables() {
        List<Variable> variables = new ArrayList<>();
        for (int group = 0; group < task.pots().size(); group++) {
            PotGroup pots = task.pots().get(group);
            List<Integer> colds = pots.cold().map(ColdStay::places).orElse(List.of(NO_COLD));
            for (int day = pots.earliest(); day <= pots.latest(); day++) {
                for (int site = 0; site < task.sites().size(); site++) {
                    for (int cold : colds) {
                        Variable way = new Variable(group, day, site, cold, pots.firstBloom(day), pots.lastBloom(day));
                        if (length(way) > 0) {
                            variables.add(way);
                        }
                    }
                }
            }
        }
        return variables;
    }

    private int length(Variable way) {
        Season season = task.season();
        return Math.max(0, Math.min(way.last(), season.last()) - Math.max(way.first(), season.first()) + 1);
    }

    private String lacks() {
        return IntStream.range(0, task.wishes().size())
                .mapToObj(wish -> " + w_" + wish)
                .collect(Collectors.joining());
    }

    private String gaps() {
        return IntStream.rangeClosed(task.season().first(), task.season().last())
                .mapToObj(day -> " + u_" + day)
                .collect(Collectors.joining());
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
        for (int number = 0; number < task.wishes().size(); number++) {
            DayWish wish = task.wishes().get(number);
            Predicate<Variable> helps = way -> way.first() <= wish.day()
                    && wish.day() <= way.last()
                    && (wish.groups().isEmpty() || wish.groups().contains(way.group()));
            rows.add(some(variables, helps) + " + w_" + number + " >= " + wish.count());
        }
        for (int group = 0; group < task.pots().size(); group++) {
            int number = group;
            addLimit(
                    some(variables, way -> way.group() == number),
                    task.pots().get(group).count(),
                    rows);
        }
        for (int site = 0; site < task.sites().size(); site++) {
            int place = site;
            addRoom(
                    task.sites().get(site),
                    variables,
                    Variable::day,
                    (way, day) -> way.site() == place && way.day() <= day && day <= way.last(),
                    rows);
        }
        for (int cold = 0; cold < task.colds().size(); cold++) {
            int place = cold;
            addRoom(
                    task.colds().get(cold),
                    variables,
                    this::from,
                    (way, day) -> way.cold() == place && from(way) <= day && day < way.day(),
                    rows);
        }
        return rows;
    }

    /** The day a pot goes into the cold. */
    private int from(Variable way) {
        return task.pots()
                .get(way.group())
                .cold()
                .map(stay -> Math.max(stay.from(), way.day() - stay.atMost()))
                .orElse(way.day());
    }

    /** Room is looked at on the days on which something comes. */
    private void addRoom(
            Room room,
            List<Variable> variables,
            ToIntFunction<Variable> coming,
            BiPredicate<Variable, Integer> stands,
            List<String> rows) {
        int[] days = variables.stream().mapToInt(coming).distinct().sorted().toArray();
        for (int day : days) {
            room.most()
                    .ifPresent(most -> addLimit(
                            sum(
                                    variables,
                                    way -> stands.test(way, day)
                                            ? task.pots().get(way.group()).takes()
                                            : 0),
                            most,
                            rows));
        }
    }

    private static void addLimit(String sum, int most, List<String> rows) {
        if (!sum.isEmpty()) {
            rows.add(sum + " <= " + most);
        }
    }

    private static String some(List<Variable> variables, Predicate<Variable> wanted) {
        return sum(variables, way -> wanted.test(way) ? 1 : 0);
    }

    /** Pots that are alike are counted, and lacks; else it is yes or no. */
    private String program(String goal, List<String> rows, List<Variable> variables) {
        Map<Boolean, String> names = variables.stream()
                .collect(Collectors.partitioningBy(
                        way -> task.pots().get(way.group()).count() == 1,
                        Collectors.mapping(Variable::name, Collectors.joining("\n"))));
        return "minimize\n" + goal + "\nsubject to\n" + String.join("\n", rows) + "\ngenerals\n" + names.get(false)
                + lacks().replace(" + ", "\n") + "\nbinaries\n" + names.get(true) + gaps().replace(" + ", "\n")
                + "\nend\n";
    }

    private Optional<One> solve(String goal, List<String> rows, List<Variable> variables) throws IOException {
        Files.writeString(folder.resolve("cover.lp"), program(goal, rows, variables), UTF_8);
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
        return Optional.of(new One((int) Math.round(value), said.startsWith("Optimal"), seconds));
    }
}
