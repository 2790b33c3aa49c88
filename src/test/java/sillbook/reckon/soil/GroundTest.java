// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The damped wave, its figures worked out in numpy. The ground of 0.05 m2 a day is an exercise of Oklahoma State's soil physics. */
class GroundTest {
    private static final Ground USUAL = new Ground(Ground.USUAL_DIFFUSIVITY);
    private static final YearlyWave NOTTEM = new MonthlyMeans(Nottem.celsius()).wave();

    @ParameterizedTest
    @CsvSource({
        ".12e-6, 365, 1.09754",
        ".2e-6, 365, 1.41691",
        ".4e-6, 365, 2.00382",
        ".5e-6, 365, 2.24034",
        ".85e-6, 365, 2.92104",
        ".99e-6, 365, 3.15243",
        ".5e-6, 1, 0.11726",
        ".2e-6, 1, 0.07416",
    })
    void dampingDepths(double diffusivity, double days, double depth) {
        assertThat(new Ground(diffusivity).dampingDepth(days)).isCloseTo(depth, within(5e-6));
    }

    @Test
    void whereATwentiethOfTheWaveIsLeft() {
        assertThat(new Ground(.2e-6).left(4.2447, 365)).isCloseTo(.05, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({
        "1, 24.906, 216.60, 5.094, 34.10",
        "2, 21.542, 240.70, 8.458, 58.20",
        "5, 16.884, 313.01, 13.116, 130.51",
    })
    void aPublishedExercise(double depth, double warmest, double warmestDay, double coldest, double coldestDay) {
        YearlyWave wave = new Ground(.05 / 86_400).at(depth, new YearlyWave(15, 15, 10));
        assertThat(wave.maximum()).isCloseTo(warmest, within(5e-4));
        assertThat(wave.minimum()).isCloseTo(coldest, within(5e-4));
        assertThat(wave.coldest()).isCloseTo(coldestDay, within(5e-3));
        assertThat(wave.on(warmestDay)).isCloseTo(warmest, within(5e-4));
    }

    @ParameterizedTest
    @CsvSource({
        ".15, 6.0049, 3.4615, 3.889, 137.535, 173.466",
        ".30, 5.6160, 3.8504, 7.779, 134.236, 172.839",
        ".50, 5.1364, 4.3301, 12.965, 129.405, 171.935",
        "1.00, 4.1090, 5.3575, 25.930, 114.618, 169.283",
    })
    void theMonthsOfNottemAsASurface(
            double depth, double amplitude, double minimum, double lag, double daysUpToSeven, double daysUpToNine) {
        YearlyWave wave = USUAL.at(depth, NOTTEM);
        assertThat(wave.amplitude()).isCloseTo(amplitude, within(5e-5));
        assertThat(wave.minimum()).isCloseTo(minimum, within(5e-5));
        assertThat(USUAL.lag(depth)).isCloseTo(lag, within(5e-4));
        assertThat(wave.daysUpTo(7.2)).isCloseTo(daysUpToSeven, within(5e-4));
        assertThat(wave.daysUpTo(9)).isCloseTo(daysUpToNine, within(5e-4));
    }

    @Test
    void onADay() {
        YearlyWave wave = USUAL.at(.15, NOTTEM);
        assertThat(wave.on(1)).isCloseTo(4.0136, within(5e-5));
        assertThat(wave.on(350)).isCloseTo(4.9031, within(5e-5));
    }

    @ParameterizedTest
    @CsvSource({".15, -5.0933, 106.130, 51.218", ".60, -2.7107, 84.509, 64.373"})
    void aColdInland(double depth, double minimum, double frost, double stay) {
        YearlyWave wave = USUAL.at(depth, new YearlyWave(8, 14, 20));
        assertThat(wave.minimum()).isCloseTo(minimum, within(5e-5));
        assertThat(wave.daysUpTo(0)).isCloseTo(frost, within(5e-4));
        assertThat(wave.between(1.7, 7.2)).hasSize(2);
        assertThat(wave.between(1.7, 7.2).stream()
                        .mapToDouble(YearlyWave.Stay::days)
                        .sum())
                .isCloseTo(stay, within(5e-4));
    }

    @Test
    void theDepthFromWhichOnTheWaveStaysAbove() {
        assertThat(USUAL.depthAbove(0, new YearlyWave(8, 14, 20))).isCloseTo(1.2537, within(5e-5));
        assertThat(USUAL.depthAbove(0, NOTTEM)).isZero();
        assertThat(USUAL.depthAbove(0, new YearlyWave(0, 14, 20))).isInfinite();
    }

    @Test
    void freshSnowOnWetClay() {
        Ground clay = new Ground(.45e-6);
        Mulch snow = new Mulch(.1, .1);
        assertThat(snow.weight(clay, 1.4, 365)).isCloseTo(.65871, within(5e-6));
        assertThat(snow.left(clay, 1.4, 365)).isCloseTo(.56031, within(5e-6));
        assertThat(snow.lag(clay, 1.4, 365)).isCloseTo(21.960, within(5e-4));
        assertThat(snow.weight(clay, 1.4, 1)).isCloseTo(12.58461, within(5e-6));
        assertThat(snow.left(clay, 1.4, 1)).isCloseTo(.05400, within(5e-6));
        YearlyWave under = snow.under(new YearlyWave(8, 10, 20), clay, 1.4);
        assertThat(under.amplitude()).isCloseTo(5.6031, within(5e-5));
        assertThat(under.coldest()).isCloseTo(41.960, within(5e-4));
    }

    @Test
    void frostIsLikelierTheShallower() {
        FrostChance cold = new FrostChance(new YearlyWave(8, 14, 20), USUAL, 3);
        assertThat(cold.at(0)).isCloseTo(.97725, within(5e-6));
        assertThat(cold.at(.6)).isGreaterThan(cold.at(1.3));
        assertThat(cold.at(cold.safeDepth())).isCloseTo(.05, within(1e-3));
        assertThat(cold.safeDepth()).isGreaterThan(USUAL.depthAbove(0, new YearlyWave(8, 14, 20)));
        assertThat(new FrostChance(new YearlyWave(12, 2, 20), USUAL, 3).safeDepth())
                .isZero();
        FrostChance frozen = new FrostChance(new YearlyWave(-5, 10, 20), USUAL, 3);
        assertThat(frozen.safeDepth()).isInfinite();
        assertThat(frozen.at(19)).isEqualTo(1);
        assertThat(cold.at(19)).isZero();
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> new Ground(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Mulch(-1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Mulch(1, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new FrostChance(NOTTEM, USUAL, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
