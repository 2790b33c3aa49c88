// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Round pots on an oblong shelf, in inches; patterns are counted by hand, bounds worked out from Oler's formula and from cells. */
class ShelfTest {
    @ParameterizedTest
    @CsvSource({
        "24, 16, 7.5, 6, 5, 5, 7, 6",
        "24, 16, 4, 24, 22, 21, 26, 32",
        "24, 16, 4.5, 15, 14, 18, 20, 24",
        "24, 16, 5, 12, 12, 13, 16, 18",
        "24, 16, 6.5, 6, 6, 6, 9, 8",
        "36, 12, 7.5, 4, 4, 5, 8, 5",
        "48, 18, 5, 27, 36, 30, 38, 48",
    })
    void patternsAndBounds(
            double width, double depth, double pot, int square, int alongWidth, int alongDepth, long oler, long cells) {
        Shelf shelf = new Shelf(width, depth);

        assertThat(Pattern.SQUARE.places(width, depth, pot)).hasSize(square);
        assertThat(Pattern.ROWS_ALONG_WIDTH.places(width, depth, pot)).hasSize(alongWidth);
        assertThat(Pattern.ROWS_ALONG_DEPTH.places(width, depth, pot)).hasSize(alongDepth);
        assertThat(shelf.oler(pot)).isEqualTo(oler);
        assertThat(shelf.cells(pot)).isEqualTo(cells);
    }

    /** What scipy (SLSQP) found for any pattern at all: 8 pots of 6.5 and 9 of 6, where a regular one has 6 and 8. */
    @ParameterizedTest
    @CsvSource({
        "24, 16, 7.5, 6, true",
        "36, 12, 7.5, 5, true",
        "24, 16, 6.5, 8, true",
        "24, 16, 6, 9, false",
        "24, 16, 4, 24, false",
        "48, 18, 5, 36, false",
    })
    void standing(double width, double depth, double pot, int count, boolean isProven) {
        Shelf.Standing standing = new Shelf(width, depth).most(pot);

        assertThat(standing.count()).isEqualTo(count);
        assertThat(standing.isProven()).isEqualTo(isProven);
        stand(standing, width, depth, pot);
    }

    private static void stand(Shelf.Standing standing, double width, double depth, double pot) {
        assertThat((long) standing.count()).isLessThanOrEqualTo(standing.atMost());
        for (int i = 0; i < standing.count(); i++) {
            assertThat(standing.places().get(i).x()).isBetween(pot / 2 - 1e-7, width - pot / 2 + 1e-7);
            assertThat(standing.places().get(i).y()).isBetween(pot / 2 - 1e-7, depth - pot / 2 + 1e-7);
            for (int j = 0; j < i; j++) {
                assertThat(standing.places().get(i).distance(standing.places().get(j)))
                        .isGreaterThanOrEqualTo(pot - 1e-7);
            }
        }
    }

    @Test
    void noneOverlapsOnAnyShelf() {
        IntStream.range(10, 60).forEach(tenths -> {
            double width = tenths / 10.0;
            stand(new Shelf(width, 2.3).most(1), width, 2.3, 1);
        });
    }

    @Test
    void whichPatternItWas() {
        assertThat(new Shelf(24, 16).most(8).pattern()).contains(Pattern.SQUARE);
        assertThat(new Shelf(36, 12).most(7.5).pattern()).contains(Pattern.ROWS_ALONG_DEPTH);
        assertThat(new Shelf(48, 18).most(5).pattern()).contains(Pattern.ROWS_ALONG_WIDTH);
        assertThat(new Shelf(24, 16).most(6.5).pattern()).isEqualTo(Optional.empty());
    }

    /** 24 / 8 is 3, whatever a division of doubles makes of it. */
    @Test
    void aRowThatIsJustFull() {
        assertThat(new Shelf(.3, .1).most(.1).count()).isEqualTo(3);
        assertThat(new Shelf(24, 8).most(8)).satisfies(standing -> {
            assertThat(standing.count()).isEqualTo(3);
            assertThat(standing.isProven()).isTrue();
        });
    }

    @Test
    void noneAndVeryMany() {
        assertThat(new Shelf(24, 16).most(17)).satisfies(standing -> {
            assertThat(standing.count()).isZero();
            assertThat(standing.isProven()).isTrue();
        });
        assertThat(new Shelf(100, 100).most(1).count()).isGreaterThanOrEqualTo(10_000);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, .1})
    void noSuchPot(double pot) {
        assertThatThrownBy(() -> new Shelf(24, 16).most(pot)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void noSuchShelf(double width) {
        assertThatThrownBy(() -> new Shelf(width, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Shelf(1, width)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void roomOverAShoot() {
        assertThat(new Headroom(45, 13, 30).isEnough()).isTrue();
        assertThat(new Headroom(45, 13, 30).left()).isEqualTo(2);
        assertThat(new Headroom(45, 15, 30).isEnough()).isTrue();
        assertThat(new Headroom(45, 16, 30).isEnough()).isFalse();
        assertThatThrownBy(() -> new Headroom(0, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Headroom(9, -1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Headroom(9, 1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
