// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Against lm of R 4.2 on the 240 months of {@code nottem}; its source stands beside the file. */
class MonthlyMeansTest {
    private static final double DIGITS = 5e-9;
    private static final MonthlyMeans FAHRENHEIT = new MonthlyMeans(Nottem.fahrenheit());
    private static final MonthlyMeans CELSIUS = new MonthlyMeans(Nottem.celsius());

    private static MonthlyMeans meanYear() {
        return new MonthlyMeans(IntStream.range(0, 12)
                .mapToObj(month -> IntStream.range(0, 20)
                        .mapToDouble(year -> Nottem.celsius().get(12 * year + month))
                        .average()
                        .orElseThrow())
                .toList());
    }

    @Test
    void theWaveOnceAYear() {
        MonthlyMeans.Harmonic once = CELSIUS.harmonic(1);
        assertThat(CELSIUS.mean()).isCloseTo(9.466435185, within(DIGITS));
        assertThat(once.sine()).isCloseTo(-2.395929726, within(DIGITS));
        assertThat(once.cosine()).isCloseTo(-5.956935033, within(DIGITS));
        assertThat(CELSIUS.wave().amplitude()).isCloseTo(6.420712907, within(DIGITS));
        assertThat(CELSIUS.wave().coldest()).isCloseTo(22.21472, within(1e-5));
        assertThat(CELSIUS.residualSd(1)).isCloseTo(1.413568112, within(DIGITS));
        assertThat(CELSIUS.explained(1)).isCloseTo(.912636154, within(DIGITS));
    }

    @Test
    void howWellTheWaveIsKnown() {
        double sd = CELSIUS.residualSd(1);
        assertThat(sd / Math.sqrt(240)).isCloseTo(.0912454, within(1e-7));
        assertThat(sd / Math.sqrt(120)).isCloseTo(.1290405, within(1e-7));
    }

    @Test
    void theMeanYearHasTheSameWave() {
        assertThat(meanYear().mean()).isCloseTo(9.466435185, within(DIGITS));
        assertThat(meanYear().harmonic(1).sine()).isCloseTo(-2.395929726, within(DIGITS));
        assertThat(meanYear().harmonic(1).cosine()).isCloseTo(-5.956935033, within(DIGITS));
        assertThat(meanYear().residualSd(1)).isCloseTo(.732266305, within(DIGITS));
    }

    @Test
    void aSecondWaveTwiceAYear() {
        MonthlyMeans.Harmonic twice = CELSIUS.harmonic(2);
        assertThat(twice.sine()).isCloseTo(.743287037, within(DIGITS));
        assertThat(twice.cosine()).isCloseTo(.377282363, within(DIGITS));
        assertThat(twice.amplitude()).isCloseTo(.833557197, within(DIGITS));
        assertThat(CELSIUS.residualSd(2)).isCloseTo(1.288557361, within(DIGITS));
        assertThat(CELSIUS.explained(2)).isCloseTo(.928017770, within(DIGITS));
        double better = (CELSIUS.left(1) - CELSIUS.left(2)) / 2 / (CELSIUS.left(2) / 235);
        assertThat(better).as("F with 2 and 235").isCloseTo(25.10814, within(1e-5));
    }

    @Test
    void inFahrenheit() {
        assertThat(FAHRENHEIT.mean()).isCloseTo(49.03958333, within(DIGITS));
        assertThat(FAHRENHEIT.harmonic(1).sine()).isCloseTo(-4.312673507, within(DIGITS));
        assertThat(FAHRENHEIT.harmonic(1).cosine()).isCloseTo(-10.722483059, within(DIGITS));
        assertThat(FAHRENHEIT.wave().amplitude()).isCloseTo(11.557283233, within(DIGITS));
    }

    @Test
    void inTheSouthItIsColdestHalfAYearLater() {
        List<Double> turned = IntStream.range(0, 240)
                .mapToObj(month -> Nottem.celsius().get((month + 6) % 240))
                .toList();
        assertThat(new MonthlyMeans(turned).wave().coldest()).isCloseTo(22.21472 + 182.5, within(0.2));
    }

    @Test
    void monthsAreWholeYears() {
        assertThatThrownBy(() -> new MonthlyMeans(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new MonthlyMeans(List.of(1.0))).isInstanceOf(IllegalArgumentException.class);
    }
}
