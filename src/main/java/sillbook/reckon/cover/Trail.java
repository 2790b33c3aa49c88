// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cover;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The ways taken so far, the last first; their beginning is shared by all plans that begin alike. Null is the end. */
record Trail(Way last, @Nullable Trail before) {
    static List<Way> ways(@Nullable Trail trail) {
        List<Way> ways = new ArrayList<>();
        for (Trail here = trail; here != null; here = here.before) {
            ways.add(here.last);
        }
        return ways;
    }
}
