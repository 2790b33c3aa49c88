// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class SizeTest {
    private static final Size SMALLEST = new Size(80, 24);

    @Test
    void holdsWhatIsNoLargerEitherWay() {
        assertThat(SMALLEST.holds(SMALLEST)).isTrue();
        assertThat(SMALLEST.holds(new Size(81, 24))).isFalse();
        assertThat(SMALLEST.holds(new Size(80, 25))).isFalse();
        assertThat(SMALLEST).hasToString("80x24");
    }

    @Test
    void noSizeIsBelowNothing() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Size(-1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Size(0, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> Key.ctrl('A'));
        assertThatIllegalArgumentException().isThrownBy(() -> Key.ctrl('{'));
    }
}
