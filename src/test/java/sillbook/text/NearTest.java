// SPDX-License-Identifier: Apache-2.0
package sillbook.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearTest {
    /** "kitten" and "sitting" are the textbook pair of Levenshtein's distance, "ca" and "abc" the one where the restricted form gives 3. From memory. */
    @ParameterizedTest(name = "{0} and {1}: {2}")
    @CsvSource({"kitten, sitting, 3", "ca, abc, 3", "today, tpday, 1", "pots, post, 1", "'', cold, 4", "Écru, ecru, 0"})
    void slipsAreCounted(String one, String other, int slips) {
        assertThat(Near.distance(one, other)).isEqualTo(slips);
        assertThat(Near.distance(other, one)).isEqualTo(slips);
    }

    @Test
    void aWordIsTakenForTheNearestWithinASlipInThreeLetters() {
        List<String> commands = List.of("today", "pots", "places", "diary");

        assertThat(Near.closest("tody", commands)).hasValue("today");
        assertThat(Near.closest("palces", commands)).hasValue("places");
        assertThat(Near.closest("xyz", commands)).isEmpty();
        assertThat(Near.closest("p", List.of())).isEmpty();
    }

    @RepeatedTest(100)
    void eachSlipAddsAtMostOne(RepetitionInfo repetition) {
        Random random = new Random(repetition.getCurrentRepetition());
        String word = word(random);
        StringBuilder slipped = new StringBuilder(word);
        int slips = random.nextInt(3);
        for (int i = 0; i < slips; i++) {
            slipped.insert(random.nextInt(slipped.length() + 1), (char) ('a' + random.nextInt(26)));
        }
        assertThat(Near.distance(word, slipped.toString())).isEqualTo(slips);
    }

    private static String word(Random random) {
        return random.ints(1 + random.nextInt(8), 'a', 'z' + 1)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
