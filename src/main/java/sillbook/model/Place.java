// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.Duration;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * Where a pot or a purchase can stand.
 *
 * @param serves the stage a pot is in when it stands here: cold, cool room or warm room
 * @param usual the temperatures it usually has
 * @param coldDays the days of the year on which it is cold enough to count
 * @param light in the grower's words; may be empty
 * @param room how many pots find room
 * @param checkEveryDays days from one round to the next; 0 when it is never asked for
 * @param bridges the longest time between two readings of its thermometers over which the temperature is taken to go evenly; what is longer
 *     is a gap, of which nothing is known
 */
public record Place(
        Id<Place> id,
        String name,
        Sort sort,
        Stage serves,
        Optional<Band> usual,
        ColdDays coldDays,
        String light,
        Optional<Integer> room,
        int checkEveryDays,
        Duration bridges,
        Set<Hazard> hazards,
        String note)
        implements Entity<Place> {
    /** Bridged at a place that changes slowly. */
    private static final Duration STEADY = Duration.ofDays(10);

    /** Bridged at a place that changes within a day. */
    private static final Duration CHANGING = Duration.ofHours(12);

    public Place {
        hazards = Sorted.copyOf(hazards);
        if (name.isBlank()) {
            throw new IllegalArgumentException("a place has a name");
        }
        if (!EnumSet.of(Stage.COLD, Stage.COOL_ROOM, Stage.WARM_ROOM).contains(serves)) {
            throw new IllegalArgumentException("a place is cold, cool or warm, not " + serves);
        }
        if (checkEveryDays < 0) {
            throw new IllegalArgumentException("days between rounds cannot be " + checkEveryDays);
        }
        if (bridges.isNegative()) {
            throw new IllegalArgumentException("time between readings cannot be " + bridges);
        }
    }

    /** The sorts of place, each with what is usual for it (common practice) until the grower says otherwise. */
    public enum Sort {
        FRIDGE(Stage.COLD, 14, STEADY),
        CELLAR(Stage.COLD, 10, STEADY),
        CRAWL_SPACE(Stage.COLD, 10, STEADY),
        COLD_FRAME(Stage.COLD, 10, CHANGING),
        TRENCH(Stage.COLD, 0, STEADY),
        GARAGE(Stage.COLD, 10, CHANGING),
        PORCH(Stage.COOL_ROOM, 1, CHANGING),
        COOL_ROOM(Stage.COOL_ROOM, 1, CHANGING),
        WARM_SILL(Stage.WARM_ROOM, 1, CHANGING),
        OTHER(Stage.COLD, 10, CHANGING);

        private final Stage usuallyServes;
        private final int usualCheckDays;
        private final Duration usuallyBridges;

        Sort(Stage usuallyServes, int usualCheckDays, Duration usuallyBridges) {
            this.usuallyServes = usuallyServes;
            this.usualCheckDays = usualCheckDays;
            this.usuallyBridges = usuallyBridges;
        }

        public Stage usuallyServes() {
            return usuallyServes;
        }

        public int usualCheckDays() {
            return usualCheckDays;
        }

        /** The longest time between two readings that is bridged: ten days where it is steady, half a day elsewhere. */
        public Duration usuallyBridges() {
            return usuallyBridges;
        }

        /** Whether it is as cold as the weather lets it be, so that it is cold on some days of the year only. */
        public boolean followsTheWeather() {
            return this == COLD_FRAME || this == TRENCH || this == GARAGE || this == PORCH;
        }
    }

    /** What can go wrong at a place. */
    public enum Hazard {
        FOOD,
        FRUIT,
        FROST,
        MICE,
        PETS,
        CHILDREN,
        /** An unvented heater, a running engine, smoke: they hold ethylene. */
        FUMES,
        /** Bulbs that rot beside sound ones give off ethylene, too. */
        ROTTING_BULBS,
        /** A wall that freezes what stands against it, as at the back of a fridge. */
        COLD_WALL,
        /** A door that does not stay shut. */
        DOOR_AJAR,
        /** A fridge in a room so cold that it no longer runs. */
        UNHEATED_ROOM
    }

    /** The days of a year on which a place is cold, from one day up to another; the same day twice means all year. */
    public record ColdDays(MonthDay from, MonthDay untilExclusive) {
        private static final MonthDay NEW_YEAR = MonthDay.of(1, 1);

        public static final ColdDays ALL_YEAR = new ColdDays(NEW_YEAR, NEW_YEAR);

        public boolean isAllYear() {
            return from.equals(untilExclusive);
        }

        public boolean contains(LocalDate day) {
            MonthDay date = MonthDay.from(day);
            boolean begun = date.compareTo(from) >= 0;
            boolean over = date.compareTo(untilExclusive) >= 0;
            return from.isBefore(untilExclusive) ? begun && !over : isAllYear() || begun || !over;
        }
    }

    /** A place of which only the name and the sort are known. */
    public static Place of(Id<Place> id, String name, Sort sort) {
        return new Place(
                id,
                name,
                sort,
                sort.usuallyServes(),
                Optional.empty(),
                ColdDays.ALL_YEAR,
                "",
                Optional.empty(),
                sort.usualCheckDays(),
                sort.usuallyBridges(),
                Set.of(),
                "");
    }
}
