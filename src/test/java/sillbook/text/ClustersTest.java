// SPDX-License-Identifier: Apache-2.0
package sillbook.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.Normalizer;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class ClustersTest {
    /** Examples of Unicode Standard Annex #29, table 1a. */
    @Test
    void aClusterIsWhatAPersonCallsACharacter() {
        assertThat(Clusters.of("g\u0308")).containsExactly("g\u0308");
        assertThat(Clusters.of("\uAC01")).containsExactly("\uAC01");
        assertThat(Clusters.of("\u1100\u1161\u11A8")).containsExactly("\uAC01");
        assertThat(Clusters.of("ก")).containsExactly("ก");
        assertThat(Clusters.of("🇳🇱🇧🇪")).containsExactly("🇳🇱", "🇧🇪");
        assertThat(Clusters.of("T4 é")).containsExactly("T", "4", " ", "é");
        assertThat(Clusters.of("")).isEmpty();
    }

    @RepeatedTest(100)
    void joinedAgainTheyAreTheComposedText(RepetitionInfo repetition) {
        String text = SafeTest.randomText(new Random(repetition.getCurrentRepetition()));

        assertThat(String.join("", Clusters.of(text))).isEqualTo(Normalizer.normalize(text, Normalizer.Form.NFC));
    }
}
