// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.stages;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.reckon.stages.DayChances.DayWindow;

class DayChancesTest {
    private static final DayChances TWO_STAGES = sum("10 14 21, 5 7 12");

    private static DayChances sum(String lengths) {
        return Arrays.stream(lengths.split(","))
                .map(points -> DayChances.of(Written.points(points).triangular()))
                .reduce(DayChances::plus)
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "sums.csv", delimiter = ';')
    void stages_add_up_as_worked_out_elsewhere(String lengths, String what, double expected, double tolerance) {
        assertThat(worked(sum(lengths), what)).isCloseTo(expected, within(tolerance));
    }

    private static double worked(DayChances days, String what) {
        if (what.startsWith("quantile")) {
            return days.quantile(Written.asked(what));
        }
        if (what.startsWith("chance on")) {
            return days.chanceOn((int) Written.asked(what));
        }
        if (what.startsWith("chance by")) {
            return days.chanceBy((int) Written.asked(what));
        }
        return Written.choose(what, "mean", days.mean(), "variance", days.variance());
    }

    @ParameterizedTest
    @CsvSource({"26, 0.864425", "30, 0.813049", "40, 0.878056"})
    void three_pots_a_week_apart_cover_a_day_as_worked_out_elsewhere(int day, double expected) {
        // numpy 2.4: the two stages above to the first flower, 8 days in bloom, pots at +0, +7 and +14
        assertThat(covered(day)).isCloseTo(expected, within(5e-7));
    }

    @Test
    void three_pots_a_week_apart_cover_the_days_that_were_worked_out_elsewhere() {
        double days = IntStream.rangeClosed(22, 46)
                .mapToDouble(DayChancesTest::covered)
                .sum();

        assertThat(days).isCloseTo(18.926176, within(5e-7));
    }

    private static double covered(int day) {
        double none = 1;
        for (int start : List.of(0, 7, 14)) {
            none *= 1 - TWO_STAGES.later(start).chanceUnderWay(day, 8);
        }
        return 1 - none;
    }

    @Test
    void a_window_goes_from_one_in_ten_to_nine_in_ten() {
        assertThat(TWO_STAGES.window()).isEqualTo(new DayWindow(20, 23, 27));
        assertThat(TWO_STAGES.later(100).window()).isEqualTo(new DayWindow(120, 123, 127));
        assertThat(DayChances.on(5).window()).isEqualTo(new DayWindow(5, 5, 5));
    }

    @Test
    void a_day_by_which_a_chance_is_just_met_is_its_quantile() {
        DayChances coin = DayChances.of(new ThreePoints(0, 0.5, 1).triangular());

        assertThat(coin.chanceOn(0)).isEqualTo(0.5);
        assertThat(coin.quantile(0.5)).isZero();
        assertThat(coin.quantile(0.500001)).isEqualTo(1);
    }

    @Test
    void chances_add_up_to_one_and_there_is_none_outside() {
        assertThat(TWO_STAGES.chanceBy(33)).isCloseTo(1, within(1e-12));
        assertThat(TWO_STAGES.chanceBy(14)).isZero();
        assertThat(TWO_STAGES.chanceOn(14)).isZero();
        assertThat(TWO_STAGES.chanceOn(99)).isZero();
    }

    @Test
    void heavy_tails_are_cut_and_nothing_is_lost() {
        DayChances heavy = DayChances.of(new StudentT(20, 2, 3));

        assertThat(heavy.chanceBy(10_000)).isCloseTo(1, within(1e-12));
        assertThat(heavy.mean()).isCloseTo(20, within(0.001));
        assertThatThrownBy(() -> DayChances.of(new StudentT(0, 1000, 1))).hasMessageContaining("too wide");
    }

    @Test
    void a_length_that_is_known_is_one_day() {
        assertThat(DayChances.of(new StudentT(5, 0, 6)).window()).isEqualTo(new DayWindow(5, 5, 5));
    }

    @Test
    void what_lies_before_a_day_is_counted_to_it() {
        DayChances none = TWO_STAGES.notBefore(10);
        DayChances some = TWO_STAGES.notBefore(23);
        DayChances all = TWO_STAGES.notBefore(60);

        assertThat(none).isSameAs(TWO_STAGES);
        assertThat(some.chanceOn(23)).isCloseTo(0.585129, within(5e-7));
        assertThat(some.chanceOn(24)).isEqualTo(TWO_STAGES.chanceOn(24));
        assertThat(all.chanceOn(60)).isCloseTo(1, within(1e-12));
    }
}
