// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import sillbook.model.Event;

/** The events: what each is about, when it was, and what happened. */
final class EventRows implements Mapping<Event> {
    static final Table TABLE = Table.of(
            "event",
            "id",
            "subject_pot",
            "subject_place",
            "subject_variety",
            "subject_purchase",
            "subject_season",
            "day",
            "day_earliest",
            "day_latest",
            "order_in_day",
            "written_at",
            "revised_at",
            "what",
            "text",
            "place",
            "stage",
            "moisture",
            "watered",
            "water",
            "roots",
            "root_length",
            "root_length_written",
            "shoot",
            "shoot_written",
            "firmness",
            "growth",
            "troubles",
            "point",
            "variety",
            "care",
            "ending",
            "job",
            "until");

    @Override
    public Class<Event> type() {
        return Event.class;
    }

    @Override
    public Table table() {
        return TABLE;
    }

    @Override
    public void write(Event event, Values row) {
        row.id(event.id());
        event.subject().fold(new SubjectColumns.Writing(row));
        row.at("day")
                .day(event.day())
                .number(event.order())
                .instant(event.writtenAt())
                .optionalInstant(event.revisedAt());
        event.what().fold(new HappeningColumns.Writing(row));
    }

    @Override
    public Event read(Row row) throws SQLException {
        return new Event(
                row.id(),
                SubjectColumns.read(row),
                row.at(TABLE, "day").day(),
                row.number(),
                row.instant(),
                row.optionalInstant(),
                HappeningColumns.read(row));
    }
}
