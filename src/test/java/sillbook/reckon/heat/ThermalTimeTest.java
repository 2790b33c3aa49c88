// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.reckon.Weather;
import sillbook.reckon.cold.DayTrace;
import sillbook.reckon.heat.ThermalTime.Took;

class ThermalTimeTest {
    @ParameterizedTest
    @CsvSource({"0, 350, 16, 21.875", "0, 350, 20, 17.5", "2, 350, 16, 25", "4.4, 300, 18, 22.058824"})
    void daysInARoomThatIsAlwaysTheSame(double base, double need, double room, double days) {
        assertThat(new ThermalTime(base, need).daysAt(room).orElseThrow()).isCloseTo(days, within(1e-6));
    }

    @Test
    void aRoomNoWarmerThanTheBaseNeverDoes() {
        assertThat(new ThermalTime(4.4, 300).daysAt(4.4)).isEmpty();
    }

    @Test
    void firstCoolThenWarm() {
        double warm = new ThermalTime(0, 350)
                .after(10, 13)
                .flatMap(left -> left.daysAt(18))
                .orElseThrow();
        assertThat(10 + warm).isCloseTo(22.222222, within(1e-6));
        assertThat(new ThermalTime(0, 100).after(10, 10)).isEmpty();
        assertThat(new ThermalTime(5, 100).after(10, 3)).contains(new ThermalTime(5, 100));
    }

    /** Worked out in numpy from the open daily file. */
    @Test
    void theDayASumIsReached() {
        ThermalTime.Met met = new ThermalTime(0, 350)
                .met(new DayTrace(Weather.days()).degreeDays(0), LocalDate.of(2013, 2, 1))
                .orElseThrow();
        assertThat(met.day()).isEqualTo(LocalDate.of(2013, 3, 19));
        assertThat(met.sum()).isCloseTo(352.55, within(0.005));
        assertThat(met.share()).isCloseTo(.648276, within(1e-6));
        assertThat(new ThermalTime(0, 1e6).met(new DayTrace(Weather.days()).degreeDays(0), LocalDate.of(2013, 2, 1)))
                .isEmpty();
    }

    /** By numpy's polyfit; the records are made up. */
    @Test
    void baseAndNeedFromRecords() {
        ThermalTime fitted = ThermalTime.fitted(
                        List.of(new Took(34, 12), new Took(26, 15), new Took(21, 18), new Took(18, 21)))
                .orElseThrow();
        assertThat(fitted.base()).isCloseTo(1.853629, within(1e-6));
        assertThat(fitted.need()).isCloseTo(342.509, within(1e-3));
    }

    @Test
    void recordsThatSayNothingOfWarmth() {
        assertThat(ThermalTime.fitted(List.of())).isEmpty();
        assertThat(ThermalTime.fitted(List.of(new Took(20, 18), new Took(22, 18))))
                .isEmpty();
        assertThat(ThermalTime.fitted(List.of(new Took(20, 16), new Took(25, 18))))
                .isEmpty();
    }

    @Test
    void aNeedOfNothingIsNone() {
        assertThatThrownBy(() -> new ThermalTime(0, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
