// SPDX-License-Identifier: Apache-2.0
package sillbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.Opening.What;

class OpeningTest {
    @Test
    void noArgumentAsksForTheScreens() {
        assertThat(Opening.of()).isEqualTo(new Opening(What.SCREENS, Optional.empty()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"--journal w.sillbook", "--journal=w.sillbook", "--journal v.sillbook --journal=w.sillbook"})
    void aJournalAloneAsksForTheScreensOfThatJournal(String line) {
        assertThat(Opening.of(line.split(" ", -1))).isEqualTo(new Opening(What.SCREENS, Optional.of("w.sillbook")));
    }

    @Test
    void theDemoIsKnownByItsWordAlone() {
        assertThat(Opening.of("demo")).isEqualTo(new Opening(What.DEMO, Optional.empty()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"today", "demo --help", "--help", "--version", "--journal", "--journal w today", "-x", "scrns"})
    void allElseIsForTheCommandsToJudge(String line) {
        assertThat(Opening.of(line.split(" ", -1)).what()).isEqualTo(What.COMMAND);
    }
}
