// SPDX-License-Identifier: Apache-2.0
package sillbook.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import sillbook.reckon.cover.ColdStay;
import sillbook.reckon.cover.DayWish;
import sillbook.reckon.cover.PotGroup;
import sillbook.reckon.cover.Room;
import sillbook.reckon.cover.Season;
import sillbook.reckon.cover.Task;

/** Invented seasons of 120 days with sixty pots and three tight sills, drawn from a seed. */
record SeededSeason(int seed) {
    private static final int[][] KINDS = {{21, 8}, {16, 9}, {14, 10}, {24, 12}, {18, 7}, {28, 6}};
    private static final int POTS = 60;
    private static final Season WINTER = new Season(100, 219);

    /** Each pot another, and no wish. */
    Task plain() {
        SplittableRandom random = new SplittableRandom(seed);
        List<PotGroup> pots = IntStream.range(0, POTS)
                .mapToObj(pot -> group(random, 1, Optional.empty()))
                .toList();
        return new Task(WINTER, sills(), List.of(), pots, List.of());
    }

    /** Pots alike by one to four, a cellar with room for half of them, and three dated wishes for pots of some of the groups. */
    Task crowded() {
        SplittableRandom random = new SplittableRandom(seed);
        List<PotGroup> pots = new ArrayList<>();
        int left = POTS;
        while (left > 0) {
            int count = Math.min(left, 1 + random.nextInt(4));
            pots.add(group(random, count, Optional.of(new ColdStay(WINTER.first() - 100, List.of(0)))));
            left -= count;
        }
        List<DayWish> wishes = IntStream.range(0, 3)
                .mapToObj(wish -> new DayWish(
                        WINTER.first() + 20 + 40 * wish + random.nextInt(20),
                        2,
                        IntStream.range(0, pots.size())
                                .filter(group -> random.nextBoolean())
                                .boxed()
                                .toList()))
                .toList();
        return new Task(WINTER, sills(), List.of(Room.of(POTS / 2)), pots, wishes);
    }

    private List<Room> sills() {
        return List.of(Room.of(1 + seed % 2), Room.of(1), Room.of(1 + seed % 3));
    }

    private static PotGroup group(SplittableRandom random, int count, Optional<ColdStay> cold) {
        int[] kind = KINDS[random.nextInt(KINDS.length)];
        int toBloom = kind[0] + random.nextInt(5) - 2;
        int lasts = kind[1] + random.nextInt(3) - 1;
        int earliest = WINTER.first() - toBloom - 5 + random.nextInt(WINTER.days());
        int takes = random.nextInt(4) == 0 ? 2 : 1;
        int latest = earliest + 2 + random.nextInt(9);
        return new PotGroup(
                earliest, latest, PotGroup.steady(earliest, latest, toBloom), lasts, takes, count, List.of(), cold);
    }
}
