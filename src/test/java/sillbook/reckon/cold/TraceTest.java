// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.reckon.Weather;

/** Sums of the open hours were worked out in numpy, those of autumn and winter in R as well. */
class TraceTest {
    private static final Instant BEGINNING = Instant.parse("2026-10-01T00:00:00Z");
    private static final double TOLERANCE = 1e-6;

    private static Trace trace(double... hoursAndCelsius) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < hoursAndCelsius.length; i += 2) {
            readings.add(new Reading(at(hoursAndCelsius[i]), hoursAndCelsius[i + 1]));
        }
        return Trace.of(readings, Duration.ofHours(24));
    }

    private static Instant at(double hours) {
        return BEGINNING.plusSeconds(Math.round(hours * 3600));
    }

    private static ColdHad cold(Trace trace) {
        return trace.cold(ColdWeight.USUAL);
    }

    @Test
    void readingsAreJoinedByLinesAndIntegratedExactly() {
        assertThat(cold(trace(0, 4, 5, 12, 11, 8, 12, -1, 36, 6)).effective()).isCloseTo(26.530010, within(TOLERANCE));
        assertThat(cold(trace(0, 5, 84 * 24, 5)).bridged().orElseThrow()).isEqualTo(12 * ColdHad.WEEK, within(1e-9));
    }

    @Test
    void twoReadingsOfOneMomentCountAsTheirMean() {
        Trace twice = trace(0, 4, 6, 10, 6, 12, 12, 4);
        assertThat(twice.readings()).hasSize(3);
        assertThat(cold(twice).effective()).isCloseTo(11.142857, within(TOLERANCE));
    }

    @ParameterizedTest
    @CsvSource({
        "2010-10-01T00:00:00, 2010-12-31T23:00:00, 2208, 1481, 1809.597314",
        "2010-01-01T01:00:00, 2010-03-31T23:00:00, 2159, 1907, 2084.721787",
        "2010-01-01T01:00:00, 2010-12-31T23:00:00, 8759, 3769, 4675.083678",
    })
    void theOpenHours(String from, String to, int readings, int tally, double effective) {
        ColdHad had = cold(Trace.of(Weather.hours(from, to), Trace.HALF_A_DAY));
        assertThat(had.readings()).isEqualTo(readings);
        assertThat(had.hours()).isEqualTo(readings - 1.0, within(1e-9));
        assertThat(had.tally()).isEqualTo(tally);
        assertThat(had.effective()).isCloseTo(effective, within(TOLERANCE));
        assertThat(had.unaccounted()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "2010-10-01T00:00:00, 2010-12-31T23:00:00, 1739.5, 1696.0, 1810.25, 1102, 1069",
        "2010-01-01T01:00:00, 2010-03-31T23:00:00, 2039.0, 2022.5, 2084.30, 1535, 1507",
        "2010-01-01T01:00:00, 2010-12-31T23:00:00, 3138.0, 2982.0, 4676.975, 2759, 2687",
    })
    void theOpenHoursReadingByReading(
            String from, String to, double inCelsius, double inFahrenheit, double weights, int chilling, int open) {
        List<Double> read =
                Weather.hours(from, to).stream().map(Reading::celsius).toList();
        assertThat(read.stream().mapToDouble(ChillUnits.CELSIUS::at).sum()).isCloseTo(inCelsius, within(1e-9));
        assertThat(read.stream()
                        .mapToDouble(celsius -> ChillUnits.FAHRENHEIT.at(celsius * 9 / 5 + 32))
                        .sum())
                .isCloseTo(inFahrenheit, within(1e-9));
        assertThat(read.stream().mapToDouble(ColdWeight.USUAL::at).sum()).isCloseTo(weights, within(1e-6));
        assertThat(read.stream().filter(celsius -> celsius >= 0 && celsius <= 7.2))
                .hasSize(chilling);
        assertThat(read.stream().filter(celsius -> celsius > 0 && celsius < 7.2))
                .hasSize(open);
    }

    @Test
    void chillUnitsHaveSixBandsAndOneAbove() {
        assertThatThrownBy(() -> new ChillUnits(List.of(1.4, 2.4))).isInstanceOf(IllegalArgumentException.class);
    }

    private static List<Reading> autumn(IntPredicate kept) {
        List<Reading> all = Weather.hours("2010-10-01T00:00:00", "2010-12-31T23:00:00");
        return IntStream.range(0, all.size()).filter(kept).mapToObj(all::get).toList();
    }

    @ParameterizedTest
    @CsvSource({"3, 736, 1806.590487", "6, 368, 1813.924458", "12, 184, 1720.367833"})
    void fewerReadings(int every, int readings, double effective) {
        ColdHad had = cold(Trace.of(autumn(k -> k % every == 0), Trace.HALF_A_DAY));
        assertThat(had.readings()).isEqualTo(readings);
        assertThat(had.effective()).isCloseTo(effective, within(TOLERANCE));
    }

    @Test
    void readingsThatAreMissingHereAndThere() {
        ColdHad had = cold(Trace.of(autumn(k -> k == 2207 || (k % 7 != 3 && k % 7 != 4)), Trace.HALF_A_DAY));
        assertThat(had.readings()).isEqualTo(1578);
        assertThat(had.effective()).isCloseTo(1809.630602, within(TOLERANCE));
    }

    @Test
    void aGapIsNotAccountedFor() {
        ColdHad had = cold(Trace.of(autumn(k -> k < 1001 || k > 1029), Trace.HALF_A_DAY));
        assertThat(had.effective()).isCloseTo(1780.738162, within(TOLERANCE));
        assertThat(had.bridged().orElseThrow()).isCloseTo(1809.819412, within(TOLERANCE));
        assertThat(had.bridged().orElseThrow() - had.effective()).isCloseTo(29.081250, within(TOLERANCE));
        assertThat(had.unaccounted()).isEqualTo(30, within(1e-9));
    }

    @Test
    void hoursOfEachSort() {
        ColdHad had = cold(trace(0, -2, 4, 2, 8, 10, 12, 10, 16, 0, 20, 0));
        assertThat(had.freezing()).isEqualTo(2, within(1e-9));
        assertThat(had.counted()).as("0 to 2, 2 to 9, 9 to 0").isEqualTo(2 + 3.5 + 3.6, within(1e-9));
        assertThat(had.chilling()).as("and what stays at 0").isEqualTo(2 + 2.6 + 2.88 + 4, within(1e-9));
        assertThat(had.tally()).isEqualTo(1);
    }

    @Test
    void aPartOfItIsCutOutBetweenTheReadings() {
        Trace part = trace(0, 0, 10, 10, 20, 0).between(at(5), at(12));
        assertThat(part.readings())
                .containsExactly(new Reading(at(5), 5), new Reading(at(10), 10), new Reading(at(12), 8));
        assertThat(trace(0, 0, 10, 10).between(at(2), at(4)).readings())
                .containsExactly(new Reading(at(2), 2), new Reading(at(4), 4));
        assertThat(trace(0, 0, 10, 10).between(at(11), at(14)).readings()).isEmpty();
        assertThat(trace(0, 0, 10, 10).between(at(-5), at(24)).readings()).hasSize(2);
    }

    @Test
    void theMomentSoManyHoursAreReached() {
        Trace even = trace(0, 5, 10, 5, 20, 5);
        assertThat(even.reached(ColdWeight.USUAL, 12)).contains(at(12));
        assertThat(even.reached(ColdWeight.USUAL, 21)).isEmpty();
        assertThat(trace(0, 5, 10, 5, 40, 5, 50, 5).reached(ColdWeight.USUAL, 12))
                .as("a gap adds nothing")
                .contains(at(42));
    }

    @Test
    void aSpellIsWarmForLongerThanADay() {
        Trace warm = trace(0, 12, 2, 14, 20, 16, 30, 14, 32, 12, 40, 12, 42, 14, 50, 14, 52, 12);
        assertThat(cold(warm).warmSpells()).containsExactly(new WarmSpell(at(1), at(31), 16));
        assertThat(cold(trace(0, 15, 20, 15, 24, 15)).warmSpells())
                .as("a day is not longer")
                .isEmpty();
        assertThat(cold(trace(0, 15, 20, 15, 46, 15, 60, 15)).warmSpells())
                .as("a gap of 26 hours parts it")
                .isEmpty();
        assertThat(cold(trace(0, 15, 20, 15, 40, 15)).warmSpells()).hasSize(1);
    }

    @Test
    void nothingReadIsNothingKnown() {
        ColdHad had = cold(Trace.of(List.of(), Trace.HALF_A_DAY));
        assertThat(had).isEqualTo(new ColdHad(0, 0, 0, Optional.of(0.0), 0, 0, 0, 0, List.of(), 0));
        assertThat(had.weeks()).isZero();
    }
}
