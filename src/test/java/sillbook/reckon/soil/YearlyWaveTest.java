// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.reckon.soil.YearlyWave.Stay;

class YearlyWaveTest {
    private static final YearlyWave WAVE = new YearlyWave(8, 6, 20);

    @Test
    void swingsOnceAYear() {
        assertThat(WAVE.on(20)).isEqualTo(2, within(1e-12));
        assertThat(WAVE.on(20 + 182.5)).isEqualTo(14, within(1e-12));
        assertThat(WAVE.on(20 + 91.25)).isEqualTo(8, within(1e-12));
        assertThat(WAVE.on(385)).isEqualTo(2, within(1e-12));
        assertThat(new YearlyWave(8, 6, -345).coldest()).isEqualTo(20);
    }

    @Test
    void daysUpToATemperature() {
        assertThat(WAVE.daysUpTo(8)).isEqualTo(182.5, within(1e-9));
        assertThat(WAVE.daysUpTo(1.9)).isZero();
        assertThat(WAVE.daysUpTo(14)).isEqualTo(365);
        assertThat(new YearlyWave(5, 0, 0).daysUpTo(5)).isEqualTo(365);
        assertThat(new YearlyWave(5, 0, 0).daysUpTo(4)).isZero();
    }

    @Test
    void aBandIsStayedInOnceTwiceNeverOrAlways() {
        assertThat(WAVE.between(0, 8)).hasSize(1).first().satisfies(stay -> {
            assertThat(stay.from()).isEqualTo(293.75, within(1e-9));
            assertThat(stay.days()).isEqualTo(182.5, within(1e-9));
            assertThat(stay.to()).isEqualTo(111.25, within(1e-9));
        });
        List<Stay> twice = WAVE.between(5, 8);
        assertThat(twice).hasSize(2);
        assertThat(twice.get(0).days()).isEqualTo(twice.get(1).days(), within(1e-9));
        assertThat(twice.get(0).to()).as("it grows colder").isEqualTo(20 - WAVE.daysUpTo(5) / 2 + 365, within(1e-9));
        assertThat(WAVE.between(-5, 1)).isEmpty();
        assertThat(WAVE.between(15, 20)).isEmpty();
        assertThat(WAVE.between(0, 20)).containsExactly(new Stay(202.5, 365));
    }

    @Test
    void anAmplitudeIsNotBelowNothing() {
        assertThatThrownBy(() -> new YearlyWave(8, -1, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
