// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProportionTest {
    /**
     * R. G. Newcombe, Statistics in Medicine 17, 1998, 857-872, table I, method 3 (the score method without correction
     * for continuity), the table that textbooks repeat; from memory, and reckoned again by hand.
     */
    @ParameterizedTest
    @CsvSource({"81, 263, .2553, .3662", "15, 148, .0624, .1605", "0, 20, .0000, .1611", "1, 29, .0061, .1718"})
    void wilsonsInterval(int hits, int of, double low, double high) {
        Interval interval = new Proportion(hits, of).interval(.95).orElseThrow();
        assertThat(interval.low()).isCloseTo(low, within(5e-5));
        assertThat(interval.high()).isCloseTo(high, within(5e-5));
    }

    @Test
    void allAndNoneTouchTheEnds() {
        assertThat(new Proportion(0, 3).interval(.8).orElseThrow().low()).isZero();
        Interval all = new Proportion(3, 3).interval(.8).orElseThrow();
        assertThat(all.high()).isEqualTo(1);
        assertThat(all.contains(.9)).isTrue();
        assertThat(all.contains(.1)).isFalse();
        assertThat(all.contains(1.1)).isFalse();
    }

    @Test
    void noneOfNoneIsNoData() {
        assertThat(new Proportion(0, 0).interval(.95)).isEmpty();
        assertThat(new Proportion(2, 3).plus(new Proportion(1, 5))).isEqualTo(new Proportion(3, 8));
        assertThatIllegalArgumentException().isThrownBy(() -> new Proportion(4, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new Proportion(-1, 3));
    }
}
