// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Two layers in a pot; the levels are sums of what lies over them. */
class LayersTest {
    private static final Frustum DEEP = new Frustum(20, 20, 22);

    @Test
    void eachAtItsLevel() {
        Layers layers = Layers.of(DEEP, 5, 3, Spacing.PACKED, 1.3).orElseThrow();

        assertThat(layers.upper().below()).isCloseTo(1.3 + 1.5, within(1e-9));
        assertThat(layers.lower().below()).isCloseTo(1.3 + 3 + 2.5 + 2.5, within(1e-9));
        assertThat(layers.under()).isCloseTo(22 - 1.3 - 3 - 2.5 - 5, within(1e-9));
        assertThat(layers.lower().bed()).isEqualTo(new Bed(20, 5, Spacing.PACKED));
        assertThat(layers.lower().places())
                .isEqualTo(layers.lower().bed().most().places());
        assertThat(layers.upper().places())
                .hasSize(new Bed(20, 3, Spacing.PACKED).most().count());
    }

    /** Three over three, touching, turned by a sixth of a circle: hexagon corners are as far apart as they are from the middle, 4/sqrt3 for bulbs of 4 cm. */
    @Test
    void theUpperIsTurnedBesideTheLower() {
        Frustum narrow = new Frustum(8.7, 8.7, 22);

        Layers layers = Layers.of(narrow, 4, 4, Spacing.TOUCHING, 1).orElseThrow();

        double out = 8.7 / 2 - 2;
        assertThat(layers.upper().places()).hasSize(3);
        assertThat(layers.aside()).isCloseTo(out, within(1e-3));
        assertThat(layers.upper()
                        .places()
                        .get(0)
                        .distance(layers.upper().places().get(1)))
                .isCloseTo(out * Math.sqrt(3), within(1e-6));
    }

    @Test
    void aPotThatNarrowsHoldsFewerBelow() {
        Layers layers =
                Layers.of(new Frustum(20, 12, 22), 4, 4, Spacing.TOUCHING, 1).orElseThrow();

        assertThat(layers.lower().bed().across())
                .isLessThan(layers.upper().bed().across());
        assertThat(layers.lower().places().size())
                .isLessThan(layers.upper().places().size());
    }

    @Test
    void tooShallowOrTooNarrow() {
        assertThat(Layers.of(new Frustum(20, 20, 9), 4, 4, Spacing.TOUCHING, 1)).isEmpty();
        assertThat(Layers.of(DEEP, 21, 3, Spacing.TOUCHING, 1)).isEmpty();
        assertThat(Layers.layer(DEEP, 19.5, Spacing.USUAL, 1)).isEqualTo(Optional.empty());
    }
}
