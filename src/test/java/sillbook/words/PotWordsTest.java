// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.season.PotNow;
import sillbook.words.line.Bench;

class PotWordsTest {
    private static PotNow pot(String label, Bench bench) {
        return bench.outlook()
                .pot(bench.journal().pot(Shelves.SEASON, label).orElseThrow().id());
    }

    private static String matters(String label, String... lines) {
        Bench bench = Shelves.after(List.of(lines));
        return new PotWords(bench.journal(), Shelves.TODAY)
                .matters(pot(label, bench))
                .orElse("");
    }

    @ParameterizedTest
    @CsvSource({
        "112, 105, '16 weeks in, about 15 cold enough'",
        "112, 112, 16 weeks in",
        "95,  81,  '13 and a half weeks in, about 11 and a half cold enough'",
        "3,   0,   'half a week in, about 0 cold enough'",
    })
    void coldIsToldInWholeOrHalfWeeks(int daysIn, int daysColdEnough, String says) {
        assertThat(PotWords.cold(daysIn, daysColdEnough)).isEqualTo(says);
    }

    @Test
    void aPotInTheColdHasItsWeeksItsLastDayAndItsBloom() {
        PotNow pot = pot("T4", Shelves.bench());

        assertThat(PotWords.cold(pot)).contains("16 weeks in");
        assertThat(PotWords.useBy(pot)).contains("Use by Mon 18 Jan.");
        assertThat(PotWords.bloom(pot)).contains("Bloom about 2 Feb (26 Jan to 15 Feb).");
    }

    @Test
    void aPotThatNeedsNoColdOrHasHadNoneYetHasNoWeeks() {
        Bench bench = Shelves.after(List.of("Marrow Lane x5, cellar, today"));

        assertThat(PotWords.cold(pot("A1", bench))).isEmpty();
        assertThat(PotWords.cold(pot("T7", bench))).isEmpty();
        assertThat(PotWords.useBy(pot("A1", bench))).isEmpty();
    }

    @Test
    void lateForItsWishComesFirst() {
        assertThat(matters("T4", "T4 roots, 6 cm", "wish T4 30 jan"))
                .isEqualTo("Late for its wish on Sat 30 Jan: in today, it flowers about 2 Feb.");
        assertThat(matters("T4", "T4 roots, 6 cm", "wish T4 for valentine")).isEmpty();
        assertThat(matters("A1", "A1 first flower, yesterday")).isEmpty();
    }

    @Test
    void pastItsUseByDayIsLateToo() {
        assertThat(matters("T9", "Marrow Lane x5, cellar, 1 sep, label T9", "T9 roots"))
                .isEqualTo("Past its use-by day, Tue 29 Dec: stems grow long and weak.");
    }

    @Test
    void whatIsAmissComesNextAndThatAJobWasPutOffLast() {
        assertThat(matters("H1", "Marrow Lane x5, cellar, 1 dec, label T9")).isEmpty();
        assertThat(matters("T9", "Marrow Lane x5, cellar, 1 dec, label T9", "T9 12 cm"))
                .startsWith("Shoot 12 cm, but 9 weeks short of cold: it is too warm here.");
        assertThat(matters("T4", "T4 later +3 because no room")).isEqualTo("Put off to Fri 15 Jan: no room.");
        assertThat(matters("T4", "T4 later +3")).isEqualTo("Put off to Fri 15 Jan.");
    }

    @Test
    void whatItStandsBesideIsSaidAtThePlace() {
        assertThat(matters("T4", "place cellar, hazard fruit")).isEmpty();
    }
}
