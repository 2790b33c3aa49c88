// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import java.util.Optional;
import sillbook.model.Length;
import sillbook.model.Place.ColdDays;
import sillbook.model.Space;
import sillbook.model.Space.Surface;

/** The shelves of places, and when the places are there. */
final class SpaceRows implements Mapping<Space> {
    private static final Table TABLE = Table.of(
            "space",
            "id",
            "place",
            "width",
            "width_written",
            "depth",
            "depth_written",
            "clear",
            "clear_written",
            "there_from",
            "there_until");

    @Override
    public Class<Space> type() {
        return Space.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(Space space, Values row) {
        row.id(space.id())
                .id(space.place())
                .optionalLength(space.shelf().map(Surface::width))
                .optionalLength(space.shelf().map(Surface::depth))
                .optionalLength(space.clear())
                .monthDay(space.there().from())
                .monthDay(space.there().untilExclusive());
    }

    @Override
    public Space read(Row row) throws SQLException {
        return new Space(
                row.id(),
                row.id(),
                shelf(row.optionalLength(), row.optionalLength()),
                row.optionalLength(),
                new ColdDays(row.monthDay(), row.monthDay()));
    }

    private static Optional<Surface> shelf(Optional<Length> width, Optional<Length> depth) {
        return width.flatMap(wide -> depth.map(deep -> new Surface(wide, deep)));
    }
}
