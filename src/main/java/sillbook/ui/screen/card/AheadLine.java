// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.card;

import java.util.stream.Collectors;
import sillbook.season.Ahead;
import sillbook.ui.draw.Cells;
import sillbook.ui.draw.Rect;
import sillbook.ui.draw.Style;
import sillbook.ui.draw.Widget;
import sillbook.words.Days;
import sillbook.words.OriginMarks;
import sillbook.words.SourceWords;
import sillbook.words.StageWords;

/** One stage to come, in its columns. */
record AheadLine(String what, String earliest, String likely, String latest, String restsOn) implements Widget {
    static final int EARLIEST = 29;
    static final int LIKELY = 41;
    static final int LATEST = 53;
    static final int RESTS_ON = 65;
    private static final int WHAT = 4;

    static AheadLine of(Ahead ahead) {
        return new AheadLine(
                StageWords.into(ahead.stage()),
                Days.column(ahead.window().earliest()),
                Days.column(ahead.window().likely()),
                Days.column(ahead.window().latest()),
                restsOn(ahead));
    }

    /** As much as there is room for: what was seen, else whose figure it is. */
    private static String restsOn(Ahead ahead) {
        String grounds = ahead.restsOn().stream().map(AheadLine::said).limit(2).collect(Collectors.joining(", "));
        String figure = ahead.figure()
                .map(held -> OriginMarks.mark(held.origin()) + SourceWords.brief(held))
                .orElse("");
        return grounds.isEmpty() ? figure : grounds;
    }

    private static String said(Ahead.Ground ground) {
        return switch (ground) {
            case COLD -> "cold";
            case ROOTS -> "roots";
            case SHOOT -> "shoot";
            case BEGUN -> "begun";
            case WISH -> "its wish";
            case PLAN -> "the plan";
            case NEAR_PLAN -> "the plan, as near as can be";
            case CALENDAR -> "the season";
        };
    }

    @Override
    public void render(Rect area, Cells cells) {
        cells.put(area.column() + WHAT, area.row(), what, Style.INK);
        cells.put(area.column() + EARLIEST, area.row(), earliest, Style.INK);
        cells.put(area.column() + LIKELY, area.row(), likely, Style.BOLD);
        cells.put(area.column() + LATEST, area.row(), latest, Style.INK);
        cells.put(area.column() + RESTS_ON, area.row(), restsOn, Style.INK);
    }
}
