// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import java.util.Optional;
import sillbook.model.Band;
import sillbook.model.Place;
import sillbook.model.Place.ColdDays;
import sillbook.model.Place.Hazard;
import sillbook.model.Place.Sort;
import sillbook.model.Stage;
import sillbook.model.Temperature;

/** The places. */
final class PlaceRows implements Mapping<Place> {
    private static final Table TABLE = Table.of(
            "place",
            "id",
            "name",
            "sort",
            "serves",
            "usual_low",
            "usual_low_written",
            "usual_high",
            "usual_high_written",
            "cold_from",
            "cold_until",
            "light",
            "room",
            "check_every",
            "bridges",
            "hazards",
            "note");

    @Override
    public Class<Place> type() {
        return Place.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(Place place, Values row) {
        row.id(place.id())
                .text(place.name())
                .word(place.sort())
                .word(place.serves())
                .optionalTemperature(place.usual().map(Band::low))
                .optionalTemperature(place.usual().map(Band::high))
                .monthDay(place.coldDays().from())
                .monthDay(place.coldDays().untilExclusive())
                .text(place.light())
                .optionalNumber(place.room())
                .number(place.checkEveryDays())
                .duration(place.bridges())
                .words(place.hazards())
                .text(place.note());
    }

    @Override
    public Place read(Row row) throws SQLException {
        return new Place(
                row.id(),
                row.text(),
                row.word(Sort.class),
                row.word(Stage.class),
                band(row.optionalTemperature(), row.optionalTemperature()),
                new ColdDays(row.monthDay(), row.monthDay()),
                row.text(),
                row.optionalNumber(),
                row.number(),
                row.duration(),
                row.words(Hazard.class),
                row.text());
    }

    private static Optional<Band> band(Optional<Temperature> low, Optional<Temperature> high) {
        return low.flatMap(from -> high.map(to -> new Band(from, to)));
    }
}
