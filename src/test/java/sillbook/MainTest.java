// SPDX-License-Identifier: Apache-2.0
package sillbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MainTest {
    @Test
    void theProgramHasAName() {
        assertThat(Main.class.getPackageName()).isEqualTo("sillbook");
    }
}
