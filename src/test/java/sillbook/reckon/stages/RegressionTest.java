// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.stages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.reckon.stages.Regression.Case;

class RegressionTest {
    private static final NormalInverseGamma TULIP = new NormalInverseGamma(64 / 3.0, 2, 3, 8);

    /**
     * Operation of a plant for the oxidation of ammonia to nitric acid (Brownlee, <i>Statistical Theory and Methodology in
     * Science and Engineering</i>, 2nd edition, 1965, p. 454): air flow, temperature of the water, concentration of the
     * acid, and the stack loss.
     */
    private static final int[][] STACK_LOSS = {
        {80, 27, 89, 42}, {80, 27, 88, 37}, {75, 25, 90, 37}, {62, 24, 87, 28}, {62, 22, 87, 18}, {62, 23, 87, 18},
        {62, 24, 93, 19}, {62, 24, 93, 20}, {58, 23, 87, 15}, {58, 18, 80, 14}, {58, 18, 89, 14}, {58, 17, 88, 13},
        {58, 18, 82, 11}, {58, 19, 93, 12}, {50, 18, 89, 8}, {50, 18, 86, 7}, {50, 19, 72, 8}, {50, 19, 79, 8},
        {50, 20, 80, 9}, {56, 20, 82, 15}, {70, 20, 91, 15}
    };

    /** {@code -2 30, -1 27}: the conditions of each length, and it. */
    private static List<Case> cases(String text) {
        return Arrays.stream(text.split(",", -1))
                .filter(one -> !one.isBlank())
                .map(Written::numbers)
                .map(one -> new Case(one.subList(0, one.size() - 1), one.get(one.size() - 1)))
                .toList();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "regression.csv", delimiter = ';', emptyValue = "")
    void own_lengths_under_conditions_foretell_the_next_as_worked_out_elsewhere(
            String before, String slopes, String own, String given, String what, double expected, String origin) {
        List<Double> prior = Written.numbers(before);
        var level = new NormalInverseGamma(prior.get(0), prior.get(1), prior.get(2), prior.get(3));
        StudentT next = Regression.before(level, Written.numbers(slopes == null ? "" : slopes))
                .after(cases(own == null ? "" : own))
                .next(Written.numbers(given == null ? "" : given));

        double worked = what.startsWith("q")
                ? next.quantile(Written.asked(what))
                : Written.choose(
                        what, "centre", next.centre(), "scale", next.scale(), "degrees", next.degreesOfFreedom());
        assertThat(worked).as(origin).isCloseTo(expected, within(1e-6));
    }

    /** Hardly anything believed before: what is left are the least squares, as R 4.2 prints them ({@code lm}). */
    @Test
    void without_a_belief_it_is_ordinary_least_squares() {
        List<Case> plant = Arrays.stream(STACK_LOSS)
                .map(row -> new Case(List.of((double) row[0], (double) row[1], (double) row[2]), row[3]))
                .toList();
        var nothing = new NormalInverseGamma(0, 1e-10, 1 + 1e-6, 1e-6);
        Regression fitted = Regression.before(nothing, List.of(1e5, 1e5, 1e5)).after(plant);

        assertThat(fitted.next(List.of(0.0, 0.0, 0.0)).centre()).isCloseTo(-39.919674420, within(1e-5));
        assertThat(fitted.slope(0)).isCloseTo(0.715640200, within(1e-7));
        assertThat(fitted.slope(1)).isCloseTo(1.295286124, within(1e-7));
        assertThat(fitted.slope(2)).isCloseTo(-0.152122519, within(1e-7));
        double shape = 1 + 1e-6 + 21 / 2.0;
        StudentT far = fitted.next(List.of(60.4285714286, 21.0952380952, 86.2857142857));
        double squares = 2 * (far.scale() * far.scale() / (1 + 1 / 21.0) * shape - 1e-6);
        assertThat(squares).as("R's deviance").isCloseTo(178.829961598, within(1e-5));
    }

    @ParameterizedTest
    @CsvSource({"''", "'19'", "'19, 23, 22'", "'40, 20, 21, 22, 23'"})
    void without_conditions_it_is_the_normal_inverse_gamma(String own) {
        List<Case> cases = cases(own);
        List<Double> days = cases.stream().map(Case::days).toList();

        StudentT plain = TULIP.after(Sample.of(days)).next();
        StudentT worked = Regression.before(TULIP, List.of()).after(cases).next(List.of());

        assertThat(worked.centre()).isCloseTo(plain.centre(), within(1e-12));
        assertThat(worked.scale()).isCloseTo(plain.scale(), within(1e-12));
        assertThat(worked.degreesOfFreedom()).isEqualTo(plain.degreesOfFreedom());
        assertThat(Outliers.among(cases, Regression.before(TULIP, List.of()))).isEqualTo(Outliers.among(days, TULIP));
    }

    @Test
    void lengths_that_were_all_under_the_same_move_no_other_but_leave_it_doubtful() {
        Regression belief = Regression.before(TULIP, List.of(2.0)).after(cases("0 25, 0 26, 0 27"));

        assertThat(belief.slope(0)).isZero();
        assertThat(belief.next(List.of(3.0)).centre())
                .isEqualTo(belief.next(List.of(0.0)).centre());
        assertThat(belief.next(List.of(3.0)).scale())
                .isGreaterThan(2 * belief.next(List.of(0.0)).scale());
    }

    @Test
    void with_few_lengths_the_slope_stays_flatter_than_they_lie() {
        Regression few = Regression.before(TULIP, List.of(2.0)).after(cases("-1 26, 1 18"));
        Regression many = Regression.before(TULIP, List.of(2.0))
                .after(cases("-1 26, 1 18, -1 26, 1 18, -1 26, 1 18, -1 26, 1 18, -1 26, 1 18"));

        assertThat(few.slope(0)).isBetween(-4.0, 0.0).isGreaterThan(many.slope(0));
        assertThat(many.slope(0)).isBetween(-4.0, -3.5);
    }

    /** What is left when a length is taken out is what comes without ever seeing it. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void a_length_is_taken_out_without_reckoning_all_anew(int at) {
        List<Case> all = cases("-1 2 19, 0 -1 24, 1 0 22, 2 1 18, -2 -2 29");
        Case out = all.get(at);
        List<Case> others = new ArrayList<>(all);
        others.remove(at);
        Regression before = Regression.before(TULIP, List.of(2.0, 1.5));

        StudentT quick = before.after(all).without(out);
        StudentT anew = before.after(others).next(out.given());

        assertThat(quick.centre()).isCloseTo(anew.centre(), within(1e-9));
        assertThat(quick.scale()).isCloseTo(anew.scale(), within(1e-9));
        assertThat(quick.degreesOfFreedom()).isEqualTo(anew.degreesOfFreedom());
    }

    @Test
    void a_long_one_that_had_little_cold_is_no_outlier_where_the_others_say_why() {
        String others = "2 16, 1 20, 0 24, -1 28, 2 16, 1 20, 0 24, -1 28";
        List<Case> own = cases(others + ", -3 36");
        List<Double> days = own.stream().map(Case::days).toList();

        assertThat(Outliers.among(own, Regression.before(TULIP, List.of(2.0)))).isEmpty();
        assertThat(Outliers.among(cases(others + ", 2 36"), Regression.before(TULIP, List.of(2.0))))
                .containsExactly(8);
        assertThat(days).contains(36.0);
    }

    @Test
    void a_slope_or_a_spread_of_nothing_is_no_belief() {
        assertThatThrownBy(() -> Regression.before(TULIP, List.of(0.0))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Regression.before(TULIP, List.of(Double.POSITIVE_INFINITY)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Regression.before(new NormalInverseGamma(20, 2, 3, 0), List.of(1.0)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
