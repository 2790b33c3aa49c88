// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Held against lme4 1.1-31 for R 4.2.2 (Debian's package r-cran-lme4; its search let run on to 1e-12 for Penicillin and
 * Pastes), and for Dyestuff also against the sums of squares of a balanced table, which give the variances exactly:
 * between 11271.5, within 2451.25, five of each.
 */
class RemlTest {
    private static final Design DYESTUFF = Reference.of("dyestuff").design("yield", "batch");

    private static Effects fit(Design design) {
        return Reml.fit(design).orElseThrow();
    }

    @Test
    void dyestuffIsAsItsSumsOfSquares() {
        Effects effects = fit(DYESTUFF);
        double batch = effects.factor("batch").sd();
        assertThat(batch * batch).isCloseTo((11271.5 - 2451.25) / 5, within(1e-3));
        assertThat(effects.residual() * effects.residual()).isCloseTo(2451.25, within(1e-3));
        assertThat(effects.criterion()).hasValueCloseTo(319.654277, within(1e-6));
        assertThat(effects.mean().value()).isCloseTo(1527.5, within(1e-9));
        assertThat(effects.mean().sd()).isCloseTo(19.38341, within(1e-5));
    }

    @ParameterizedTest
    @CsvSource({"A, -17.60685", "B, 0.39126", "C, 28.56223", "D, -23.08454", "E, 56.73319", "F, -44.99529"})
    void dyestuffsBatches(String batch, double effect) {
        LevelEffect level = fit(DYESTUFF).factor("batch").level(batch).orElseThrow();
        assertThat(level.effect().value()).isCloseTo(effect, within(1e-4));
        assertThat(level.effect().sd()).isCloseTo(24.77303, within(1e-4));
        assertThat(level.score().value()).isCloseTo(1527.5 + effect, within(1e-4));
        assertThat(level.records()).isEqualTo(5);
    }

    @Test
    void dyestuffsDoubt() {
        FactorEffects batch = fit(DYESTUFF).factor("batch");
        Difference difference = batch.difference("A", "E").orElseThrow();
        assertThat(difference.value()).isCloseTo(-17.60685 - 56.73319, within(1e-4));
        assertThat(difference.sd()).isCloseTo(27.69959, within(1e-4));
        assertThat(batch.level("E").orElseThrow().score().sd()).isCloseTo(20.03505, within(1e-4));
        Interval eighty = batch.level("E").orElseThrow().eighty();
        // The normal quantile of 0.9, Abramowitz and Stegun 1964, table 26.5.
        assertThat((eighty.high() - eighty.low()) / 2).isCloseTo(1.28155 * 20.03505, within(1e-3));
        assertThat(batch.difference("E", "A")).contains(difference.turned());
        assertThat(batch.difference("E", "E")).isEmpty();
    }

    @Test
    void aVarianceMayBeExactlyNothing() {
        Effects effects = fit(Reference.of("dyestuff2").design("yield", "batch"));
        assertThat(effects.factor("batch").sd()).isZero();
        assertThat(effects.residual() * effects.residual()).isCloseTo(13.80631, within(1e-5));
        assertThat(effects.mean().value()).isCloseTo(5.6656, within(1e-9));
        assertThat(effects.criterion()).hasValueCloseTo(161.8282778, within(1e-6));
        assertThat(effects.factor("batch").levels())
                .allSatisfy(level -> assertThat(level.effect()).isEqualTo(new Estimate(0, 0)));
        assertThat(effects.factor("batch").differences())
                .allSatisfy(difference -> assertThat(difference.better()).isEqualTo(0.5));
    }

    @Test
    void penicillinIsCrossed() {
        Effects effects = fit(Reference.of("penicillin").design("diameter", "plate", "sample"));
        assertThat(effects.factor("plate").sd()).isCloseTo(.846704, within(1e-5));
        assertThat(effects.factor("sample").sd()).isCloseTo(1.931559, within(1e-5));
        assertThat(effects.residual()).isCloseTo(.549923, within(1e-5));
        assertThat(effects.criterion()).hasValueCloseTo(330.860589, within(1e-6));
        assertThat(effects.mean().value()).isCloseTo(22.972222, within(1e-6));
        assertThat(effects.mean().sd()).isCloseTo(.8086, within(5e-5));
    }

    @ParameterizedTest
    @CsvSource({
        "sample, A, 2.18706",
        "sample, B, -1.01048",
        "sample, C, 1.93790",
        "sample, D, -0.09689",
        "sample, E, -0.01384",
        "sample, F, -3.00374",
        "plate, a, 0.80455",
        "plate, g, -1.37552",
        "plate, m, 1.42742",
        "plate, x, -1.21980"
    })
    void penicillinsLevels(String factor, String level, double effect) {
        FactorEffects found = fit(Reference.of("penicillin").design("diameter", "plate", "sample"))
                .factor(factor);
        assertThat(found.level(level).orElseThrow().effect().value()).isCloseTo(effect, within(1e-5));
    }

    @Test
    void pastesIsNested() {
        Design design = Reference.of("pastes").design("strength", "batch", "cask");
        assertThat(design.nested()).containsExactly(new Nested("cask", "batch"));
        Effects effects = fit(design);
        assertThat(effects.factor("cask").sd()).isCloseTo(2.904077, within(2e-5));
        assertThat(effects.factor("batch").sd()).isCloseTo(1.287367, within(2e-5));
        assertThat(effects.residual()).isCloseTo(.823407, within(1e-5));
        assertThat(effects.criterion()).hasValueCloseTo(246.990746, within(1e-6));
        assertThat(effects.mean().value()).isCloseTo(60.053333, within(1e-6));
        assertThat(effects.mean().sd()).isCloseTo(.676870, within(1e-5));
    }

    /** The differences by Henderson's equations written out in R, at lme4's variances. */
    @Test
    void pastesLevels() {
        Effects effects = fit(Reference.of("pastes").design("strength", "batch", "cask"));
        LevelEffect batch = effects.factor("batch").level("A").orElseThrow();
        assertThat(batch.effect().value()).isCloseTo(.800646, within(2e-5));
        assertThat(batch.effect().sd()).isCloseTo(1.057238, within(2e-5));
        LevelEffect cask = effects.factor("cask").level("A:a").orElseThrow();
        assertThat(cask.effect().value()).isCloseTo(1.774686, within(2e-5));
        assertThat(cask.score().value()).isCloseTo(60.053333 + .800646 + 1.774686, within(5e-5));
        Difference batches = effects.factor("batch").difference("A", "B").orElseThrow();
        assertThat(batches.value()).isCloseTo(1.073155, within(2e-5));
        assertThat(batches.sd()).isCloseTo(1.454511, within(2e-5));
        Difference casks = effects.factor("cask").difference("A:a", "B:a").orElseThrow();
        assertThat(casks.value()).isCloseTo(1.964184, within(2e-5));
        assertThat(casks.sd()).isCloseTo(.809296, within(2e-5));
    }

    /** A cask of a batch, renamed, is the same cask: numbers do not hang on the order of factors or records. */
    @Test
    void theOrderDoesNotMatter() {
        Effects one = fit(Reference.of("pastes").design("strength", "batch", "cask"));
        Effects other = fit(Reference.of("pastes").design("strength", "cask", "batch"));
        assertThat(other.criterion()).hasValueCloseTo(one.criterion().orElseThrow(), within(1e-7));
        assertThat(other.factor("cask").sd()).isCloseTo(one.factor("cask").sd(), within(1e-4));
        assertThat(other.factors()).extracting(FactorEffects::name).containsExactly("cask", "batch");
    }

    @Test
    void withoutFactorsItIsAMean() {
        Effects effects = fit(Design.of(
                List.of(),
                List.of(Observation.of(1, List.of()), Observation.of(2, List.of()), Observation.of(6, List.of()))));
        assertThat(effects.mean().value()).isCloseTo(3, within(1e-12));
        assertThat(effects.residual()).isCloseTo(Math.sqrt(7), within(1e-12));
        assertThat(effects.mean().sd()).isCloseTo(Math.sqrt(7.0 / 3), within(1e-12));
    }

    @Test
    void aFactorOfOneLevelExplainsNothing() {
        Effects effects = fit(Design.of(
                List.of("season"),
                List.of(
                        Observation.of(1, List.of("one")),
                        Observation.of(2, List.of("one")),
                        Observation.of(6, List.of("one")))));
        assertThat(effects.factor("season").sd()).isZero();
        assertThat(effects.factor("season").differences()).isEmpty();
    }

    @Test
    void whatLeavesNothingOverHasNoAnswer() {
        List<Observation> same = List.of(Observation.of(4, List.of("a")), Observation.of(4, List.of("b")));
        assertThat(Reml.fit(Design.of(List.of("variety"), same))).isEmpty();
        List<Observation> exact = List.of(
                Observation.of(4, List.of("a")), Observation.of(4, List.of("a")),
                Observation.of(5, List.of("b")), Observation.of(5, List.of("b")));
        assertThat(Reml.fit(Design.of(List.of("variety"), exact))).isEmpty();
        List<Observation> single = List.of(Observation.of(4, List.of("a")), Observation.of(2, List.of("b")));
        assertThat(Reml.fit(Design.of(List.of("variety"), single))).isEmpty();
    }
}
