// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.List;
import java.util.Optional;
import sillbook.model.Journal;
import sillbook.season.PlaceNow;

/** Places as JSON. */
public final class PlacesJson {
    private PlacesJson() {}

    /** The document of {@code sillbook places --json}. */
    public static String write(Journal journal, List<PlaceNow> places) {
        Named named = new Named(journal);
        return new Fields()
                .list("places", places, now -> place(named, now))
                .texts("warnings", List.of())
                .texts("assumed", List.of())
                .write();
    }

    private static Fields place(Named named, PlaceNow now) {
        return new Fields()
                .text("place", now.place().name())
                .code("sort", now.place().sort())
                .code("serves", now.place().serves())
                .decimal("usualLow", now.place().usual().map(band -> band.low().celsius()))
                .decimal(
                        "usualHigh", now.place().usual().map(band -> band.high().celsius()))
                .flag("coldNow", now.isCold())
                .whole("room", now.place().room())
                .texts("pots", named.labels(now.pots()))
                .number("inTwoWeeks", now.inTwoWeeks())
                .number("checkEveryDays", now.place().checkEveryDays())
                .day("lastRound", now.round().map(round -> round.last()))
                .day("nextRound", now.round().map(round -> round.on()).or(Optional::empty));
    }
}
