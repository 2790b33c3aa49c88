// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.model.DayRead;
import sillbook.model.Id;
import sillbook.model.Logged;
import sillbook.model.Place;
import sillbook.season.ReadStretch.Gap;

class ReadStretchTest {
    private static final Instant START = Instant.parse("2026-11-02T00:00:00Z");
    private static final Place PORCH = Place.of(new Id<>(2, 1), "porch", Place.Sort.PORCH);

    private static Logged at(int hours, boolean isSuspicious) {
        return new Logged(START.plus(Duration.ofHours(hours)), 5_000, isSuspicious);
    }

    private static List<Gap> gaps(Logged... readings) {
        return new ReadStretch(PORCH, List.of(), List.of(readings), List.of(), List.of()).gaps();
    }

    @Test
    void whatIsBridgedIsNoGap() {
        assertThat(gaps(at(0, false), at(12, false))).isEmpty();
        assertThat(gaps(at(0, false), at(12, false), at(25, false)))
                .containsExactly(new Gap(at(12, false).at(), at(25, false).at()));
        assertThat(gaps()).isEmpty();
    }

    @Test
    void aSuspiciousReadingClosesNoGap() {
        List<Gap> gaps = gaps(at(0, false), at(8, true), at(16, false));

        assertThat(gaps).containsExactly(new Gap(START, at(16, false).at()));
        assertThat(gaps.get(0).length()).isEqualTo(Duration.ofHours(16));
    }

    @Test
    void isEmptyWhereNothingWasRead() {
        assertThat(new ReadStretch(PORCH, List.of(), List.of(), List.of(), List.of()).isEmpty())
                .isTrue();
        assertThat(new ReadStretch(PORCH, List.of(), List.of(at(0, false)), List.of(), List.of()).isEmpty())
                .isFalse();
        assertThat(new ReadStretch(PORCH, List.of(), List.of(), List.<DayRead>of(), List.of()).isEmpty())
                .isTrue();
    }
}
