// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.list;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.draw.Scroll;
import sillbook.ui.screen.Layer.Cause;
import sillbook.ui.screen.Thing;

/**
 * Where the cursor of a list stands, and how far the list is scrolled for it.
 *
 * @param at the so-many-eth thing of the list, from 0
 * @param beyond lines scrolled past the last thing to see what stands below it; less than 0, past the first
 */
public record Cursor(int at, Scroll scroll, int beyond) {
    public static final Cursor FIRST = new Cursor(0, Scroll.TOP, 0);

    /** The same list, on another thing of it. */
    public Cursor on(int thing) {
        return new Cursor(thing, scroll, 0);
    }

    /** What it stands on; empty in an empty list. */
    public Optional<Thing> thing(Rows rows) {
        List<Thing> things = rows.things();
        return at < things.size() ? Optional.of(things.get(at)) : Optional.empty();
    }

    /** After one of the keys that move a cursor; where there is no thing to go to, the list scrolls on to its ends, and back first. */
    public Cursor pressed(Key key, Rows rows, int height) {
        int by = by(key, rows, height);
        Cursor moved = to(at + by, rows, height);
        boolean comesBack = beyond * by < 0 && Math.abs(by) <= Math.abs(beyond);
        return comesBack || moved.at == at ? scrolledOn(beyond + by, rows, height) : moved;
    }

    private Cursor scrolledOn(int lines, Rows rows, int height) {
        Cursor here = following(rows, height);
        int below = rows.scrolled().size() - ListPane.scrolledHeight(rows, height) - here.scroll.first();
        int furthest = at >= rows.things().size() - 1 ? below : 0;
        int least = at == 0 ? -here.scroll.first() : 0;
        return new Cursor(at, here.scroll, Math.max(least, Math.min(furthest, lines)));
    }

    /** Which line stands on top. */
    int first(Rows rows, int height) {
        Cursor here = scrolledOn(beyond, rows, height);
        return here.scroll.first() + here.beyond;
    }

    private int by(Key key, Rows rows, int height) {
        int page = Math.max(1, ListPane.scrolledHeight(rows, height) - 1);
        if (key.equals(Keys.UP) || key.equals(Keys.DOWN)) {
            return key.equals(Keys.UP) ? -1 : 1;
        }
        if (key.equals(Keys.PAGE_UP) || key.equals(Keys.PAGE_DOWN)) {
            return key.equals(Keys.PAGE_UP) ? -page : page;
        }
        int all = (int) rows.all().count();
        return key.equals(Keys.HOME) ? -all : all;
    }

    /** On that thing, or the last one before it that there is. */
    public Cursor to(int thing, Rows rows, int height) {
        int last = Math.max(0, rows.things().size() - 1);
        return on(Math.max(0, Math.min(last, thing))).following(rows, height);
    }

    /** On that thing, wherever it stands; where it was if it is not there. */
    public Cursor to(Thing thing, Rows rows, int height) {
        return to(find(rows, thing).orElse(at), rows, height);
    }

    /** In a list that changed: it keeps its line after an act, else its thing; what came back it goes to. */
    public Cursor settled(Rows before, Rows after, Cause cause, int height) {
        return switch (cause) {
            case ACT -> to(at, after, height);
            case BACK -> to(cameBack(before, after).orElse(at), after, height);
            case ELSEWHERE, RESIZE ->
                to(thing(before).flatMap(thing -> find(after, thing)).orElse(at), after, height)
                        .scrolledOn(beyond, after, height);
        };
    }

    private static Optional<Integer> find(Rows rows, Thing sought) {
        List<Thing> things = rows.things();
        int same = things.indexOf(sought);
        return same >= 0 ? Optional.of(same) : first(things, thing -> thing.touches(sought));
    }

    private static Optional<Integer> cameBack(Rows before, Rows after) {
        List<Thing> were = before.things();
        return first(after.things(), thing -> !were.contains(thing));
    }

    private static Optional<Integer> first(List<Thing> things, Predicate<Thing> wanted) {
        return IntStream.range(0, things.size())
                .filter(i -> wanted.test(things.get(i)))
                .boxed()
                .findFirst();
    }

    /** Scrolled so that its line is in sight; at the first thing from the top, where that shows it. */
    private Cursor following(Rows rows, int height) {
        int count = rows.scrolled().size();
        int line = rows.lineOf(at).orElse(0);
        int room = ListPane.scrolledHeight(rows, height);
        if (line >= count) {
            return new Cursor(at, new Scroll(Math.max(0, Math.min(scroll.first(), count - room))), beyond);
        }
        boolean isFromTop = at == 0 && line < room;
        return new Cursor(at, isFromTop ? Scroll.TOP : scroll.follow(line, count, room), beyond);
    }
}
