// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The equations at variances that are given. */
class HendersonTest {
    private static final double EXACT = 1e-6;

    private static Effects pots() {
        Design design = Reference.of("sixteen-pots").design("score", "cultivar", "mix", "spot");
        return Reference.at(design, .5, .5, .25, .25);
    }

    /** Solved in numpy and in R, written apart; both agree to every digit. */
    @ParameterizedTest
    @CsvSource({
        "cultivar, A, .576322", "cultivar, B, -.221832", "cultivar, C, -.137360", "cultivar, D, .179518",
        "cultivar, E, -.396648", "mix, P, .597389", "mix, Q, -.084689", "mix, R, -.512700",
        "spot, F, .110082", "spot, G, .327341", "spot, T, -.437423"
    })
    void sixteenPots(String factor, String level, double effect) {
        assertThat(pots().factor(factor).level(level).orElseThrow().effect().value())
                .isCloseTo(effect, within(EXACT));
        assertThat(pots().mean().value()).isCloseTo(2.743419, within(EXACT));
    }

    /** As above. The chance is R's pnorm of difference over doubt. */
    @ParameterizedTest
    @CsvSource({
        "cultivar, A, B, .798153, .442926, .964227",
        "cultivar, A, E, .972970, .661263, .929406",
        "mix, P, Q, .682079, .362865, .969926",
        "mix, P, R, 1.110089, .471646, .990705",
        "spot, G, T, .764764, .456558, .953039"
    })
    void sixteenPotsDifferences(String factor, String a, String b, double value, double sd, double better) {
        Difference difference = pots().factor(factor).difference(a, b).orElseThrow();
        assertThat(difference.value()).isCloseTo(value, within(EXACT));
        assertThat(difference.sd()).isCloseTo(sd, within(EXACT));
        assertThat(difference.better()).isCloseTo(better, within(5e-6));
    }

    private static Design schools() {
        Reference data = Reference.of("eight-schools");
        return Design.of(
                List.of("school"),
                data.rows().stream()
                        .map(row -> new Observation(
                                Double.parseDouble(row.get(1)),
                                Math.pow(Double.parseDouble(row.get(2)), -2),
                                List.of(row.get(0))))
                        .toList());
    }

    /**
     * D. B. Rubin, Journal of Educational Statistics 6, 1981; A. Gelman and others, Bayesian Data Analysis, chapter 5,
     * print 7.7 and 4.1 for the pooled mean. The other figures from numpy.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 7.685617, 4.071919, A, 7.685617, 4.071919",
        "5, 7.850983, , A, 9.865885, 6.232570",
        "5, 7.850983, , E, 5.763487, 5.557588",
        "10, 8.126472, , A, 14.241404, 9.156134",
    })
    void eightSchools(double tau, double mean, Double meanSd, String school, double score, double sd) {
        Effects effects = Reference.at(schools(), 1, tau * tau);
        assertThat(effects.mean().value()).isCloseTo(mean, within(EXACT));
        if (meanSd != null) {
            assertThat(effects.mean().sd()).isCloseTo(meanSd, within(EXACT));
        }
        Estimate found = effects.factor("school").level(school).orElseThrow().score();
        assertThat(found.value()).isCloseTo(score, within(EXACT));
        assertThat(found.sd()).isCloseTo(sd, within(EXACT));
    }

    /** The restricted likelihood of the eight schools is highest where they do not differ at all. */
    @Test
    void eightSchoolsDoNotDiffer() {
        double[] criteria = IntStream.rangeClosed(0, 30)
                .mapToDouble(
                        tau -> Reference.at(schools(), 1, tau * tau).criterion().orElseThrow())
                .toArray();
        assertThat(criteria).isSorted();
        assertThat(criteria[1]).isGreaterThan(criteria[0]);
    }
}
