// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;

class DesignTest {
    private static final Observation POT = Observation.of(4, List.of("a"));

    @Test
    void levelsKeepTheirOrder() {
        Design design = Design.of(
                List.of("kind", "variety"),
                List.of(
                        Observation.of(4, List.of("tulip", "row")),
                        Observation.of(3, List.of("daffodil", "lane")),
                        Observation.of(3, List.of("tulip", "coat"))));
        assertThat(design.factors()).containsExactly("kind", "variety");
        assertThat(design.levels("variety")).containsExactly("row", "lane", "coat");
        assertThat(design.records()).isEqualTo(3);
    }

    @Test
    void whatIsNoDesignIsRefused() {
        refused("effects need two records at least", List.of("variety"), List.of(POT));
        refused("two factors have one name", List.of("variety", "variety"), List.of(POT, POT));
        refused("a record must have a level of each factor", List.of("variety", "place"), List.of(POT, POT));
    }

    private static void refused(String says, List<String> factors, List<Observation> observations) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Design.of(factors, observations))
                .withMessage(says);
    }

    @Test
    void whatIsNoNumberIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Observation.of(Double.NaN, List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new Observation(1, 0, List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new Observation(1, Double.NaN, List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new Observation(1, Double.POSITIVE_INFINITY, List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new Prior(0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Prior(1, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Prior(1, Double.POSITIVE_INFINITY));
        assertThatIllegalArgumentException().isThrownBy(() -> new Prior(Double.POSITIVE_INFINITY, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Interval(Double.NaN, 1));
    }

    @Test
    void whatIsNotThereIsNotFound() {
        Design design = Design.of(List.of("variety"), List.of(POT, Observation.of(3, List.of("b")), POT));
        assertThatIllegalArgumentException().isThrownBy(() -> design.levels("mix"));
        Effects effects = Reml.fit(Design.of(List.of("variety"), List.of(POT, POT, Observation.of(3, List.of("a")))))
                .orElseThrow();
        assertThatIllegalArgumentException().isThrownBy(() -> effects.factor("mix"));
        assertThat(effects.factor("variety").level("z")).isEmpty();
        assertThat(effects.factor("variety").difference("a", "z")).isEmpty();
    }
}
