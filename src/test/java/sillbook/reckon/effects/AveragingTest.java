// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Held against another rule of integration altogether: Gauss and Legendre's, 40 nodes to each of four sds from 0 to 4,
 * in numpy; a rule of 28 nodes agrees with it within .0003.
 */
class AveragingTest {
    private static final double NEAR = .003;

    private static final Effects POTS = Averaging.over(
                    Reference.of("sixteen-pots").design("score", "cultivar", "mix", "spot"), Prior.SCORES)
            .orElseThrow();

    @ParameterizedTest
    @CsvSource({
        "cultivar, A, B, .6353, .4453, .9271",
        "cultivar, A, C, .5267, .4608, .8808",
        "mix, P, Q, .8144, .3781, .9787",
        "spot, G, F, .2179, .3732, .7183"
    })
    void sixteenPots(String factor, String a, String b, double value, double sd, double better) {
        Difference difference = POTS.factor(factor).difference(a, b).orElseThrow();
        assertThat(difference.value()).isCloseTo(value, within(NEAR));
        assertThat(difference.sd()).isCloseTo(sd, within(NEAR));
        assertThat(difference.better()).isCloseTo(better, within(NEAR));
    }

    @ParameterizedTest
    @CsvSource({"cultivar, .50494", "mix, .96036", "spot, .62682"})
    void sixteenPotsVariances(String factor, double sd) {
        assertThat(POTS.factor(factor).sd()).isCloseTo(sd, within(NEAR));
    }

    @Test
    void theDoubtIsSaid() {
        assertThat(POTS.residual()).isCloseTo(.60468, within(NEAR));
        assertThat(POTS.criterion()).isEmpty();
        assertThat(POTS.effectiveSize().orElseThrow()).isBetween(4000.0, 8192.0);
    }

    @Test
    void theSameRecordsGiveTheSameAnswer() {
        Effects again = Averaging.over(
                        Reference.of("sixteen-pots").design("score", "cultivar", "mix", "spot"), Prior.SCORES)
                .orElseThrow();
        assertThat(again).isEqualTo(POTS);
    }

    /** With so many records the variances are known, and averaging over what is left of them changes little. */
    @Test
    void manyRecordsBringItToReml() {
        Design design = Reference.of("penicillin").design("diameter", "plate", "sample");
        Difference reml = Reml.fit(design)
                .orElseThrow()
                .factor("plate")
                .difference("a", "g")
                .orElseThrow();
        Effects averaged = Averaging.over(design, new Prior(2, 0)).orElseThrow();
        Difference found = averaged.factor("plate").difference("a", "g").orElseThrow();
        assertThat(found.value()).isCloseTo(reml.value(), within(.02));
        assertThat(found.sd()).isCloseTo(reml.sd(), within(.02));
        assertThat(averaged.effectiveSize().orElseThrow()).isGreaterThan(500);
    }

    /** Two equal pots of each of two varieties: whole scores still leave room for a difference, exact ones do not. */
    @Test
    void wholeScoresAreNeverExact() {
        Design design = Design.of(
                List.of("variety"),
                IntStream.range(0, 4)
                        .mapToObj(i -> Observation.of(i < 2 ? 4 : 5, List.of(i < 2 ? "a" : "b")))
                        .toList());
        assertThat(Averaging.over(design, Prior.SCORES)).isEmpty();
        Effects whole = Averaging.over(design, Prior.WHOLE_SCORES).orElseThrow();
        LevelEffect a = whole.factor("variety").level("a").orElseThrow();
        assertThat(a.eighty().high() - a.eighty().low()).isGreaterThan(.5);
        assertThat(whole.factor("variety").difference("b", "a").orElseThrow().better())
                .isBetween(.8, .99);
    }

    /** One record of each: nothing but the prior keeps them apart, and the answer says how little that is. */
    @Test
    void oneRecordEach() {
        Design design = Design.of(
                List.of("variety"), List.of(Observation.of(5, List.of("a")), Observation.of(2, List.of("b"))));
        Difference difference = Averaging.over(design, Prior.SCORES)
                .orElseThrow()
                .factor("variety")
                .difference("a", "b")
                .orElseThrow();
        assertThat(difference.value()).isBetween(0.0, 3.0);
        assertThat(difference.better()).isBetween(.6, .99);
    }

    @ParameterizedTest
    @ValueSource(doubles = {.001, .1, .5, .7, .999})
    void studentsQuantile(double chance) {
        assertThat(Proposal.studentOf4(chance))
                .isCloseTo(new TDistribution(4).inverseCumulativeProbability(chance), within(1e-6));
    }
}
