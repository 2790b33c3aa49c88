// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.List;

/** Ways that are taken before a sweep begins, and so the days that are in bloom anyway, by them or by pots that are fixed for good. */
final class Fixed {
    private final Season season;
    private final List<Way> taken;
    private final int[] uncoveredFrom;

    private Fixed(Ways ways, List<Way> taken) {
        this.season = ways.season();
        this.taken = List.copyOf(taken);
        this.uncoveredFrom = new int[season.days() + 1];
        boolean[] inBloom = new boolean[season.days()];
        for (int day = 0; day < inBloom.length; day++) {
            inBloom[day] = ways.given().inBloom().get(day) > 0;
        }
        for (Way way : taken) {
            for (int day = way.first(); day <= way.last(); day++) {
                inBloom[day - season.first()] = true;
            }
        }
        uncoveredFrom[season.days()] = season.days();
        for (int day = season.days() - 1; day >= 0; day--) {
            uncoveredFrom[day] = inBloom[day] ? uncoveredFrom[day + 1] : day;
        }
    }

    static Fixed none(Ways ways) {
        return new Fixed(ways, List.of());
    }

    static Fixed of(Ways ways, List<Way> taken) {
        return new Fixed(ways, taken);
    }

    List<Way> taken() {
        return taken;
    }

    /** Whether a day is in bloom anyway, counted from the season's first. */
    boolean covers(int day) {
        return uncoveredFrom[day] > day;
    }

    /** The last day up to which all are covered, where they are up to a day before the season's end or on it. */
    int coveredFrom(int coveredTo) {
        return uncoveredFrom[coveredTo + 1 - season.first()] + season.first() - 1;
    }
}
