// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sillbook.reckon.packing.Point;

/** Bulbs of several sizes; the known cases are the coins of Descartes and packings of like discs. */
class MixtureTest {
    private static List<Double> of(int count, double bulb) {
        return Collections.nCopies(count, bulb);
    }

    private static List<Double> and(List<Double> some, List<Double> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }

    private static void holds(Mixture mixture) {
        List<Point> places = mixture.places().orElseThrow();
        for (int i = 0; i < places.size(); i++) {
            double radius = mixture.bulbs().get(i) / 2;
            assertThat(places.get(i).distance(Point.MIDDLE)
                            + radius
                            + mixture.spacing().wall())
                    .isLessThanOrEqualTo(mixture.across() / 2 + 1e-7);
            for (int j = 0; j < i; j++) {
                assertThat(places.get(i).distance(places.get(j)))
                        .isGreaterThanOrEqualTo(radius
                                + mixture.bulbs().get(j) / 2
                                + mixture.spacing().gap()
                                - 1e-7);
            }
        }
    }

    @Test
    void threeHyacinthsAndCrocusesBetween() {
        holds(new Mixture(19, and(of(3, Bed.ofGrade(18)), of(8, Bed.ofGrade(9))), new Spacing(.5, .25)));
    }

    /**
     * Descartes: in the least room for three like coins of radius 1, of radius 1 + 2/sqrt3, a coin between two of them and the wall has a radius of 0.4827 at most.
     */
    @Test
    void coinsBetweenCoinsAndTheWall() {
        double room = 2 * (1 + 2 / Math.sqrt(3)) * 1.0001;

        holds(new Mixture(room, and(of(3, 2), of(3, 2 * .45)), Spacing.TOUCHING));
        assertThat(new Mixture(room, and(of(3, 2), of(3, 2 * .49)), Spacing.TOUCHING).places())
                .isEmpty();
    }

    @Test
    void likeOnesAsInABed() {
        holds(new Mixture(15, of(9, 4), Spacing.TOUCHING));
        assertThat(new Mixture(15, of(10, 4), Spacing.TOUCHING).places()).isEmpty();
    }

    @Test
    void someAreCertainlyTooMuch() {
        assertThat(new Mixture(10, List.of(6.0, 5.0), Spacing.TOUCHING).isTooMuch())
                .isTrue();
        assertThat(new Mixture(10, List.of(6.0, 4.0), Spacing.TOUCHING).isTooMuch())
                .isFalse();
        assertThat(new Mixture(10, of(26, 2), Spacing.TOUCHING).isTooMuch()).isTrue();
        assertThat(new Mixture(10, of(20, 2), Spacing.TOUCHING).isTooMuch()).isFalse();
        assertThat(new Mixture(5, List.of(6.0), Spacing.TOUCHING).isTooMuch()).isTrue();
        assertThat(new Mixture(5, List.of(1.0), new Spacing(0, 3)).places()).isEmpty();
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> new Mixture(10, List.of(), Spacing.USUAL))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Mixture(10, of(61, 1), Spacing.USUAL))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Mixture(10, List.of(Double.NaN), Spacing.USUAL))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Mixture(0, List.of(1.0), Spacing.USUAL))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
