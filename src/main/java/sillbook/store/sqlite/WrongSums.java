// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.util.LinkedHashSet;
import java.util.Set;
import sillbook.model.Id;
import sillbook.model.Place;

/** Notes which sums of days a step makes wrong. */
final class WrongSums {
    private static final Set<String> BASES = Set.of("settings", "place", "thermometer");
    private static final String SPOT = "SELECT place, at / 1000, at / 1000 FROM spot_reading WHERE id = ?";

    private final Database database;
    private final Set<Stretch> stretches = new LinkedHashSet<>();
    private boolean bases;

    WrongSums(Database database) {
        this.database = database;
    }

    /** Readings of a place came, went or changed between these seconds, both in it. */
    record Stretch(Id<Place> place, long from, long to) {}

    /** An entry is about to change, or has just done so. */
    void entry(Key key) {
        String table = key.table().name();
        bases |= BASES.contains(table);
        if (table.equals("spot_reading")) {
            stretches.addAll(database.list(SPOT, row -> new Stretch(row.id(), row.large(), row.large()), key.id()));
        }
    }

    void readings(Stretch stretch) {
        stretches.add(stretch);
    }

    /** Whether what the sums are worked out on may have changed. */
    boolean bases() {
        return bases;
    }

    Set<Stretch> stretches() {
        return stretches;
    }

    boolean isNothing() {
        return !bases && stretches.isEmpty();
    }

    void clear() {
        bases = false;
        stretches.clear();
    }
}
