// SPDX-License-Identifier: Apache-2.0
package sillbook.benchmark;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/** Times of one thing done many times, in nanoseconds. */
final class Sample {
    private final List<Long> nanos = new ArrayList<>();

    void add(long time) {
        nanos.add(time);
    }

    int size() {
        return nanos.size();
    }

    double medianMillis() {
        return percentileMillis(50);
    }

    /** The smallest time that so many in a hundred do not pass. */
    double percentileMillis(int percent) {
        List<Long> sorted = new ArrayList<>(nanos);
        Collections.sort(sorted);
        int index = (int) Math.ceil(percent / 100.0 * sorted.size()) - 1;
        return sorted.get(Math.max(0, index)) / 1e6;
    }

    String say() {
        return String.format(
                Locale.ROOT,
                "median %6.2f ms   p99 %6.2f ms   of %d",
                medianMillis(),
                percentileMillis(99),
                nanos.size());
    }
}
