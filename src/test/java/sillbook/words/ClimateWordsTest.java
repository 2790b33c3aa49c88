// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.model.DaysRead;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.LastRead;
import sillbook.model.Place;
import sillbook.model.Place.Sort;
import sillbook.model.Temperature;
import sillbook.season.PlaceClimate;
import sillbook.season.Winter;

class ClimateWordsTest {
    private static final LocalDate TODAY = LocalDate.of(2027, 1, 12);
    private static final Instant NOW = TODAY.atTime(12, 0).toInstant(ZoneOffset.UTC);

    private static Winter cellar() {
        return winter().place("cellar", Sort.CELLAR).usually(2, 9);
    }

    private static PlaceClimate climate(Journal journal) {
        return PlaceClimate.of(journal, place(journal), TODAY);
    }

    private static Id<Place> place(Journal journal) {
        return journal.places().all().iterator().next().id();
    }

    private static ClimateWords words(Journal journal) {
        return new ClimateWords(journal.settings(), NOW);
    }

    private static String all(Winter told) {
        Journal journal = told.journal();
        return String.join("; ", words(journal).all(climate(journal)));
    }

    @Test
    void aPlaceThatWasNeverReadIsUnread() {
        Journal journal = cellar().journal();

        assertThat(all(cellar())).isEqualTo("unread");
        assertThat(words(journal).ago(climate(journal))).isEqualTo("unread");
    }

    /** From one minute before midnight of 29 December to noon of 12 January: 14 days, as the place is unread. */
    @Test
    void daysAreCountedFromMidnightToMidnight() {
        Winter told = cellar().logged("1 dec", "29 dec", 8);
        Journal journal = told.journal();

        assertThat(all(told)).startsWith("8 C 14 d ago");
        assertThat(words(journal).ago(climate(journal))).isEqualTo("14 d ago");
    }

    @Test
    void aWarmPlaceIsOverItsBandSinceADay() {
        assertThat(all(cellar().logged("1 jan", "9 jan", 8).logged("10 jan", "12 jan", 9.6)))
                .contains("8 to 9.6 C this week")
                .contains("over its band since Sun 10 Jan, 9.6 C on the average")
                .contains("since 1 Jan 3 days over 9 C;")
                .contains("100 % read")
                .doesNotContain("not read");
    }

    private static String atLength(Winter told, boolean forCold) {
        Journal journal = told.journal();
        return words(journal).atLength(climate(journal).strayed().orElseThrow(), forCold);
    }

    @Test
    void whereItStraysItIsSaidWhatADayThereIsWorth() {
        Winter warm = cellar().logged("1 jan", "10 jan", 8).logged("11 jan", "12 jan", 9.6);

        assertThat(atLength(warm, true))
                .isEqualTo("Over its band since Mon 11 Jan, 48 h so far. At 9.6 C a day gives 20 of its 24 hours (?).");
        assertThat(atLength(warm, false)).isEqualTo("Over its band since Mon 11 Jan, 48 h so far.");
        assertThat(atLength(cellar().logged("1 jan", "12 jan", 1), true))
                .isEqualTo(
                        "Under its band since Fri 1 Jan, 12 days so far. At 1 C a day gives 12 of its 24 hours (?).");
        assertThat(atLength(cellar().read("2 jan", "9 jan", 10, 12), true))
                .isEqualTo("Over its band since Sat 2 Jan, 7 days so far.");
    }

    @Test
    void aPlaceOnItsWayOutSaysHowFast() {
        String warming = all(cellar().logged("8 jan", "9 jan", 5)
                .logged("10 jan", "10 jan", 6)
                .logged("11 jan", "11 jan", 7)
                .logged("12 jan", "12 jan", 8));
        String cooling = all(cellar().logged("8 jan", "9 jan", 6)
                .logged("10 jan", "10 jan", 5)
                .logged("11 jan", "11 jan", 4)
                .logged("12 jan", "12 jan", 3));

        assertThat(warming).contains(" C warmer a day, over its band by ").contains(" at that pace");
        assertThat(cooling).contains(" C colder a day, under its band by ");
    }

    @Test
    void daysInFrostAndGapsAreNamed() {
        String told = all(cellar().logged("1 nov", "1 nov", -1)
                .logged("3 nov", "3 nov", 4)
                .logged("5 nov", "5 nov", 4)
                .logged("8 nov", "8 nov", 4)
                .logged("12 nov", "12 nov", 4));

        assertThat(told).contains("since 1 Nov 1 day under 2 C, 1 day with frost, under 0 C;");
        assertThat(told).contains("not read 2 Nov, 4 Nov, 6-7 Nov and 1 more times");
    }

    @Test
    void ofSpansTheAverageIsNotKnown() {
        assertThat(all(cellar().read("2 jan", "9 jan", 10, 12)))
                .contains("over its band since Sat 2 Jan;")
                .doesNotContain("average");
    }

    @Test
    void aPlaceWithoutABandIsHeldToFrostOnly() {
        assertThat(all(winter().place("sill", Sort.WARM_SILL).logged("1 jan", "12 jan", 18)))
                .contains("since 1 Jan no day with frost;");
    }

    @Test
    void aPlaceThatKeptToItsBandSaysNoMore() {
        assertThat(all(winter().place("loft", Sort.OTHER).usually(0, 9).logged("1 jan", "12 jan", 5)))
                .contains("since 1 Jan no day out of its band;");
    }

    @Test
    void howLongAgoIsByTheNewestOfBoth() {
        Journal spans = cellar().read("2 jan", "9 jan", 3, 8).journal();
        Journal both = cellar().read("2 jan", "9 jan", 3, 8).journal();
        Id<Place> place = place(both);
        LastRead morning = new LastRead(place, Instant.parse("2027-01-12T10:00:00Z"), Temperature.ofCelsius(5));
        LastRead old = new LastRead(place, Instant.parse("2027-01-01T10:00:00Z"), Temperature.ofCelsius(5));

        assertThat(words(spans).ago(climate(spans))).isEqualTo("4 d ago");
        assertThat(ago(both.with(DaysRead.of(List.of(), List.of(morning))))).isEqualTo("2 h ago");
        assertThat(ago(both.with(DaysRead.of(List.of(), List.of(old))))).isEqualTo("4 d ago");
    }

    private static String ago(Journal journal) {
        return words(journal).ago(climate(journal));
    }
}
