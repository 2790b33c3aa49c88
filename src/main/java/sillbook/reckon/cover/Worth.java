// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Leaves out beginnings that another is at least as good as whatever comes after: one that stands on the same day with the same pots left, costs no more, and has as much room everywhere that a pot may still need.
 */
final class Worth {
    private static final int MOST_COMPARED = 40;
    private static final int FIGURES = 6;

    private final Ways ways;
    private final Stage stage;
    private final int[] lastUse;
    private final int longest;
    private final Map<Integer, int[]> needs = new HashMap<>();

    Worth(Ways ways, Stage stage) {
        this.ways = ways;
        this.stage = stage;
        this.lastUse = new int[ways.kinds().size()];
        Arrays.fill(lastUse, Integer.MIN_VALUE);
        int length = 0;
        for (int number = 0; number < ways.count(); number++) {
            Way way = ways.get(number);
            lastUse[way.kind()] = Math.max(lastUse[way.kind()], way.last());
            length = Math.max(length, way.length());
        }
        this.longest = length;
    }

    /** Those worth going on with, in their order, of beginnings that stand on the same day. */
    Sieve sieve(int day) {
        return new Sieve(day);
    }

    /** The most that may still come to each cell from a day on. */
    private int[] need(int day) {
        return needs.computeIfAbsent(day, this::needFrom);
    }

    private int[] needFrom(int day) {
        int[] need = new int[ways.cells().count()];
        int[] lastKind = new int[need.length];
        Arrays.fill(lastKind, -1);
        for (int number = 0; number < ways.count(); number++) {
            Way way = ways.get(number);
            if (way.last() >= day) {
                count(way.warm(), way, need, lastKind);
                count(way.chilled(), way, need, lastKind);
            }
        }
        return need;
    }

    private void count(Cells.Stretch stretch, Way way, int[] need, int[] lastKind) {
        for (int cell = stretch.from(); cell <= stretch.to(); cell++) {
            if (lastKind[cell] != way.kind()) {
                lastKind[cell] = way.kind();
                need[cell] += way.takes() * ways.kinds().get(way.kind()).count();
            }
        }
    }

    final class Sieve {
        private final int day;
        private final int[] need;
        private final Map<Alike, List<Rest>> kept = new HashMap<>();

        private Sieve(int day) {
            this.day = day;
            this.need = need(day);
        }

        /** Whether it is worth going on with; it is then held against those that follow. */
        boolean passes(Beginning beginning) {
            Rest rest = new Rest(beginning.count().cost(stage.goal()), room(beginning.taken()));
            List<Rest> alike = kept.computeIfAbsent(key(beginning), fresh -> new ArrayList<>());
            if (isBehind(rest, alike)) {
                return false;
            }
            alike.add(rest);
            return true;
        }

        private boolean isBehind(Rest rest, List<Rest> alike) {
            for (int i = 0; i < Math.min(MOST_COMPARED, alike.size()); i++) {
                if (alike.get(i).isAsGoodAs(rest)) {
                    return true;
                }
            }
            return false;
        }

        private int[] room(Taken taken) {
            int[] room = new int[need.length];
            for (int cell = 0; cell < room.length; cell++) {
                room[cell] = Math.min(need[cell], ways.cells().room(cell) - taken.load(cell));
            }
            return room;
        }

        private Alike key(Beginning beginning) {
            Count count = beginning.count();
            Stage.Goal goal = stage.goal();
            int[] key = new int[FIGURES + lastUse.length + ways.wishes().size()];
            key[0] = beginning.nextWish();
            key[1] = beginning.coveredTo();
            key[2] = Math.max(beginning.lastGap(), day - longest);
            key[3] = goal == Stage.Goal.UNMET ? 0 : count.unmet();
            key[4] = goal.compareTo(Stage.Goal.GAP) <= 0 ? 0 : count.gaps();
            key[5] = goal == Stage.Goal.OVERLAP ? count.used() : 0;
            for (int kind = 0; kind < lastUse.length; kind++) {
                key[FIGURES + kind] =
                        lastUse[kind] < day ? 0 : beginning.taken().pots(kind);
            }
            for (int wish = beginning.nextWish(); wish < ways.wishes().size(); wish++) {
                key[FIGURES + lastUse.length + wish] = Math.min(
                        beginning.taken().met(wish), ways.wishes().get(wish).count());
            }
            return new Alike(key);
        }
    }

    /** What beginnings must have in common to be compared. */
    private static final class Alike {
        private final int[] figures;
        private final int hash;

        private Alike(int[] figures) {
            this.figures = figures;
            this.hash = Arrays.hashCode(figures);
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Alike alike && Arrays.equals(figures, alike.figures);
        }

        @Override
        public int hashCode() {
            return hash;
        }
    }

    /** What is left to a beginning: its cost, and room in each cell as far as it may still be needed. */
    private static final class Rest {
        private final int cost;
        private final int[] room;

        private Rest(int cost, int[] room) {
            this.cost = cost;
            this.room = room;
        }

        boolean isAsGoodAs(Rest other) {
            if (cost > other.cost) {
                return false;
            }
            for (int cell = 0; cell < room.length; cell++) {
                if (room[cell] < other.room[cell]) {
                    return false;
                }
            }
            return true;
        }
    }
}
