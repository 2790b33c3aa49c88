// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Every plan there is for a small task, tried one by one, its pots counted day by day: simple enough to be believed. Days from 0 to 139. */
final class Exhaustive {
    private static final int DAYS = 140;

    private final Task task;
    private final List<Integer> pots = new ArrayList<>();
    private final int[][] rooms;
    private final int[][] load;
    private final int[][][] inBloom;
    private int used;
    private Tally best = new Tally(Integer.MAX_VALUE, 0, 0, 0);

    private Exhaustive(Task task) {
        this.task = task;
        for (int group = 0; group < task.pots().size(); group++) {
            for (int pot = 0; pot < task.pots().get(group).count(); pot++) {
                pots.add(group);
            }
        }
        List<Room> places = new ArrayList<>(task.sites());
        places.addAll(task.colds());
        this.rooms = new int[places.size()][DAYS];
        for (int place = 0; place < rooms.length; place++) {
            Arrays.fill(rooms[place], places.get(place).most().orElse(Integer.MAX_VALUE));
        }
        this.load = new int[rooms.length][DAYS];
        this.inBloom = new int[task.pots().size()][task.sites().size()][DAYS];
    }

    /** What the best of all plans comes to. */
    static Tally best(Task task) {
        Exhaustive all = new Exhaustive(task);
        all.decide(0);
        return all.best;
    }

    /** The same where these pots come in anyway; where there is no room for them, nothing else may stand. */
    static Tally best(Task task, List<Pull> fixed) {
        Exhaustive all = new Exhaustive(task);
        for (Pull pull : fixed) {
            all.stand(pull, 1);
            all.pots.remove((Integer) pull.group());
        }
        for (int place = 0; place < all.rooms.length; place++) {
            for (int day = 0; day < DAYS; day++) {
                all.rooms[place][day] = Math.max(all.rooms[place][day], all.load[place][day]);
            }
        }
        all.decide(0);
        return all.best;
    }

    /** What these pots come to; empty where there is no room for them. */
    static Optional<Tally> of(Task task, List<Pull> pulls) {
        Exhaustive these = new Exhaustive(task);
        pulls.forEach(pull -> these.stand(pull, 1));
        return these.hasRoom() ? Optional.of(these.tally()) : Optional.empty();
    }

    private void decide(int pot) {
        if (pot == pots.size()) {
            Tally tally = tally();
            best = tally.compareTo(best) < 0 ? tally : best;
            return;
        }
        decide(pot + 1);
        for (Pull pull : pulls(pots.get(pot))) {
            stand(pull, 1);
            if (hasRoom()) {
                decide(pot + 1);
            }
            stand(pull, -1);
        }
    }

    private List<Pull> pulls(int group) {
        PotGroup pots = task.pots().get(group);
        List<Integer> colds = pots.cold().map(ColdStay::places).orElse(List.of(-1));
        List<Pull> pulls = new ArrayList<>();
        for (int day = pots.earliest(); day <= pots.latest(); day++) {
            for (int site = 0; site < task.sites().size(); site++) {
                for (int cold : colds) {
                    if (pots.sites().isEmpty() || pots.sites().contains(site)) {
                        pulls.add(new Pull(group, day, site, cold < 0 ? OptionalInt.empty() : OptionalInt.of(cold)));
                    }
                }
            }
        }
        return pulls;
    }

    private void stand(Pull pull, int times) {
        PotGroup pots = task.pots().get(pull.group());
        int asOn = Math.min(pots.latest(), Math.max(pots.earliest(), pull.day()));
        int first = pull.day() + pots.toBloom().get(asOn - pots.earliest());
        int end = first + pots.lasts();
        add(load[pull.site()], pull.day(), end, times * pots.takes());
        add(inBloom[pull.group()][pull.site()], first, end, times);
        pots.cold()
                .ifPresent(stay -> add(
                        load[task.sites().size() + pull.cold().orElseThrow()],
                        Math.max(stay.from(), pull.day() - stay.atMost()),
                        pull.day(),
                        times * pots.takes()));
        used += times;
    }

    private static void add(int[] days, int from, int end, int number) {
        for (int day = from; day < end; day++) {
            days[day] += number;
        }
    }

    private boolean hasRoom() {
        for (int place = 0; place < rooms.length; place++) {
            for (int day = 0; day < DAYS; day++) {
                if (load[place][day] > rooms[place][day]) {
                    return false;
                }
            }
        }
        return true;
    }

    private Tally tally() {
        int gapDays = 0;
        int overlap = 0;
        for (int day = task.season().first(); day <= task.season().last(); day++) {
            int blooming = inBloom(day, List.of(), List.of());
            gapDays += blooming == 0 ? 1 : 0;
            overlap += Math.max(0, blooming - 1);
        }
        int unmet = 0;
        for (DayWish wish : task.wishes()) {
            unmet += Math.max(0, wish.count() - inBloom(wish.day(), wish.groups(), wish.sites()));
        }
        return new Tally(unmet, gapDays, used, overlap);
    }

    private int inBloom(int day, List<Integer> groups, List<Integer> sites) {
        int blooming = 0;
        for (int group = 0; group < inBloom.length; group++) {
            for (int site = 0; site < inBloom[group].length; site++) {
                boolean counts =
                        (groups.isEmpty() || groups.contains(group)) && (sites.isEmpty() || sites.contains(site));
                blooming += counts ? inBloom[group][site][day] : 0;
            }
        }
        return blooming;
    }
}
