// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.season.ColdCount;

class ColdSaidTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "28 | 7 | 14 | 14 | 14 | 0 | 2 weeks read, 2 assumed; ?2 count, 1 to 2",
                "14 | 14 | 14 | 14 | 14 | 0 | 2 weeks read; ?2 count",
                "14 | 0 | 0 | 0 | 7 | 7 | 1 week read, 1 not accounted for; nothing counts (?)",
                "14 | 0 | 0 | 7 | 14 | 0 | 2 weeks read; nothing counts (?), 0 to 1",
            })
    void weeksToATenth(int in, double least, double likely, double most, double read, double gaps, String said) {
        assertThat(ColdSaid.say(new ColdCount(in, least, likely, most, read, gaps)))
                .isEqualTo(said);
    }
}
