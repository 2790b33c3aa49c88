// SPDX-License-Identifier: Apache-2.0
package sillbook.words.logger;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import sillbook.words.Counts;
import sillbook.words.Warned;
import sillbook.words.logger.Counted.Strange;

/** Warns of the lines of a file that a sum leaves out. */
public final class LeftOut {
    private LeftOut() {}

    /** A warning for each reason there is. */
    public static List<Warned> of(Counted counted) {
        List<Warned> warnings = new ArrayList<>();
        if (counted.withoutValue() > 0) {
            warnings.add(withoutValue(Counts.of(counted.withoutValue(), "line")));
        }
        if (counted.suspicious() > 0) {
            warnings.add(new Warned(
                    "suspicious",
                    "Left out, as it can hardly be true: "
                            + Counts.of(counted.suspicious(), "reading")
                            + first(counted, strange -> !strange.isUnreadable()) + "."));
        }
        if (counted.unreadable() > 0) {
            warnings.add(new Warned(
                    "unreadable",
                    "Left out, as it cannot be read: " + Counts.of(counted.unreadable(), "line")
                            + first(counted, Strange::isUnreadable) + "."));
        }
        return warnings;
    }

    /**
     * Of rows of which the temperature is blank.
     *
     * @param what {@code 3 rows}
     */
    public static Warned withoutValue(String what) {
        return new Warned("no-value", "Left out, without a temperature: " + what + ".");
    }

    private static String first(Counted counted, Predicate<Strange> which) {
        return counted.strange().stream()
                .filter(which)
                .findFirst()
                .map(strange -> ", from line " + strange.line() + " on")
                .orElse("");
    }
}
