// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.reckon.Weather;
import sillbook.reckon.heat.SineDay;

/** The open daily file, worked out by the closed form in numpy and by numerical integration in scipy; the first winter in R as well. */
class DayTraceTest {
    private static final double EIGHT_WEEKS = 8 * ColdHad.WEEK;
    private static final double FOURTEEN_WEEKS = 14 * ColdHad.WEEK;

    @ParameterizedTest
    @CsvSource({
        "2012-10-01, 2013-03-31, 182, 3204.9857, 19.0773, 1990.5733, 2749.4291, 582.2944, 1370.8910, 2012-12-23, 2013-02-13",
        "2013-10-01, 2014-03-31, 182, 3099.1473, 18.4473, 1643.0347, 2452.2937, 610.9008, 1407.5563, 2013-12-28, 2014-02-17",
        "2013-11-15, 2014-02-20, 98, 1848.2626, 11.0016, 1178.1469, 1653.5606, 198.1772, 583.6563, 2014-01-24,",
    })
    void theOpenDays(
            LocalDate from,
            LocalDate to,
            int days,
            double effective,
            double weeks,
            double chilling,
            double counted,
            double aboveFive,
            double aboveNothing,
            LocalDate eight,
            LocalDate fourteen) {
        DayTrace trace = new DayTrace(Weather.days()).between(from, to);
        ColdHad had = trace.cold(ColdWeight.USUAL);
        assertThat(had.readings()).isEqualTo(days);
        assertThat(had.effective()).isCloseTo(effective, within(1e-4));
        assertThat(had.weeks()).isCloseTo(weeks, within(1e-4));
        assertThat(had.chilling()).isCloseTo(chilling, within(1e-4));
        assertThat(had.counted()).isCloseTo(counted, within(1e-4));
        assertThat(degreeDays(trace, 5)).isCloseTo(aboveFive, within(1e-4));
        assertThat(degreeDays(trace, 0)).isCloseTo(aboveNothing, within(1e-4));
        assertThat(trace.reached(ColdWeight.USUAL, EIGHT_WEEKS)).contains(eight);
        assertThat(trace.reached(ColdWeight.USUAL, FOURTEEN_WEEKS)).isEqualTo(Optional.ofNullable(fourteen));
    }

    private static double degreeDays(DayTrace trace, double base) {
        return trace.days().values().stream()
                .mapToDouble(day -> day.degreesAbove(base))
                .sum();
    }

    private static DayTrace days(Map<Integer, SineDay> byDay) {
        TreeMap<LocalDate, SineDay> days = new TreeMap<>();
        byDay.forEach((day, swing) -> days.put(LocalDate.of(2027, 1, day), swing));
        return new DayTrace(days);
    }

    @Test
    void aDayThatIsNotThereIsNotAccountedFor() {
        ColdHad had = days(Map.of(1, new SineDay(3, 9), 4, new SineDay(-2, 0))).cold(ColdWeight.USUAL);
        assertThat(had.hours()).isEqualTo(96);
        assertThat(had.unaccounted()).isEqualTo(48);
        assertThat(had.effective()).isEqualTo(24, within(1e-9));
        assertThat(had.freezing()).isEqualTo(24);
        assertThat(had.tally()).isEqualTo(1);
    }

    @Test
    void warmDaysOnEndAreASpell() {
        SineDay warm = new SineDay(14, 18);
        ColdHad had = days(Map.of(1, warm, 2, new SineDay(14, 20), 3, new SineDay(5, 18), 4, warm, 6, warm))
                .cold(ColdWeight.USUAL);
        assertThat(had.warmSpells())
                .containsExactly(new WarmSpell(
                        Instant.parse("2027-01-01T00:00:00Z"), Instant.parse("2027-01-03T00:00:00Z"), 20));
    }

    @Test
    void noDays() {
        ColdHad had = days(Map.of()).cold(ColdWeight.USUAL);
        assertThat(had).isEqualTo(new ColdHad(0, 0, 0, Optional.empty(), 0, 0, 0, 0, List.of(), 0));
    }
}
