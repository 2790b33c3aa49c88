// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Keys;
import sillbook.ui.draw.Style;
import sillbook.ui.screen.Layer.Cause;
import sillbook.ui.screen.Thing;

/** A list may have more lines below its last thing, or above its first, than fit the window: they too are come to. */
class CursorTest {
    private static final int HEIGHT = 6;

    /** Ten lines of text, things on three lines, ten lines of text. */
    private final Rows rows = rows(10, 3, 10);

    private Cursor cursor = Cursor.FIRST;

    private static Rows rows(int above, int things, int below) {
        List<Row> rows = new ArrayList<>(Collections.nCopies(above, Row.text("text", Style.INK)));
        for (int i = 0; i < things; i++) {
            rows.add(Row.of(new Thing.Named("thing " + i), (area, cells) -> {}));
        }
        rows.addAll(Collections.nCopies(below, Row.text("text", Style.INK)));
        return Rows.of(rows);
    }

    private void press(Key... keys) {
        for (Key key : keys) {
            cursor = cursor.pressed(key, rows, HEIGHT);
        }
    }

    private int first() {
        return cursor.first(rows, HEIGHT);
    }

    private boolean isInSight() {
        return new ListPane(rows, cursor).point(HEIGHT).isPresent();
    }

    @Test
    void aListOpensWhereItsFirstThingIsSeen() {
        assertThat(first()).isEqualTo(7);
        assertThat(isInSight()).isTrue();
        assertThat(Cursor.FIRST.first(rows(3, 3, 10), HEIGHT)).isZero();
    }

    @Test
    void upPastTheFirstThingScrollsToTheTop() {
        press(Keys.UP, Keys.UP);

        assertThat(first()).isEqualTo(5);
        assertThat(cursor.at()).isZero();

        press(Keys.PAGE_UP);

        assertThat(first()).isZero();
        assertThat(isInSight()).isFalse();
    }

    @Test
    void downPastTheLastThingScrollsToTheEnd() {
        press(Keys.END);

        assertThat(cursor.at()).isEqualTo(2);
        assertThat(first()).isEqualTo(9);

        press(Keys.DOWN);

        assertThat(first()).isEqualTo(10);
        assertThat(isInSight()).isTrue();

        press(Keys.PAGE_DOWN);

        assertThat(first()).isEqualTo(15);
        assertThat(cursor.at()).isEqualTo(2);
        assertThat(isInSight()).isFalse();
        assertThat(new ListPane(rows, cursor).place(HEIGHT)).isEqualTo("3 of 3");

        press(Keys.END, Keys.DOWN);

        assertThat(first()).isEqualTo(17);
    }

    @Test
    void theWayBackIsScrolledBeforeTheCursorMoves() {
        press(Keys.END, Keys.DOWN, Keys.DOWN, Keys.UP);

        assertThat(first()).isEqualTo(10);
        assertThat(cursor.at()).isEqualTo(2);

        press(Keys.UP, Keys.UP);

        assertThat(cursor.at()).isEqualTo(1);
        assertThat(isInSight()).isTrue();
    }

    @Test
    void homeGoesToTheFirstThingThenToTheTop() {
        press(Keys.END, Keys.END, Keys.HOME);

        assertThat(cursor.at()).isZero();
        assertThat(isInSight()).isTrue();

        press(Keys.HOME);

        assertThat(first()).isZero();
        assertThat(new ListPane(rows, cursor).place(HEIGHT)).isEqualTo("1 of 3");
    }

    @Test
    void linesWithoutAnyThingScrollToo() {
        Rows text = rows(20, 0, 0);

        assertThat(Cursor.FIRST.first(text, HEIGHT)).isZero();
        assertThat(Cursor.FIRST.pressed(Keys.END, text, HEIGHT).first(text, HEIGHT))
                .isEqualTo(14);
    }

    @Test
    void whereAllIsInSightNothingScrolls() {
        Rows few = rows(1, 2, 2);

        assertThat(Cursor.FIRST
                        .pressed(Keys.END, few, HEIGHT)
                        .pressed(Keys.DOWN, few, HEIGHT)
                        .first(few, HEIGHT))
                .isZero();
    }

    @Test
    void whatChangesElsewhereLeavesItScrolledAndAnActShowsTheCursor() {
        press(Keys.END, Keys.END);

        assertThat(cursor.settled(rows, rows, Cause.ELSEWHERE, HEIGHT).first(rows, HEIGHT))
                .isEqualTo(17);
        assertThat(cursor.settled(rows, rows, Cause.ACT, HEIGHT).first(rows, HEIGHT))
                .isEqualTo(9);

        Rows longer = rows(10, 5, 10);

        assertThat(cursor.settled(rows, longer, Cause.ELSEWHERE, HEIGHT).first(longer, HEIGHT))
                .isEqualTo(9);
    }
}
