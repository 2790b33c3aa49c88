// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sillbook.reckon.cover.Plan;
import sillbook.reckon.cover.PotGroup;
import sillbook.reckon.cover.Pull;
import sillbook.reckon.cover.Tally;
import sillbook.reckon.cover.Task;

/** The days to bring pots in, in plain lines. Pots and places are counted from 1. */
public record CoverFigures(Task task, Plan plan) {

    /** One for each pot in the order of the task, empty where it is not used. */
    public static List<Optional<Pull>> pots(Task task, Plan plan) {
        List<Optional<Pull>> pots = new ArrayList<>();
        for (int group = 0; group < task.pots().size(); group++) {
            int number = group;
            Deque<Pull> pulls = plan.pulls().stream()
                    .filter(pull -> pull.group() == number)
                    .collect(Collectors.toCollection(ArrayDeque::new));
            for (int pot = 0; pot < task.pots().get(group).count(); pot++) {
                pots.add(Optional.ofNullable(pulls.poll()));
            }
        }
        return pots;
    }

    /** How far a search has come. */
    public static String soFar(Plan plan) {
        Tally tally = plan.tally();
        return Counts.of(tally.gapDays(), "day") + " without bloom (at least "
                + plan.bound().gapDays() + "), " + Counts.of(tally.used(), "pot") + " so far";
    }

    /** A fact a line. */
    public List<String> lines() {
        Tally tally = plan.tally();
        Tally bound = plan.bound();
        List<String> lines = new ArrayList<>();
        if (!task.wishes().isEmpty()) {
            lines.add("pots that wishes lack: " + said(tally.unmet(), bound.unmet()));
        }
        lines.add("days without bloom: " + said(tally.gapDays(), bound.gapDays()) + longest());
        lines.add("pots used: " + said(tally.used(), bound.used()));
        lines.add("overlap: " + said(tally.overlap(), bound.overlap()));
        List<Optional<Pull>> pots = pots(task, plan);
        pots.forEach(pot -> pot.ifPresent(pull -> lines.add(line(pull))));
        unused().ifPresent(lines::add);
        return lines;
    }

    /** What a number is, and whether it can be less. */
    private static String said(int number, int bound) {
        return number + (number == bound ? ", proven the least" : ", the least found; at least " + bound);
    }

    private String longest() {
        return plan.tally().gapDays() == 0 ? "" : "; " + plan.longestGap() + " of them in a row at most";
    }

    private String line(Pull pull) {
        PotGroup pots = task.pots().get(pull.group());
        String site = task.sites().size() == 1 ? "" : ", site " + (pull.site() + 1);
        String cold = pull.cold().isEmpty() || task.colds().size() == 1
                ? ""
                : ", from cold place " + (pull.cold().getAsInt() + 1);
        return "pot " + (pull.group() + 1) + ": in on day " + pull.day() + ", in bloom from "
                + pots.firstBloom(pull.day()) + " to " + pots.lastBloom(pull.day()) + site + cold;
    }

    private Optional<String> unused() {
        List<String> unused = IntStream.range(0, task.pots().size())
                .filter(group -> left(group) > 0)
                .mapToObj(group -> task.pots().get(group).count() == 1
                        ? "pot " + (group + 1)
                        : left(group) + " of pot " + (group + 1))
                .toList();
        return unused.isEmpty() ? Optional.empty() : Optional.of("not used: " + String.join(", ", unused));
    }

    private long left(int group) {
        return task.pots().get(group).count()
                - plan.pulls().stream().filter(pull -> pull.group() == group).count();
    }
}
