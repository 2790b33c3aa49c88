// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CurveTest {
    private static final LocalDate MONDAY = LocalDate.of(2027, 1, 4);
    private static final Instant MIDNIGHT = Instant.parse("2027-01-04T00:00:00Z");
    private static final Duration HALF_A_DAY = Duration.ofHours(12);

    private static TimeAxis axis(int days, int partsADay) {
        return TimeAxis.of(Days.of(MONDAY, days), partsADay, MONDAY, 0, ZoneOffset.UTC);
    }

    private static WarmDay day(int after, double hours, double mean, double lowest, double highest) {
        return new WarmDay(MONDAY.plusDays(after), hours, new Warmth(mean, lowest, highest));
    }

    private static Sample at(double hours, double value) {
        return new Sample(MIDNIGHT.plusSeconds(Math.round(hours * 3600)), value);
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
    void betweenReadingsTheValueGoesEvenly() {
        Curve curve = Curve.of(axis(1, 2), List.of(at(6, 2), at(18, 8)), HALF_A_DAY);

        assertThat(curve.parts().get(0).orElseThrow().mean()).isCloseTo(3.5, within(1e-3));
        assertThat(curve.parts().get(0).orElseThrow().lowest()).isEqualTo(2);
        assertThat(curve.parts().get(0).orElseThrow().highest()).isEqualTo(5);
        assertThat(curve.parts().get(1).orElseThrow().mean()).isCloseTo(6.5, within(1e-3));
    }

    @Test
    void aGapIsNeverBridged() {
        List<Sample> samples = List.of(at(1, 2), at(2, 2), at(20, 8), at(21, 8));

        assertThat(Curve.of(axis(1, 4), samples, HALF_A_DAY).parts())
                .containsExactly(
                        Optional.of(Warmth.steady(2)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Warmth.steady(8)));
        assertThat(Curve.of(axis(1, 4), samples, Duration.ofHours(18)).known()).hasSize(4);
    }

    @Test
    void aLoneReadingStandsWhereItWasTakenAndNowhereElse() {
        Curve curve = Curve.of(axis(1, 4), List.of(at(7, 3)), HALF_A_DAY);

        assertThat(curve.parts().get(1)).contains(Warmth.steady(3));
        assertThat(curve.known()).hasSize(1);
    }

    @Test
    void readingsBeforeAndAfterWhatIsShownReachIn() {
        Curve curve = Curve.of(axis(1, 2), List.of(at(-6, 0), at(6, 12), at(30, 12)), Duration.ofDays(1));

        assertThat(curve.parts().get(0).orElseThrow().lowest()).isCloseTo(6, within(1e-9));
        assertThat(curve.parts().get(1)).contains(Warmth.steady(12));
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
        Curve celsius = Curve.of(axis(1, 1), List.of(day(0, 24, 5, 0, 10)));

        assertThat(celsius.in(value -> value * 1.8 + 32).parts()).containsExactly(Optional.of(new Warmth(41, 32, 50)));
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> new Warmth(1, 2, 3)).hasMessageContaining("mean of 1.0");
        assertThatThrownBy(() -> new Warmth(4, 2, 3)).hasMessageContaining("mean of 4.0");
        assertThatThrownBy(() -> new WarmDay(MONDAY, 0, Warmth.steady(1))).hasMessageContaining("nothing is known");
        assertThatThrownBy(() -> new Sample(MIDNIGHT, Double.NaN)).hasMessageContaining("no value");
    }
}
