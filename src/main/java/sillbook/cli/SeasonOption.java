// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.Optional;
import picocli.CommandLine.Option;
import sillbook.model.Season;
import sillbook.words.Seasons;

/** The season that a command looks at. */
final class SeasonOption {
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
        return Seasons.parse(name).fold(season -> season, why -> {
            throw new Misused(why.sentence());
        });
    }
}
