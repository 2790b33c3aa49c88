// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.stages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class NormalInverseGammaTest {
    private static final NormalInverseGamma TULIP = NormalInverseGamma.before(new ThreePoints(16, 21, 28));

    @ParameterizedTest
    @CsvFileSource(resources = "learning.csv", delimiter = ';', emptyValue = "", nullValues = "none")
    void own_lengths_move_what_is_believed_as_worked_out_elsewhere(
            String before, String own, String what, double expected, double tolerance, String origin) {
        List<Double> prior = Written.numbers(before);
        var belief = new NormalInverseGamma(prior.get(0), prior.get(1), prior.get(2), prior.get(3))
                .after(Sample.of(Written.numbers(own == null ? "" : own)));

        assertThat(worked(belief, what)).as(origin).isCloseTo(expected, within(tolerance));
    }

    private static double worked(NormalInverseGamma belief, String what) {
        StudentT next = belief.next();
        if (what.startsWith("low") || what.startsWith("high")) {
            StudentT.Interval interval = next.interval(Written.asked(what));
            return what.startsWith("low") ? interval.low() : interval.high();
        }
        if (what.startsWith("chance by")) {
            return next.cumulative(Written.asked(what));
        }
        return Written.choose(
                what,
                "centre",
                belief.centre(),
                "weight",
                belief.weight(),
                "shape",
                belief.shape(),
                "rate",
                belief.rate(),
                "scale",
                next.scale(),
                "degrees",
                next.degreesOfFreedom(),
                "mean scale",
                belief.mean().scale());
    }

    @Test
    void published_points_are_worth_two_lengths_of_ones_own() {
        assertThat(TULIP.centre()).isCloseTo(64 / 3.0, within(1e-12));
        assertThat(TULIP.weight()).isEqualTo(2);
        assertThat(TULIP.shape()).isEqualTo(3);
        assertThat(TULIP.rate()).isCloseTo(8, within(1e-12));
    }

    @Test
    void lengths_seen_one_by_one_teach_the_same_as_all_at_once() {
        NormalInverseGamma oneByOne = TULIP;
        for (double day : new double[] {19, 23, 22, 30}) {
            oneByOne = oneByOne.after(Sample.of(List.of(day)));
        }
        NormalInverseGamma atOnce = TULIP.after(Sample.of(List.of(19.0, 23.0, 22.0, 30.0)));

        assertThat(oneByOne.centre()).isCloseTo(atOnce.centre(), within(1e-12));
        assertThat(oneByOne.rate()).isCloseTo(atOnce.rate(), within(1e-9));
        assertThat(oneByOne.shape()).isEqualTo(atOnce.shape());
        assertThat(oneByOne.weight()).isEqualTo(atOnce.weight());
    }

    @Test
    void no_lengths_teach_nothing() {
        assertThat(TULIP.after(Sample.NONE)).isEqualTo(TULIP);
        assertThat(Sample.of(List.of())).isEqualTo(Sample.NONE);
    }

    @Test
    void ten_thousand_lengths_that_agree_leave_only_what_the_prior_is_worth() {
        StudentT next =
                TULIP.after(Sample.of(Collections.nCopies(10_000, 25.0))).next();

        assertThat(next.centre()).isCloseTo(25, within(0.001));
        assertThat(next.scale()).isLessThan(0.1);
        assertThat(next.interval(0.8).low()).isLessThan(25);
    }

    @Test
    void three_points_that_are_one_leave_no_doubt_until_own_lengths_differ() {
        NormalInverseGamma sure = NormalInverseGamma.before(new ThreePoints(5, 5, 5));

        assertThat(sure.next().interval(0.8)).isEqualTo(new StudentT.Interval(5, 5));
        assertThat(sure.next().cumulative(4.9)).isZero();
        assertThat(sure.next().cumulative(5)).isEqualTo(1);
        assertThat(sure.after(Sample.of(List.of(9.0))).next().interval(0.8).high())
                .isGreaterThan(6);
    }

    @ParameterizedTest
    @CsvSource({"NaN,2,3,8", "21,0,3,8", "21,NaN,3,8", "21,2,0,8", "21,2,3,-1", "21,2,3,NaN", "21,2,3,Infinity"})
    void what_is_no_belief_is_refused(double centre, double weight, double shape, double rate) {
        assertThatThrownBy(() -> new NormalInverseGamma(centre, weight, shape, rate))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"NaN,1,6", "Infinity,1,6", "21,-1,6", "21,NaN,6", "21,Infinity,6", "21,1,0", "21,1,NaN", "21,1,Infinity"
    })
    void what_is_no_t_distribution_is_refused(double centre, double scale, double degrees) {
        assertThatThrownBy(() -> new StudentT(centre, scale, degrees)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_sample_of_what_is_no_number_is_refused() {
        assertThatThrownBy(() -> Sample.of(List.of(1.0, Double.NaN))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Sample(-1, 0, 0)).hasMessageContaining("-1");
        assertThatThrownBy(() -> new Sample(1, 0, -1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void tails_too_heavy_for_a_variance_have_none() {
        assertThat(new StudentT(0, 2, 2).variance()).isInfinite();
        assertThat(new StudentT(0, 2, 6).variance()).isCloseTo(6, within(1e-12));
        assertThat(new StudentT(7, 2, 6).mean()).isEqualTo(7);
    }
}
