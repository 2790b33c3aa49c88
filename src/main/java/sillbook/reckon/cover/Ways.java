// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** All ways to bring in a pot that blooms in the season and is not fixed, beside those that are. */
final class Ways {
    private static final int NO_COLD = -1;

    private final Task task;
    private final List<Pull> fixed;
    private final Evaluation given;
    private final List<Kind> kinds;
    private final Cells cells;
    private final List<Way> ways = new ArrayList<>();
    private final List<DayWish> wishes;
    private final List<int[]> onDay = new ArrayList<>();
    private final List<int[]> forWish = new ArrayList<>();
    private final boolean[][] serving;

    Ways(Task task, List<Pull> fixed) {
        this.task = task;
        this.fixed = List.copyOf(fixed);
        this.given = Evaluation.of(task, fixed);
        this.kinds = Kind.of(task, fixed);
        this.wishes = open(task.wishes(), given.lacking());
        List<Room> places = new ArrayList<>(task.sites());
        places.addAll(task.colds());
        List<Load> loads = new ArrayList<>(given.sites());
        loads.addAll(given.colds());
        this.cells = new Cells(places, comings(loads), loads);
        for (int kind = 0; kind < kinds.size(); kind++) {
            addAll(kind);
        }
        for (int day = task.season().first(); day <= task.season().last(); day++) {
            int bloom = day;
            onDay.add(numbers(way -> way.isInBloom(bloom)));
        }
        this.serving = new boolean[wishes.size()][ways.size()];
        for (int wish = 0; wish < wishes.size(); wish++) {
            DayWish wished = wishes.get(wish);
            forWish.add(numbers(way -> helps(way, wished)));
            for (int number : forWish.get(wish)) {
                serving[wish][number] = true;
            }
        }
    }

    /** Wishes by their day, for what they lack. */
    private static List<DayWish> open(List<DayWish> wishes, List<Integer> lacking) {
        return IntStream.range(0, wishes.size())
                .filter(wish -> lacking.get(wish) > 0)
                .mapToObj(wish -> wishes.get(wish).withCount(lacking.get(wish)))
                .sorted(Comparator.comparingInt(DayWish::day))
                .toList();
    }

    private List<SortedSet<Integer>> comings(List<Load> loads) {
        List<SortedSet<Integer>> comings = new ArrayList<>();
        loads.forEach(load -> comings.add(load.rises().boxed().collect(Collectors.toCollection(TreeSet::new))));
        for (Kind kind : kinds) {
            PotGroup pots = kind.pots();
            IntStream.rangeClosed(pots.earliest(), pots.latest())
                    .filter(pull -> isUseful(pots, pull))
                    .forEach(pull ->
                            sites(pots).forEach(site -> comings.get(site).add(pull)));
            pots.cold().ifPresent(stay -> comeToCold(pots, stay, comings));
        }
        return comings;
    }

    private void comeToCold(PotGroup pots, ColdStay stay, List<SortedSet<Integer>> comings) {
        IntStream.rangeClosed(pots.earliest(), pots.latest())
                .filter(pull -> isUseful(pots, pull))
                .map(stay::since)
                .forEach(day -> stay.places()
                        .forEach(place ->
                                comings.get(task.sites().size() + place).add(day)));
    }

    private List<Integer> sites(PotGroup pots) {
        return pots.sites().isEmpty()
                ? IntStream.range(0, task.sites().size()).boxed().toList()
                : pots.sites();
    }

    private boolean isUseful(PotGroup pots, int pull) {
        return pots.firstBloom(pull) <= task.season().last()
                && pots.lastBloom(pull) >= task.season().first();
    }

    private void addAll(int kind) {
        PotGroup pots = kinds.get(kind).pots();
        List<Integer> colds = pots.cold().map(ColdStay::places).orElse(List.of(NO_COLD));
        int[] empty = new int[cells.count()];
        for (int pull = pots.earliest(); pull <= pots.latest(); pull++) {
            if (isUseful(pots, pull)) {
                for (int site : sites(pots)) {
                    for (int cold : colds) {
                        Way way = way(kind, pull, site, cold);
                        if (way.fits(empty, cells)) {
                            ways.add(way);
                        }
                    }
                }
            }
        }
    }

    private Way way(int kind, int pull, int site, int cold) {
        PotGroup pots = kinds.get(kind).pots();
        Season season = task.season();
        int last = pots.lastBloom(pull);
        Cells.Stretch chilled = pots.cold()
                .map(stay -> cells.between(task.sites().size() + cold, stay.since(pull), pull - 1))
                .orElse(Cells.Stretch.NONE);
        return new Way(
                ways.size(),
                kind,
                pull,
                site,
                cold,
                Math.max(season.first(), pots.firstBloom(pull)),
                Math.min(season.last(), last),
                pots.takes(),
                cells.between(site, pull, last),
                chilled);
    }

    private int[] numbers(Predicate<Way> wanted) {
        return IntStream.range(0, ways.size())
                .filter(number -> wanted.test(ways.get(number)))
                .toArray();
    }

    private boolean helps(Way way, DayWish wish) {
        return way.isInBloom(wish.day())
                && wish.isAt(way.site())
                && wish.asksFor(kinds.get(way.kind()).groups().get(0));
    }

    /** Whether a way helps a wish. */
    boolean serves(Way way, int wish) {
        return serving[wish][way.number()];
    }

    Task task() {
        return task;
    }

    /** Pots that come in whatever else does. */
    List<Pull> fixed() {
        return fixed;
    }

    /** What the fixed pots come to by themselves. */
    Evaluation given() {
        return given;
    }

    Season season() {
        return task.season();
    }

    Cells cells() {
        return cells;
    }

    List<Kind> kinds() {
        return kinds;
    }

    /** By their day, for as many pots as they lack beside the fixed. */
    List<DayWish> wishes() {
        return wishes;
    }

    int count() {
        return ways.size();
    }

    Way get(int number) {
        return ways.get(number);
    }

    /** The numbers of those in bloom on a day of the season. */
    int[] onDay(int day) {
        return onDay.get(day - task.season().first());
    }

    /** The numbers of those that help a wish. */
    int[] forWish(int wish) {
        return forWish.get(wish);
    }
}
