// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.regex.Pattern;
import sillbook.model.Season;

/** Seasons by name. */
public final class Seasons {
    private static final Pattern NAME = Pattern.compile("(\\d{4})(?:-(\\d\\d))?");

    private Seasons() {}

    /** {@code 2025-26}, or {@code 2025} by the year it begins in. */
    public static Heard<Season> parse(String name) {
        return Groups.of(NAME, name)
                .filter(years -> !years.has(2) || years.number(2) == (years.number(1) + 1) % 100)
                .map(years -> Heard.as(new Season(years.number(1))))
                .orElseGet(() -> Heard.not(
                        "a season, as 2025-26", "'" + name + "' is no season. Write it as 2025-26, or as 2025."));
    }
}
