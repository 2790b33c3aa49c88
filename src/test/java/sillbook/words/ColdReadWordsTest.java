// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.season.ColdRead;

class ColdReadWordsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "28 | 14 | 7 | 14 | 2 weeks read, ?1 to 2 count; 2 weeks not read",
                "14 | 14 | 14 | 14 | 2 weeks read, all count (?)",
                "14 | 7 | 0 | 0 | 1 week read, nothing counts (?); 1 week not read",
                "14 | 14 | 7 | 7 | 2 weeks read, ?1 count",
            })
    void weeksToATenth(double in, double read, double least, double most, String said) {
        assertThat(ColdReadWords.say(new ColdRead(in, read, least, most))).isEqualTo(said);
    }
}
