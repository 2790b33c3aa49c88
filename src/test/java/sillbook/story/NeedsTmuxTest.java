// SPDX-License-Identifier: Apache-2.0
package sillbook.story;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class NeedsTmuxTest {
    @Test
    void aStoryRunsWhereTmuxIs() {
        assertThat(NeedsTmux.decide(true, false).isDisabled()).isFalse();
        assertThat(NeedsTmux.decide(true, true).isDisabled()).isFalse();
    }

    @Test
    void aStoryIsLeftOutWithItsReason() {
        assertThat(NeedsTmux.decide(false, false).isDisabled()).isTrue();
        assertThat(NeedsTmux.decide(false, false).getReason()).contains("tmux is not installed");
    }

    @Test
    void aStoryThatMustRunFails() {
        assertThatThrownBy(() -> NeedsTmux.decide(false, true)).hasMessageContaining("must run");
    }
}
