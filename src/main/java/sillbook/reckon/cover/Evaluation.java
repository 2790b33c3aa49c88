// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What pots come to that are brought in on given days: nothing is sought, and it may be more than there is room for. A pot that comes in before or after its own days takes as long as on the nearest of them.
 *
 * @param inBloom how many pots are in bloom, a number for each day of the season
 * @param lacking how many pots each wish lacks, in the order of the task
 * @param sites what is taken of each
 * @param colds what is taken of each
 */
public record Evaluation(
        Tally tally, List<Integer> inBloom, List<Integer> lacking, List<Load> sites, List<Load> colds) {
    public Evaluation {
        inBloom = List.copyOf(inBloom);
        lacking = List.copyOf(lacking);
        sites = List.copyOf(sites);
        colds = List.copyOf(colds);
    }

    /**
     * Of pots of a task; none may be named oftener than its group has pots.
     *
     * @param pulls each with a cold place if its group has one
     */
    public static Evaluation of(Task task, List<Pull> pulls) {
        pulls.forEach(pull -> check(task, pull));
        Season season = task.season();
        List<Integer> inBloom = IntStream.rangeClosed(season.first(), season.last())
                .map(day -> (int) pulls.stream()
                        .filter(pull -> isInBloom(task, pull, day))
                        .count())
                .boxed()
                .toList();
        List<Integer> lacking =
                task.wishes().stream().map(wish -> lacks(task, pulls, wish)).toList();
        Tally tally = new Tally(
                lacking.stream().mapToInt(Integer::intValue).sum(),
                (int) inBloom.stream().filter(pots -> pots == 0).count(),
                pulls.size(),
                inBloom.stream().mapToInt(pots -> Math.max(0, pots - 1)).sum());
        return new Evaluation(tally, inBloom, lacking, sites(task, pulls), colds(task, pulls));
    }

    private static void check(Task task, Pull pull) {
        Limits.within("pot", pull.group() + 1, 1, task.pots().size());
        Limits.within("site", pull.site() + 1, 1, task.sites().size());
        Limits.day("day a pot comes in", pull.day());
        pull.cold()
                .ifPresent(cold ->
                        Limits.within("cold place", cold + 1, 1, task.colds().size()));
    }

    private static boolean isInBloom(Task task, Pull pull, int day) {
        PotGroup pots = task.pots().get(pull.group());
        return pots.firstBloom(pull.day()) <= day && day <= pots.lastBloom(pull.day());
    }

    private static int lacks(Task task, List<Pull> pulls, DayWish wish) {
        long met = pulls.stream()
                .filter(pull -> wish.asksFor(pull.group()) && wish.isAt(pull.site()))
                .filter(pull -> isInBloom(task, pull, wish.day()))
                .count();
        return (int) Math.max(0, wish.count() - met);
    }

    private static List<Load> sites(Task task, List<Pull> pulls) {
        return IntStream.range(0, task.sites().size())
                .mapToObj(site -> load(pulls.stream()
                        .filter(pull -> pull.site() == site)
                        .map(pull -> stay(task, pull))
                        .toList()))
                .toList();
    }

    private static List<Load> colds(Task task, List<Pull> pulls) {
        return IntStream.range(0, task.colds().size())
                .mapToObj(cold -> load(pulls.stream()
                        .filter(pull -> pull.cold().orElse(-1) == cold)
                        .flatMap(pull -> task.pots().get(pull.group()).cold().stream()
                                .map(stay -> new Stay(stay.since(pull.day()), pull.day() - 1, takes(task, pull))))
                        .toList()))
                .toList();
    }

    private static Stay stay(Task task, Pull pull) {
        return new Stay(pull.day(), task.pots().get(pull.group()).lastBloom(pull.day()), takes(task, pull));
    }

    private static int takes(Task task, Pull pull) {
        return task.pots().get(pull.group()).takes();
    }

    /** The first and the last day are both in; none where the last is before the first. */
    private record Stay(int first, int last, int takes) {}

    private static Load load(List<Stay> stays) {
        int first = stays.stream().mapToInt(Stay::first).min().orElse(0);
        int last = stays.stream().mapToInt(Stay::last).max().orElse(first - 1);
        int[] units = new int[Math.max(0, last - first + 1)];
        for (Stay stay : stays) {
            for (int day = stay.first(); day <= stay.last(); day++) {
                units[day - first] += stay.takes();
            }
        }
        return new Load(first, Arrays.stream(units).boxed().toList());
    }

    /** The most days in a row without anything in bloom. */
    public int longestGap() {
        int longest = 0;
        int gap = 0;
        for (int pots : inBloom) {
            gap = pots == 0 ? gap + 1 : 0;
            longest = Math.max(longest, gap);
        }
        return longest;
    }

    /** The days in bloom of all pots, of those of the season. */
    int potDays() {
        return inBloom.stream().mapToInt(Integer::intValue).sum();
    }
}
