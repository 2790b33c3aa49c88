// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.util.Optional;
import java.util.stream.Collectors;
import sillbook.model.Place;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.model.Stage;
import sillbook.season.PlaceNow;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.list.Row;
import sillbook.words.ColdDayWords;
import sillbook.words.Days;
import sillbook.words.Temperatures;
import sillbook.words.Terms;

/** A place in its columns. */
record PlaceLine(PlaceNow now, Optional<PlaceSign> sign, TemperatureUnit unit) implements Widget {
    private static final int NAME_COLUMNS = 14;
    private static final int CAUTION = 18;
    private static final int SERVES = 20;
    private static final int USUAL_END = 37;
    private static final int COLD = 38;
    private static final int ROUND_END = 60;
    private static final int POTS_END = 69;
    private static final int LATER_END = 79;
    /** Where there is room, the hazards by name. */
    private static final int HAZARDS = 82;

    /** Over the columns, in pencil. */
    static void heading(TemperatureUnit unit, Rect line, Cells cells) {
        cells.put(line.column() + Row.LABEL, line.row(), "place", Style.PENCIL);
        cells.put(line.column() + SERVES, line.row(), "serves", Style.PENCIL);
        right(USUAL_END, "usual " + Temperatures.unit(unit), Style.PENCIL, line, cells);
        cells.put(line.column() + COLD, line.row(), "cold", Style.PENCIL);
        right(ROUND_END, "round", Style.PENCIL, line, cells);
        right(POTS_END, "pots", Style.PENCIL, line, cells);
        right(LATER_END, "in 2 wk", Style.PENCIL, line, cells);
        Rect beyond = line.withoutLeft(HAZARDS);
        if (!beyond.isEmpty()) {
            cells.put(beyond.column(), beyond.row(), "beware of", Style.PENCIL);
        }
    }

    @Override
    public void render(Rect line, Cells cells) {
        Place place = now.place();
        sign.ifPresent(mark -> mark.render(line, cells));
        cells.put(line.column() + Row.LABEL, line.row(), Columns.fit(place.name(), NAME_COLUMNS), Style.BOLD);
        if (PlaceSign.isCautioned(place)) {
            cells.put(line.column() + CAUTION, line.row(), Sign.CAUTION, Style.RUST);
        }
        cells.put(line.column() + SERVES, line.row(), Terms.STAGES.say(place.serves()), Style.INK);
        right(USUAL_END, usual(place), Style.INK, line, cells);
        cells.put(line.column() + COLD, line.row(), cold(place), Style.INK);
        right(ROUND_END, round(), Style.INK, line, cells);
        right(POTS_END, pots(), counted(now.left()), line, cells);
        String later = Integer.toString(now.inTwoWeeks().size());
        Style style = now.kept().isEmpty() ? counted(now.leftInTwoWeeks()) : Style.RUST;
        right(LATER_END, later, style, line, cells);
        hazards(place, line.withoutLeft(HAZARDS), cells);
    }

    private static void right(int end, String text, Style style, Rect line, Cells cells) {
        cells.put(line.column() + end - Width.of(text), line.row(), text, style);
    }

    private String usual(Place place) {
        return place.usual().map(band -> Temperatures.numbers(band, unit)).orElse("?");
    }

    /** The days of cold of a place that is meant for it. */
    private static String cold(Place place) {
        return place.serves() == Stage.COLD ? ColdDayWords.say(place.coldDays()) : "";
    }

    /** The day of the last round; where none is asked for, why not. */
    private String round() {
        return now.round().map(round -> Days.date(round.last())).orElseGet(() -> switch (now.place()
                .checkEveryDays()) {
            case 0 -> "never";
            case 1 -> "daily";
            default -> "";
        });
    }

    /** {@code 18 of 20}. */
    private String pots() {
        String there = Integer.toString(now.pots().size());
        return now.place().room().map(room -> there + " of " + room).orElse(there);
    }

    private static Style counted(Optional<Integer> left) {
        return left.filter(more -> more < 0).isPresent() ? Style.RUST : Style.INK;
    }

    private static void hazards(Place place, Rect beyond, Cells cells) {
        String said = place.hazards().stream().sorted().map(Terms.HAZARDS::say).collect(Collectors.joining(", "));
        cells.put(beyond.column(), beyond.row(), Columns.fit(said, beyond.columns() - 1), Style.INK);
    }
}
