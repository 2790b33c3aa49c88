// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.plan.Ribbon;
import sillbook.reckon.dates.DaySpan;

class BloomWordsTest {
    private static final DaySpan DAYS = DaySpan.ofInclusive(LocalDate.of(2028, 1, 1), LocalDate.of(2028, 1, 31));

    /** A pot in bloom on these days of January. */
    private static Ribbon ribbon(int... days) {
        List<Integer> pots = new ArrayList<>(Collections.nCopies((int) DAYS.days(), 0));
        for (int day : days) {
            pots.set(day - 1, 1);
        }
        return new Ribbon(DAYS, pots, Collections.nCopies((int) DAYS.days(), 0.0), List.of());
    }

    @Test
    void saysFromWhenToWhenAndWhichDaysAreBare() {
        assertThat(BloomWords.days(ribbon(5, 6, 9, 10))).contains("flowers from 5 to 10 Jan; none on 7-8 Jan");
        assertThat(BloomWords.days(ribbon(5, 6, 7))).contains("flowers from 5 to 7 Jan, every day");
        assertThat(BloomWords.days(ribbon(2, 4, 6, 8)))
                .contains("flowers from 2 to 8 Jan; none on 3 Jan, 5 Jan and 7 Jan");
    }

    @Test
    void ofManySpellsItNamesTheFirstAndCountsTheRest() {
        assertThat(BloomWords.days(ribbon(2, 4, 6, 8, 10)))
                .contains("flowers from 2 to 10 Jan; none on 3 Jan, 5 Jan and 2 times more");
    }

    @Test
    void withoutAFlowerThereIsNothingToSay() {
        assertThat(BloomWords.days(ribbon())).isEmpty();
    }
}
