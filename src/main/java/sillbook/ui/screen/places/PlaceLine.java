// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.time.Duration;
import java.util.Optional;
import java.util.stream.Collectors;
import sillbook.model.Band;
import sillbook.model.Place;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.season.PlaceClimate;
import sillbook.season.PlaceClimate.Side;
import sillbook.season.PlaceNow;
import sillbook.text.Columns;
import sillbook.text.Width;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Right;
import sillbook.ui.draw.Role;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.ui.screen.State;
import sillbook.ui.screen.list.Row;
import sillbook.words.ClimateWords;
import sillbook.words.Days;
import sillbook.words.PlaceTerms;
import sillbook.words.Temperatures;
import sillbook.words.Terms;

/** A place in its columns. */
record PlaceLine(State state, PlaceNow now) implements Widget {
    private static final String NOT_KNOWN = "-";
    private static final Duration WEEK = Duration.ofDays(7);
    private static final int NAME_COLUMNS = 14;
    private static final int CAUTION = 18;
    private static final int LATEST_END = 24;
    private static final int WEEK_DASH = 31;
    private static final int WEEK_END = 36;
    private static final int BAND_DASH = 42;
    private static final int BAND_END = 45;
    private static final int READ_END = 57;
    private static final int POTS_END = 62;
    private static final int TWO_DIGITS = 10;
    private static final int LATER_END = 77;
    /** From here on only where the page is wide. */
    private static final int SERVES = 82;

    private static final int ROUND_END = 99;
    private static final int HAZARDS = 102;

    /** Over the columns, in pencil. */
    static void heading(TemperatureUnit unit, Rect line, Cells cells) {
        String degrees = " " + Temperatures.unit(unit);
        cells.put(line.column() + Row.LABEL, line.row(), "place", Style.PENCIL);
        Right columns = new Right(line, cells);
        columns.put(LATEST_END, "now" + degrees, Style.PENCIL);
        columns.put(WEEK_END - 2, "week" + degrees, Style.PENCIL);
        columns.put(BAND_END + 1, "band" + degrees, Style.PENCIL);
        columns.put(READ_END - 3, "read", Style.PENCIL);
        columns.put(POTS_END + 2, "pots", Style.PENCIL);
        columns.put(LATER_END, "in 2 wk", Style.PENCIL);
        if (line.columns() > HAZARDS) {
            cells.put(line.column() + SERVES, line.row(), "serves", Style.PENCIL);
            columns.put(ROUND_END, "round", Style.PENCIL);
            cells.put(line.column() + HAZARDS, line.row(), "beware of", Style.PENCIL);
        }
    }

    @Override
    public void render(Rect line, Cells cells) {
        Place place = now.place();
        PlaceSign.of(state, now).ifPresent(mark -> mark.render(line, cells));
        cells.put(line.column() + Row.LABEL, line.row(), Columns.fit(place.name(), NAME_COLUMNS), Style.BOLD);
        if (PlaceSign.isCautioned(place)) {
            cells.put(line.column() + CAUTION, line.row(), Sign.CAUTION, Style.RUST);
        }
        Right columns = new Right(line, cells);
        warmth(columns);
        pots(columns);
        if (line.columns() > HAZARDS) {
            cells.put(line.column() + SERVES, line.row(), Terms.STAGES.say(place.serves()), Style.INK);
            columns.put(ROUND_END, round(), Style.INK);
            hazards(place, line.withoutLeft(HAZARDS), cells);
        }
    }

    private PlaceClimate climate() {
        return state.almanac().climate(now.place().id());
    }

    private TemperatureUnit unit() {
        return state.journal().settings().temperatures();
    }

    private void warmth(Right columns) {
        PlaceClimate climate = climate();
        latest(climate)
                .ifPresentOrElse(
                        degrees -> columns.put(LATEST_END, degrees, style(climate)),
                        () -> columns.put(LATEST_END, NOT_KNOWN, Style.INK));
        if (climate.week().isPresent()) {
            climate.week().ifPresent(week -> week(week, columns));
        } else {
            columns.put(WEEK_END - 2, climate.lastDay().isPresent() ? "unread" : NOT_KNOWN, Style.INK);
        }
        climate.band().ifPresentOrElse(band -> band(band, columns), () -> columns.put(BAND_DASH, "?", Style.INK));
        columns.put(READ_END, read(climate), Style.INK);
    }

    /** A reading older than the week says nothing of now. */
    private Optional<String> latest(PlaceClimate climate) {
        return climate.now()
                .filter(last -> last.at().isAfter(state.shown().at().minus(WEEK)))
                .map(last -> Temperatures.tenths(last.temperature(), unit()));
    }

    private static Style style(PlaceClimate climate) {
        return climate.strayed()
                .map(out -> Style.of(out.side() == Side.OVER ? Role.LAMP : Role.FROST)
                        .withBold())
                .orElse(Style.INK);
    }

    /** {@code 7.9- 9.9}; {@code -0.5 to 4.1} where a minus sign would be taken for the dash, or {@code -2 to 11} where that is too long. */
    private void week(Band week, Right columns) {
        String low = Temperatures.tenths(week.low(), unit());
        String high = Temperatures.tenths(week.high(), unit());
        if (low.startsWith("-") || high.startsWith("-")) {
            String tenths = low + " to " + high;
            String degrees =
                    whole(week.low().celsius()) + " to " + whole(week.high().celsius());
            columns.put(WEEK_END, Width.of(tenths) < WEEK_END - LATEST_END ? tenths : degrees, Style.INK);
        } else {
            columns.put(WEEK_DASH, low, Style.INK);
            columns.put(WEEK_DASH + 1, "-", Style.INK);
            columns.put(WEEK_END, high, Style.INK);
        }
    }

    private void band(Band band, Right columns) {
        String low = whole(band.low().celsius());
        String high = whole(band.high().celsius());
        if (low.startsWith("-") || high.startsWith("-")) {
            columns.put(BAND_END, low + " to " + high, Style.INK);
        } else {
            columns.put(BAND_DASH, low, Style.INK);
            columns.put(BAND_DASH + 1, "-", Style.INK);
            columns.put(BAND_END, high, Style.INK);
        }
    }

    /** Whole degrees are enough here; the card has the band as it was written. */
    private String whole(double celsius) {
        return Long.toString(Math.round(Temperatures.degrees(celsius, unit())));
    }

    private String read(PlaceClimate climate) {
        return new ClimateWords(state.journal().settings(), state.shown().at()).ago(climate);
    }

    /** {@code 18 of 20}, and how many in two weeks. */
    private void pots(Right columns) {
        Style style = counted(now.left());
        columns.put(POTS_END, Integer.toString(now.pots().size()), style);
        Rect of = columns.line().withoutLeft(POTS_END);
        now.place()
                .room()
                .ifPresent(room -> columns.cells()
                        .put(of.column(), of.row(), " of " + (room < TWO_DIGITS ? " " : "") + room, style));
        Style later = now.kept().isEmpty() ? counted(now.leftInTwoWeeks()) : Style.RUST;
        columns.put(LATER_END, Integer.toString(now.inTwoWeeks().size()), later);
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

    private static Style counted(Optional<Integer> left) {
        return left.filter(more -> more < 0).isPresent() ? Style.RUST : Style.INK;
    }

    private static void hazards(Place place, Rect beyond, Cells cells) {
        String said =
                place.hazards().stream().sorted().map(PlaceTerms.HAZARDS::say).collect(Collectors.joining(", "));
        cells.put(beyond.column(), beyond.row(), Columns.fit(said, beyond.columns() - 1), Style.INK);
    }
}
