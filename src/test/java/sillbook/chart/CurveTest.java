// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CurveTest {
    private static final LocalDate MONDAY = LocalDate.of(2027, 1, 4);

    private static TimeAxis axis(int days, int partsADay) {
        return TimeAxis.of(Days.of(MONDAY, days), partsADay, MONDAY, 0, ZoneOffset.UTC);
    }

    private static WarmDay day(int after, double hours, double mean, double lowest, double highest) {
        return new WarmDay(MONDAY.plusDays(after), hours, new Warmth(mean, lowest, highest));
    }

    @Test
    void aWeekIsTheMeanOfItsDaysByHowMuchOfEachIsKnown() {
        RulerLayout ruler = RulerLayout.of(Days.of(MONDAY, 364), MONDAY, 80, 1, 0);
        Curve curve = Curve.of(
                TimeAxis.of(ruler, ZoneOffset.UTC),
                List.of(day(0, 24, 4, 3, 5), day(2, 12, 7, 6.5, 9), day(8, 24, 6, 6, 6)));

        assertThat(curve.parts().get(0)).contains(new Warmth(5, 3, 9));
        assertThat(curve.parts().get(1)).contains(Warmth.steady(6));
        assertThat(curve.parts().get(2)).isEmpty();
        assertThat(curve.known()).hasSize(2);
    }

    @Test
    void aDayFillsAllItsParts() {
        Curve curve = Curve.of(axis(2, 2), List.of(day(1, 24, 4, 3, 5)));

        assertThat(curve.parts())
                .containsExactly(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new Warmth(4, 3, 5)),
                        Optional.of(new Warmth(4, 3, 5)));
    }

    @Test
    void nothingReadIsAnEmptyCurve() {
        assertThat(Curve.of(axis(1, 2), List.of()).isEmpty()).isTrue();
        assertThat(Curve.of(axis(1, 2), List.of(day(0, 1, 1, 1, 1))).isEmpty()).isFalse();
    }

    @Test
    void oneCurveFillsWhatAnotherLeavesOpen() {
        Curve one = Curve.of(axis(2, 1), List.of(day(0, 24, 5, 5, 5)));
        Curve other = Curve.of(axis(2, 1), List.of(day(0, 24, 1, 1, 1), day(1, 24, 2, 2, 2)));

        assertThat(one.filledBy(other).parts())
                .containsExactly(Optional.of(Warmth.steady(5)), Optional.of(Warmth.steady(2)));
    }

    @Test
    void anotherUnitKeepsTheShape() {
        Warmth celsius = new Warmth(5, 0, 10);

        assertThat(celsius.in(value -> value * 1.8 + 32)).isEqualTo(new Warmth(41, 32, 50));
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> new Warmth(1, 2, 3)).hasMessageContaining("mean of 1.0");
        assertThatThrownBy(() -> new Warmth(4, 2, 3)).hasMessageContaining("mean of 4.0");
        assertThatThrownBy(() -> new WarmDay(MONDAY, 0, Warmth.steady(1))).hasMessageContaining("nothing is known");
    }
}
