// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.List;
import java.util.Optional;
import sillbook.ui.draw.Point;
import sillbook.ui.draw.Widget;

/**
 * What a layer shows.
 *
 * @param cover how much of the page it covers
 * @param title on the rule of a slip
 * @param rows of a slip, its title rule left out
 * @param content drawn into the body, or under the slip's title
 * @param cursor where the terminal's cursor stands, counted from the content's upper left
 * @param ticks drawn on the foot rule, under the place in the list
 * @param place near the right end of the foot rule: the order, the place in the list
 * @param foot the keys that matter now, the first ones first
 */
public record Look(
        Cover cover,
        String title,
        int rows,
        Widget content,
        Optional<Point> cursor,
        Widget ticks,
        String place,
        Aside aside,
        List<Action> foot) {

    private static final Widget NOTHING = (area, cells) -> {};

    /** How much of the page beneath a layer hides. */
    public enum Cover {
        /** All of it, the title and ruler too: before a journal is open. */
        EVERYTHING,
        /** The whole body. */
        BODY,
        /** The lower part of the body; the rest stays in pencil. */
        SLIP,
        /** Only the foot. */
        FOOT
    }

    public Look {
        foot = List.copyOf(foot);
    }

    public static Look body(Widget content) {
        return new Look(Cover.BODY, "", 0, content, Optional.empty(), NOTHING, "", Aside.NONE, List.of());
    }

    public static Look slip(String title, int rows, Widget content) {
        return new Look(Cover.SLIP, title, rows, content, Optional.empty(), NOTHING, "", Aside.NONE, List.of());
    }

    /** Only an aside and keys, the page above staying as it is. */
    public static Look foot(Aside aside) {
        return new Look(Cover.FOOT, "", 0, NOTHING, Optional.empty(), NOTHING, "", aside, List.of());
    }

    public Look covering(Cover other) {
        return new Look(other, title, rows, content, cursor, ticks, place, aside, foot);
    }

    public Look withCursor(Point point) {
        return new Look(cover, title, rows, content, Optional.of(point), ticks, place, aside, foot);
    }

    public Look withTicks(Widget drawing) {
        return new Look(cover, title, rows, content, cursor, drawing, place, aside, foot);
    }

    public Look withPlace(String text) {
        return new Look(cover, title, rows, content, cursor, ticks, text, aside, foot);
    }

    public Look withAside(Aside text) {
        return new Look(cover, title, rows, content, cursor, ticks, place, text, foot);
    }

    public Look withFoot(Action... actions) {
        return new Look(cover, title, rows, content, cursor, ticks, place, aside, List.of(actions));
    }
}
