// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Entity;
import sillbook.model.Id;
import sillbook.model.LoggerProfile;
import sillbook.model.Place;
import sillbook.model.ReadingSource;
import sillbook.text.Columns;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.list.Labelled;
import sillbook.ui.screen.list.Row;
import sillbook.words.ReadingWords;
import sillbook.words.logger.ProfileWords;

/** The files of thermometers that were taken in at a place, the newest readings first, and what is kept for the next ones. */
record PlaceFiles(State state, Id<Place> place) {

    /** The lines under their heading; none where no file was. */
    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        ReadingWords readings = new ReadingWords(state.journal().settings());
        sources().forEach(source -> rows.add(row(source, readings.say(source))));
        ProfileWords profiles = new ProfileWords(state.journal().settings());
        profiles().forEach(profile -> rows.add(row(profile, profiles.say(profile))));
        if (!rows.isEmpty()) {
            rows.add(0, Row.heading("Files"));
        }
        return rows;
    }

    /** What the cursor stands on, if it is one of these. */
    Optional<Entity<?>> under(Optional<Thing> thing) {
        return Stream.<Entity<?>>concat(sources(), profiles())
                .filter(entity -> thing.equals(Optional.of(new Thing.OfFile(entity.id()))))
                .findFirst();
    }

    private Stream<ReadingSource> sources() {
        return state.journal().readingSources().all().stream()
                .filter(source -> source.place().equals(place))
                .sorted(Comparator.comparing(ReadingSource::last).reversed().thenComparing(ReadingSource::name));
    }

    private Stream<LoggerProfile> profiles() {
        return state.journal().loggerProfilesAt(place).stream();
    }

    private static Row row(Entity<?> entity, String says) {
        return Row.of(
                        new Thing.OfFile(entity.id()),
                        (line, cells) -> cells.put(
                                line.column() + Labelled.TEXT,
                                line.row(),
                                Columns.fit(says, line.columns() - Labelled.TEXT - 1),
                                Style.INK))
                .withMark(Labelled.TEXT);
    }
}
