// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AgoTest {
    private static final Instant NOW = Instant.parse("2027-01-12T12:00:00Z");

    @ParameterizedTest
    @CsvSource({
        "2027-01-12T13:00:00Z, just now",
        "2027-01-12T11:59:01Z, just now",
        "2027-01-12T11:59:00Z, 1 min ago",
        "2027-01-12T11:00:01Z, 59 min ago",
        "2027-01-12T11:00:00Z, 1 h ago",
        "2027-01-10T12:00:01Z, 47 h ago",
        "2027-01-10T12:00:00Z, 2 d ago",
        "2027-01-03T08:00:00Z, 9 d ago"
    })
    void sinceAnInstant(String then, String said) {
        assertThat(Ago.say(Instant.parse(then), NOW)).isEqualTo(said);
    }

    @Test
    void sinceADay() {
        LocalDate today = LocalDate.of(2027, 1, 12);

        assertThat(Ago.say(today.plusDays(1), today)).isEqualTo("today");
        assertThat(Ago.say(today, today)).isEqualTo("today");
        assertThat(Ago.say(today.minusDays(3), today)).isEqualTo("3 d ago");
    }
}
