// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import sillbook.store.Comparison;
import sillbook.store.Comparison.Difference;

/** Counts what a delivery has while it is gone through. */
final class Counting {
    private int readings;
    private int fresh;
    private int known;
    private int repeated;
    private int differing;
    private int changed;
    private int suspicious;
    private long first = Long.MAX_VALUE;
    private long last = Long.MIN_VALUE;
    private final List<Difference> differences = new ArrayList<>();

    void reading(long at, boolean isSuspicious) {
        readings++;
        suspicious += isSuspicious ? 1 : 0;
        first = Math.min(first, at);
        last = Math.max(last, at);
    }

    void fresh() {
        fresh++;
    }

    void known() {
        known++;
    }

    void repeated() {
        repeated++;
    }

    void differing(long at, int journal, int delivery, int line, boolean isChanged) {
        differing++;
        changed += isChanged ? 1 : 0;
        if (differences.size() < Comparison.LISTED) {
            differences.add(new Difference(Instant.ofEpochSecond(at), journal, delivery, line, isChanged));
        }
    }

    int readings() {
        return readings;
    }

    int suspicious() {
        return suspicious;
    }

    long first() {
        return first;
    }

    long last() {
        return last;
    }

    Comparison soFar(boolean isTakenIn) {
        return new Comparison(readings, fresh, known, repeated, differing, changed, suspicious, isTakenIn, differences);
    }
}
