// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** Tasks drawn from a seed, small enough to try every plan, with everything in them that a task can have. */
record SmallTask(int seed) {
    Task draw() {
        SplittableRandom random = new SplittableRandom(seed);
        int sites = 1 + random.nextInt(2);
        int colds = random.nextInt(3);
        List<PotGroup> pots = new ArrayList<>();
        int left = 4;
        while (left > 0 && (pots.isEmpty() || random.nextInt(6) > 0)) {
            int count = random.nextInt(4) == 0 ? Math.min(2, left) : 1;
            pots.add(group(random, count, sites, colds));
            left -= count;
        }
        int days = 6 + random.nextInt(16);
        Season season = new Season(20, 20 + days);
        List<DayWish> wishes = IntStream.range(0, random.nextInt(3))
                .mapToObj(wish -> wish(random, season, pots.size(), sites))
                .toList();
        return new Task(season, rooms(random, sites), rooms(random, colds), pots, wishes);
    }

    private static PotGroup group(SplittableRandom random, int count, int sites, int colds) {
        int earliest = 10 + random.nextInt(14);
        int window = 1 + random.nextInt(4);
        int toBloom = 3 + random.nextInt(6);
        int falls = random.nextInt(2);
        List<Integer> toBlooms = IntStream.range(0, window)
                .mapToObj(day -> Math.max(0, toBloom - falls * day / 2))
                .toList();
        List<Integer> may = sites > 1 && random.nextInt(3) == 0 ? List.of(random.nextInt(sites)) : List.of();
        Optional<ColdStay> stay = colds > 0 && random.nextBoolean()
                ? Optional.of(new ColdStay(
                        earliest - random.nextInt(6),
                        1 + random.nextInt(9),
                        IntStream.range(0, colds).boxed().toList()))
                : Optional.empty();
        int takes = 1 + random.nextInt(5) / 4;
        return new PotGroup(earliest, earliest + window - 1, toBlooms, 2 + random.nextInt(6), takes, count, may, stay);
    }

    private static List<Room> rooms(SplittableRandom random, int places) {
        return IntStream.range(0, places)
                .mapToObj(place -> random.nextInt(4) == 0 ? Room.ENDLESS : Room.of(1 + random.nextInt(2)))
                .toList();
    }

    private static DayWish wish(SplittableRandom random, Season season, int groups, int sites) {
        int day = season.first() + random.nextInt(season.days());
        List<Integer> of = random.nextBoolean() ? List.of() : List.of(random.nextInt(groups));
        List<Integer> at = random.nextInt(3) == 0 ? List.of(random.nextInt(sites)) : List.of();
        return new DayWish(day, 1 + random.nextInt(2), of, at);
    }
}
