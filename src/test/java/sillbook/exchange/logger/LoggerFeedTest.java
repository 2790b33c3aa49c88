// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sillbook.model.LoggerFormat;
import sillbook.words.logger.Counted;

class LoggerFeedTest {
    private static final String FILE = """
            time,C
            2026-11-26T08:00Z,5.0
            2026-11-26T09:00Z,5.5
            2026-11-26T11:01Z,6.0
            2026-11-27T09:00Z,85
            """;

    private final List<Taken> taken = new ArrayList<>();

    private Counted read(Instant now) {
        LoggerFile file = LoggerFile.look(Source.of(FILE.getBytes(UTF_8)), LoggerFormat.OPEN, List.of(), ZoneOffset.UTC)
                .value()
                .orElseThrow();
        try (LoggerFeed feed = file.feed(now)) {
            while (feed.advance()) {
                taken.add(new Taken(Instant.ofEpochSecond(feed.at()), feed.milli(), feed.isSuspicious()));
            }
            return feed.counted();
        }
    }

    @Test
    void whatIsOfAMomentToComeCanHardlyBeTrue() {
        Counted counted = read(Instant.parse("2026-11-26T09:00:00Z"));

        assertThat(taken).extracting(Taken::isSuspicious).containsExactly(false, false, true, true);
        assertThat(counted.readings()).isEqualTo(4);
        assertThat(counted.ahead()).isEqualTo(2);
        assertThat(counted.suspicious()).as("by their temperature").isZero();
        assertThat(counted.strange()).isEmpty();
        assertThat(counted.days()).containsExactly(Map.entry(LocalDate.of(2026, 11, 26), 5_250));
    }

    @Test
    void aClockThatIsUpToTwoHoursFastIsBelieved() {
        Instant third = taken(2);

        assertThat(read(third.minusSeconds(7200)).ahead())
                .as("the fourth alone")
                .isEqualTo(1);
        assertThat(read(third.minusSeconds(7201)).ahead()).isEqualTo(2);
    }

    private Instant taken(int number) {
        read(Instant.MAX);
        return taken.get(number).at();
    }

    @Test
    void onceTheMomentIsOverItsTemperatureIsJudged() {
        Counted counted = read(Instant.parse("2026-11-28T09:00:00Z"));

        assertThat(taken).extracting(Taken::isSuspicious).containsExactly(false, false, false, true);
        assertThat(counted.ahead()).isZero();
        assertThat(counted.suspicious()).isEqualTo(1);
    }
}
