// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellsTest {
    @ParameterizedTest
    @CsvSource({"0, 0 hours", "12, half a day", "24, 1 day", "36, 36 hours", "240, 10 days"})
    void saysDaysWhereItIsWholeOnes(int hours, String said) {
        assertThat(Spells.say(Duration.ofHours(hours))).isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0 minutes",
        "59, 59 minutes",
        "60, 1 hour",
        "119, 1 hour",
        "2879, 47 hours",
        "2880, 2 days",
        "5000, 3 days"
    })
    void saysTheUnitThatIsLargeEnough(int minutes, String said) {
        assertThat(Spells.roughly(Duration.ofMinutes(minutes))).isEqualTo(said);
    }
}
