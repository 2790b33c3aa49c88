// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Option;
import sillbook.model.Season;

/** The season that a command looks at. */
final class SeasonOption {
    private static final Pattern NAME = Pattern.compile("(\\d{4})(?:-(\\d\\d))?");

    @Option(names = "--season", paramLabel = "SEASON", description = "Another season than today's: 2025-26, or 2025.")
    private Optional<String> name = Optional.empty();

    /** The one that was named, by its years or by the one it begins in. */
    Optional<Season> given() {
        return name.map(SeasonOption::parse);
    }

    Season orElse(Season current) {
        return given().orElse(current);
    }

    private static Season parse(String name) {
        Matcher matcher = NAME.matcher(name);
        if (!matcher.matches()) {
            throw noSeason(name);
        }
        int year = Integer.parseInt(matcher.group(1));
        boolean follows = matcher.group(2) == null || Integer.parseInt(matcher.group(2)) == (year + 1) % 100;
        if (!follows) {
            throw noSeason(name);
        }
        return new Season(year);
    }

    private static Misused noSeason(String name) {
        return new Misused("'" + name + "' is no season. Write it as 2025-26, or as 2025.");
    }
}
