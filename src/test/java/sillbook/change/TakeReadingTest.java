// SPDX-License-Identifier: Apache-2.0
package sillbook.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Settings;
import sillbook.model.SpotReading;
import sillbook.model.Temperature;
import sillbook.model.Thermometer;

class TakeReadingTest {
    private static final Temperature FIVE = new Temperature(5_000, "5 C");

    private final Bench bench = new Bench();

    private TakeReading at(String local) {
        return new TakeReading(Bench.CELLAR.id(), FIVE, Optional.of(LocalDateTime.parse(local)));
    }

    @Test
    void isReadNowUnlessAnotherMomentIsSaid() {
        Step step = bench.done(new TakeReading(Bench.CELLAR.id(), FIVE, Optional.empty()));

        assertThat(step.name()).isEqualTo("reading of cellar written down");
        assertThat(bench.journal.spotReadings().all())
                .extracting(SpotReading::at, SpotReading::temperature)
                .containsExactly(tuple(bench.hand.now(), FIVE));
    }

    @ParameterizedTest
    @CsvSource({
        "2026-10-25T01:30, 2026-10-24T23:30:00Z, before the clocks change",
        "2026-10-25T02:30, 2026-10-25T00:30:00Z, the hour comes twice and the first is meant",
        "2026-10-25T03:30, 2026-10-25T02:30:00Z, after",
        "2026-03-29T02:30, 2026-03-29T01:30:00Z, the hour is passed over and the next is meant",
        "2026-03-29T03:30, 2026-03-29T01:30:00Z, after"
    })
    void isReadByTheClockOfThePlace(String local, String instant, String why) {
        Settings now = bench.journal.settings();
        bench.done(new WriteDown(new Settings(
                ZoneId.of("Europe/Berlin"),
                MonthDay.of(7, 1),
                now.temperatures(),
                now.lengths(),
                now.colours(),
                now.dailyCare())));

        bench.done(at(local));

        assertThat(bench.journal.spotReadings().all())
                .as(why)
                .extracting(SpotReading::at)
                .containsExactly(Instant.parse(instant));
    }

    @Test
    void cannotBeReadBeforeItIs() {
        bench.done(at("2027-01-12T09:00"));

        assertThat(bench.refused(at("2027-01-12T09:01"))).startsWith("That moment is still to come");
    }

    @Test
    void keepsThePlaceFromGoing() {
        bench.done(at("2027-01-12T08:00"));
        SpotReading reading = bench.journal.spotReadings().all().iterator().next();

        assertThat(bench.refused(new Remove(Bench.CELLAR)))
                .isEqualTo("The place cellar is still used by reading of cellar. Nothing was removed.");
        assertThat(bench.done(new Remove(reading)))
                .isEqualTo(new Step("reading of cellar removed", List.of(new Edit.Remove(reading))));
        bench.done(new Remove(Bench.CELLAR));
        assertThat(bench.refused(at("2027-01-12T08:00"))).isEqualTo(Bench.GONE);
    }

    @Test
    void aThermometerIsPutRightByWhatItReadsInIce() {
        Id<Thermometer> id = new Id<>(9, 9);
        Thermometer untried = new Thermometer(id, Bench.CELLAR.id(), "on the middle shelf", Optional.empty());
        Thermometer tried = new Thermometer(
                id,
                Bench.CELLAR.id(),
                "",
                Optional.of(new Thermometer.IceTest(new Temperature(600, "0.6"), Day.on(Bench.TODAY))));

        assertThat(untried.correctionMilli()).isZero();
        assertThat(tried.correctionMilli()).isEqualTo(-600);
        assertThat(bench.done(new WriteDown(untried)).name()).isEqualTo("thermometer of cellar written down");
        assertThat(bench.done(new WriteDown(tried)).name()).isEqualTo("thermometer of cellar corrected");
        assertThat(bench.journal.thermometerAt(Bench.CELLAR.id())).contains(tried);
        assertThat(bench.refused(new WriteDown(
                        new Thermometer(new Id<>(9, 8), Bench.CELLAR.id(), "by the door", Optional.empty()))))
                .startsWith("There is a thermometer of cellar already.");
        assertThat(bench.journal.thermometerAt(Bench.SILL.id())).isEmpty();
    }
}
