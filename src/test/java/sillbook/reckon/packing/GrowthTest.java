// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.packing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GrowthTest {
    private static final double NEVER = Double.POSITIVE_INFINITY;

    /**
     * The widest pots of which so many stand on 24 by 16; 1, 2 and 6 exact by argument, the others found in scipy (SLSQP) from 40 to 60 starts, so that they may be beaten, as that of 10 is.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 16",
        "2, 12.287187",
        "3, 9.616328",
        "4, 8.802010",
        "5, 8.159682",
        "6, 8",
        "7, 6.884924",
        "8, 6.527002",
        "9, 6.105859",
        "10, 5.923429",
        "11, 5.888389",
        "12, 5.541513",
    })
    void asWideAsFoundElsewhere(int count, double widest) {
        Arrangement best = Growth.ofLike(new OblongRoom(24, 16), count, .5).best(150, 1, widest);

        assertThat(best.scale()).isGreaterThan(widest - 1e-6);
        assertThat(best.centres()).hasSize(count);
    }

    /** Two in an oblong room lie in opposite corners: their distance is the diagonal of what is left of it. */
    @Test
    void twoInOppositeCorners() {
        double scale =
                Growth.ofLike(new OblongRoom(24, 16), 2, .5).best(20, 1, NEVER).scale();

        assertThat(Math.hypot(24 - scale, 16 - scale)).isCloseTo(scale, within(1e-8));
    }

    /** Descartes: in a round room three like discs leave room for a small one. */
    @Test
    void discsOfTwoSizes() {
        double small = 2 / Math.sqrt(3) - 1;
        Arrangement best = new Growth(new Scatter(new RoundRoom(2), List.of(1.0, 1.0, 1.0, small))).best(60, 1, NEVER);

        assertThat(1 / best.scale()).isCloseTo(1 + 2 / Math.sqrt(3), within(1e-7));
    }

    @Test
    void theSameSeedFindsTheSame() {
        Growth growth = Growth.ofLike(new RoundRoom(2), 9, 1);

        assertThat(growth.best(5, 7, NEVER)).isEqualTo(growth.best(5, 7, NEVER));
        assertThat(growth.best(1, 7, NEVER).scale())
                .isLessThanOrEqualTo(growth.best(30, 7, NEVER).scale());
    }

    @Test
    void discsOfTheirOwnSize() {
        assertThat(Scatter.ofLike(new OblongRoom(24, 16), 8, 3.25).fitting(100, 1))
                .hasValueSatisfying(found -> assertThat(found.scale()).isGreaterThan(1 - 1e-9));
        assertThat(Scatter.ofLike(new OblongRoom(24, 16), 7, 3.75).fitting(20, 1))
                .isEmpty();
    }

    @Test
    void anArrangementKnowsHowLargeItsDiscsMayBe() {
        List<Point> centres = List.of(new Point(-1, 0), new Point(1, 0));

        assertThat(new Arrangement(new RoundRoom(4), List.of(1.0, 1.0), centres).scale())
                .isEqualTo(1);
        assertThat(new Arrangement(new RoundRoom(3), List.of(1.0, 1.0), centres).scale())
                .isEqualTo(.5);
        assertThat(new Arrangement(new OblongRoom(9, 1), List.of(1.0, 1.0), centres).scale())
                .isEqualTo(.5);
        assertThat(new Arrangement(new OblongRoom(9, 9), List.of(2.0, 2.0), centres).scale())
                .isEqualTo(.5);
        assertThat(new Arrangement(new RoundRoom(4), List.of(), List.of()).scale())
                .isInfinite();
    }

    /** The slope is held against differences of the sum. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void theSlopeIsThatOfTheSum(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Room room = seed % 2 == 0 ? new RoundRoom(2) : new OblongRoom(2, 1.5);
        Overlap overlap = new Overlap(room, List.of(.8, .5, .9));
        double[] at = random.doubles(6, -1, 1).toArray();
        double[] slope = new double[6];
        double[] none = new double[6];
        overlap.at(at, 1.1, slope);
        for (int i = 0; i < 6; i++) {
            double[] up = at.clone();
            double[] down = at.clone();
            up[i] += 1e-6;
            down[i] -= 1e-6;
            double difference = (overlap.at(up, 1.1, none) - overlap.at(down, 1.1, none)) / 2e-6;
            assertThat(slope[i]).isCloseTo(difference, within(1e-6));
        }
    }

    @Test
    void nothingIsPushedWhereItsWayIsUnknown() {
        double[] slope = new double[4];

        assertThat(new Overlap(new RoundRoom(9), List.of(1.0, 1.0)).at(new double[4], 1, slope))
                .isEqualTo(4);
        assertThat(slope).containsOnly(0);
        assertThat(new Overlap(new RoundRoom(1), List.of(1.0)).at(new double[2], 1, new double[2]))
                .isZero();
    }

    /** The valley of H. H. Rosenbrock, The Computer Journal 3, 1960, whose lowest is 0 at (1, 1). */
    @Test
    void downhillThroughAWindingValley() {
        double[] place = {-1.2, 1};

        double lowest = new Descent(GrowthTest::rosenbrock).from(place, 200, 1e-24);

        assertThat(lowest).isLessThan(1e-20);
        assertThat(place[0]).isCloseTo(1, within(1e-8));
        assertThat(place[1]).isCloseTo(1, within(1e-8));
        assertThat(new Descent(GrowthTest::rosenbrock).from(new double[] {-1.2, 1}, 3, 0))
                .isBetween(.1, 24.0);
    }

    private static double rosenbrock(double[] at, double[] slope) {
        double bend = at[1] - at[0] * at[0];
        slope[0] = -400 * at[0] * bend - 2 * (1 - at[0]);
        slope[1] = 200 * bend;
        return 100 * bend * bend + (1 - at[0]) * (1 - at[0]);
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> new RoundRoom(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new OblongRoom(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new OblongRoom(0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Scatter(new RoundRoom(1), List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Arrangement(new RoundRoom(1), List.of(1.0), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Arrangement(new RoundRoom(1), List.of(-1.0), List.of(Point.MIDDLE)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
