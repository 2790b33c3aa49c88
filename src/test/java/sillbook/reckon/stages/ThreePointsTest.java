// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.stages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ThreePointsTest {

    @ParameterizedTest
    @CsvFileSource(resources = "lengths.csv", delimiter = ';')
    void three_points_give_the_curves_that_others_work_out(
            String curve, String points, String what, double expected, double tolerance, String origin) {
        assertThat(worked(curve, Written.points(points), what)).as(origin).isCloseTo(expected, within(tolerance));
    }

    private static double worked(String curve, ThreePoints points, String what) {
        if (curve.equals("pert")) {
            double sd = points.sd();
            return Written.choose(what, "mean", points.mean(), "sd", sd, "variance", sd * sd);
        }
        Distribution distribution = curve.equals("beta") ? points.beta() : points.triangular();
        return Written.of(distribution, what);
    }

    @ParameterizedTest
    @CsvSource({"beta", "triangular"})
    void a_quantile_is_where_the_curve_has_that_chance(String curve) {
        for (ThreePoints points :
                new ThreePoints[] {new ThreePoints(16, 21, 28), new ThreePoints(0, 0, 7), new ThreePoints(3, 9, 9)}) {
            Distribution distribution = curve.equals("beta") ? points.beta() : points.triangular();
            for (double chance = 0.05; chance < 1; chance += 0.05) {
                assertThat(distribution.cumulative(distribution.quantile(chance)))
                        .isCloseTo(chance, within(1e-8));
            }
            assertThat(distribution.cumulative(points.low())).isZero();
            assertThat(distribution.cumulative(points.low() - 1)).isZero();
            assertThat(distribution.cumulative(points.high())).isEqualTo(1);
            assertThat(distribution.cumulative(points.high() + 1)).isEqualTo(1);
        }
    }

    @ParameterizedTest
    @CsvSource({"NaN,1,2", "0,NaN,2", "0,1,NaN", "2,1,3", "1,3,2", "0,1,Infinity", "-Infinity,0,1"})
    void no_three_points_in_order_are_refused(double low, double typical, double high) {
        assertThatThrownBy(() -> new ThreePoints(low, typical, high))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(String.valueOf(typical));
    }

    @Test
    void one_point_has_no_curve() {
        ThreePoints point = new ThreePoints(5, 5, 5);

        assertThat(point.mean()).isEqualTo(5);
        assertThat(point.sd()).isZero();
        assertThatThrownBy(point::beta).hasMessageContaining("5.0");
        assertThatThrownBy(point::triangular).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.5, 2, Double.NaN})
    void what_is_no_chance_has_no_quantile(double chance) {
        ThreePoints points = new ThreePoints(1, 2, 3);

        assertThatThrownBy(() -> points.beta().quantile(chance)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> points.triangular().quantile(chance)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new StudentT(1, 0, 3).quantile(chance)).isInstanceOf(IllegalArgumentException.class);
    }
}
