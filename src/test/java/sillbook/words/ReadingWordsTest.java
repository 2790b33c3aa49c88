// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Band;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Place.Sort;
import sillbook.model.Settings;
import sillbook.model.SpanReading;
import sillbook.model.SpotReading;
import sillbook.model.Temperature;
import sillbook.model.Thermometer;
import sillbook.model.Thermometer.IceTest;

class ReadingWordsTest {
    private static final Id<Place> CELLAR = new Id<>(1, 1);
    private static final ReadingWords WORDS = new ReadingWords(Settings.initial(ZoneOffset.UTC));

    private static Thermometer thermometer(String lies, double ice) {
        Day on = Day.on(LocalDate.of(2026, 10, 3));
        return new Thermometer(new Id<>(2, 2), CELLAR, lies, Optional.of(new IceTest(Temperature.ofCelsius(ice), on)));
    }

    @Test
    void readingsAreSaidWithoutTheirPlace() {
        SpotReading spot = new SpotReading(
                new Id<>(3, 3), CELLAR, Instant.parse("2027-01-12T08:05:00Z"), Temperature.ofCelsius(5));
        SpanReading span = new SpanReading(
                new Id<>(4, 4),
                CELLAR,
                Day.on(LocalDate.of(2027, 1, 5)),
                Day.on(LocalDate.of(2027, 1, 12)),
                Band.ofCelsius(3, 8));

        assertThat(WORDS.say(spot)).isEqualTo("5 C at 8:05");
        assertThat(WORDS.day(spot)).isEqualTo(LocalDate.of(2027, 1, 12));
        assertThat(WORDS.say(span)).isEqualTo("3 to 8 C since 5 Jan");
    }

    @Test
    void aThermometerSaysWhereItLiesAndHowItIsPutRight() {
        assertThat(WORDS.say(thermometer("on the top shelf", 0.6)))
                .isEqualTo("thermometer on the top shelf, put right by -0.6 C (ice water, Sat 3 Oct 2026)");
        assertThat(WORDS.say(thermometer("", 0))).isEqualTo("thermometer, reads true (ice water, Sat 3 Oct 2026)");
        assertThat(WORDS.say(new Thermometer(new Id<>(2, 2), CELLAR, "at the back", Optional.empty())))
                .isEqualTo("thermometer at the back");
    }

    @Test
    void howFarApartReadingsAreJoined() {
        assertThat(WORDS.bridged(Place.of(CELLAR, "cellar", Sort.CELLAR)))
                .isEqualTo("readings up to 10 days apart are joined");
        assertThat(WORDS.bridged(Place.of(CELLAR, "porch", Sort.PORCH)))
                .isEqualTo("readings up to half a day apart are joined");
    }
}
