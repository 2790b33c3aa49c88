// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class RectTest {
    private static final Rect PART = new Rect(2, 3, 10, 5);

    @Test
    void partsOfItAreCountedFromItsOwnCorner() {
        assertThat(PART.line(1)).isEqualTo(new Rect(2, 4, 10, 1));
        assertThat(PART.withoutTop(2)).isEqualTo(new Rect(2, 5, 10, 3));
        assertThat(PART.withoutBottom(2)).isEqualTo(new Rect(2, 3, 10, 3));
        assertThat(PART.columns(3, 4)).isEqualTo(new Rect(5, 3, 4, 5));
        assertThat(PART.withoutLeft(4)).isEqualTo(new Rect(6, 3, 6, 5));
        assertThat(PART.size()).isEqualTo(new Size(10, 5));
    }

    @Test
    void whatItDoesNotHaveIsEmpty() {
        assertThat(PART.line(5).isEmpty()).isTrue();
        assertThat(PART.line(-1).isEmpty()).isTrue();
        assertThat(PART.withoutTop(9).isEmpty()).isTrue();
        assertThat(PART.columns(8, 9)).isEqualTo(new Rect(10, 3, 2, 5));
        assertThat(new Rect(0, 0, -3, 4).isEmpty()).isTrue();
        assertThat(PART.lines(-2, 4)).isEqualTo(new Rect(2, 3, 10, 2));
    }

    @Test
    void twoMeetInWhatBothHave() {
        assertThat(PART.intersect(new Rect(0, 0, 5, 5))).isEqualTo(new Rect(2, 3, 3, 2));
        assertThat(PART.intersect(new Rect(20, 20, 5, 5)).isEmpty()).isTrue();
        assertThat(PART.contains(2, 3)).isTrue();
        assertThat(PART.contains(12, 3)).isFalse();
        assertThat(PART.contains(2, 8)).isFalse();
        assertThat(PART.contains(1, 3)).isFalse();
        assertThat(PART.contains(2, 2)).isFalse();
    }

    @Test
    void aSizeHoldsAnotherOnlyBothWays() {
        Size least = new Size(80, 24);
        assertThat(least.holds(least)).isTrue();
        assertThat(new Size(100, 23).holds(least)).isFalse();
        assertThat(new Size(79, 30).holds(least)).isFalse();
        assertThat(least).hasToString("80x24");
        assertThatThrownBy(() -> new Size(-1, 2)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Size(1, -2)).isInstanceOf(IllegalArgumentException.class);
    }
}
