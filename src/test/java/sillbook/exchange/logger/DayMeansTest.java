// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

/** In Berlin the clocks went from 2 to 3 on 28 March 2027, at 1 o'clock in Greenwich. */
class DayMeansTest {
    private final DayMeans means = new DayMeans(ZoneId.of("Europe/Berlin").getRules());

    private void add(String at, int milli) {
        means.add(Instant.parse(at).getEpochSecond(), milli);
    }

    @Test
    void theNewestMayComeFirst() {
        add("2027-03-28T01:30:00Z", 7000);
        add("2027-03-28T00:30:00Z", 5000);
        add("2027-03-27T22:30:00Z", 1000);

        assertThat(means.means())
                .containsEntry(LocalDate.of(2027, 3, 28), 6000)
                .containsEntry(LocalDate.of(2027, 3, 27), 1000);
    }
}
