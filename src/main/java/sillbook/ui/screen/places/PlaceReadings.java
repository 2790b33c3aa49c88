// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import sillbook.model.Place;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.Labelled;
import sillbook.ui.screen.list.Row;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.ReadingWords;

/** What was last read at a place and written down by hand, the newest first; the files of loggers hold far too much for a list. */
record PlaceReadings(State state, Place place) {
    private static final int MOST = 7;
    /** After the day and its year. */
    private static final int SAID = Labelled.TEXT + 17;

    /** One reading. */
    private record Typed(LocalDate day, String said) {}

    /** The lines under their heading; none where nothing was. */
    List<Row> rows() {
        List<Typed> all =
                typed().sorted(Comparator.comparing(Typed::day).reversed()).toList();
        List<Row> rows = new ArrayList<>();
        if (!all.isEmpty()) {
            rows.add(Row.heading("Readings"));
        }
        all.stream().limit(MOST).map(PlaceReadings::row).forEach(rows::add);
        if (all.size() > MOST) {
            rows.addAll(new Labelled("", "and " + Counts.of(all.size() - MOST, "earlier one"))
                    .rows(state.body().columns()));
        }
        return rows;
    }

    private Stream<Typed> typed() {
        ReadingWords words = new ReadingWords(state.journal().settings());
        return Stream.concat(
                state.journal().spotReadings().all().stream()
                        .filter(spot -> spot.place().equals(place.id()))
                        .map(spot -> new Typed(words.day(spot), words.say(spot))),
                state.journal().spanReadings().all().stream()
                        .filter(span -> span.place().equals(place.id()))
                        .map(span -> new Typed(span.to().likely(), words.say(span))));
    }

    private static Row row(Typed typed) {
        String day = Days.column(typed.day()) + " " + typed.day().getYear();
        return Row.of((area, cells) -> {
            cells.put(area.column() + Labelled.TEXT, area.row(), day, Style.INK);
            cells.put(area.column() + SAID, area.row(), typed.said(), Style.INK);
        });
    }
}
