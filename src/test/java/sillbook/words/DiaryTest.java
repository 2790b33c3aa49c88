// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.words.Shelves.TODAY;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.model.Journal;

class DiaryTest {
    private static final Journal JOURNAL = Shelves.after(List.of(
                    "T1-T3 moist, roots, 10 jan",
                    "T4 frost, 11 jan, note two noses soft",
                    "note cellar: one mouse",
                    "note Marrow Lane: short in the cellar",
                    "note: Écru ribbons bought",
                    "cellar 3 to 8 C, since 2 jan",
                    "trench 5.2 C, 11 jan at 7:05",
                    "thermometer cellar reads 0.6 in ice",
                    "thermometer trench lies by the door",
                    "bought 5 Inkwell, 6.50, from Harbour Seeds",
                    "ordered 20 Penny Gloaming (crocus)",
                    "D1 score 4, 3 of 5 flowers, 22 cm, good 1 jan to 9 jan, floppy, ragged, scent light, again differently: tie them up, note stands well",
                    "H1 score 2"))
            .journal();

    private static List<String> find(String sought) {
        return Diary.of(JOURNAL).find(sought, TODAY).stream()
                .map(DiaryTest::line)
                .toList();
    }

    private static String line(DiaryEntry entry) {
        String pots = new PotNames(JOURNAL).labels(entry.pots());
        String written =
                entry.writtenOn().map(day -> ", written " + Days.date(day)).orElse("");
        return Days.date(entry.day().likely()) + " " + (pots.isEmpty() ? "" : pots + " ") + entry.says() + written;
    }

    @Test
    void whatOneActWroteForSeveralPotsIsOneEntry() {
        assertThat(find("roots -inkwell")).containsExactly("10 Jan T1-T3 checked: moist, roots, written 12 Jan");
    }

    @Test
    void everySortOfEntryIsSaid() {
        assertThat(find("since 10 jan 2027"))
                .containsExactlyInAnyOrder(
                        "11 Jan T4 trouble seen: frost, two noses soft, written 12 Jan",
                        "10 Jan T1-T3 checked: moist, roots, written 12 Jan",
                        "12 Jan cellar: jotted: one mouse",
                        "12 Jan 'Marrow Lane': jotted: short in the cellar",
                        "12 Jan jotted: Écru ribbons bought",
                        "12 Jan cellar: 3 to 8 C since 2 Jan (reading)",
                        "11 Jan trench: 5.2 C at 7:05 (reading)",
                        "12 Jan cellar: thermometer reads 0.6 C in ice water",
                        "12 Jan 'Inkwell': in hand, 5 bulbs, 6.50, from Harbour Seeds",
                        "12 Jan 'Penny Gloaming': ordered, 20 bulbs",
                        "12 Jan D1 outcome 4 of 5: 3 flowered, 22 cm, good 1 to 9 Jan, ragged, lightly scented, floppy, again: differently, \"tie them up\", \"stands well\"",
                        "12 Jan H1 outcome 2 of 5");
    }

    @Test
    void theNewestDayComesFirst() {
        assertThat(Diary.of(JOURNAL).entries())
                .extracting(entry -> entry.day().likely())
                .isSortedAccordingTo((one, other) -> other.compareTo(one))
                .endsWith(LocalDate.of(2026, 8, 20));
    }

    @ParameterizedTest
    @CsvSource({
        "MOUSE, 1",
        "ecru, 1",
        "bought ecru, 1",
        "ecru -bought, 0",
        "reading, 2",
        "frost t4, 1",
        "frost t1, 0",
        "outcome hyacinth, 1",
        "tulip triumph frost, 1",
        "frost 2026-27, 1",
        "frost 2025-26, 0",
        "since 11 jan frost, 1",
        "frost since 2027-01-12, 0",
        "frost since yesterday, 1",
        "nowhere, 0"
    })
    void wordsAreFoundInAnyOrderWithoutAccentsAndCapitals(String sought, int entries) {
        assertThat(find(sought)).hasSize(entries);
    }

    @Test
    void aLabelIsMeantWhole() {
        assertThat(find("t1")).allMatch(line -> line.contains("T1"));
        assertThat(find("t")).hasSizeGreaterThan(find("t1").size());
    }

    @Test
    void sinceWithoutADayAndALoneHyphenAreWordsLikeOthers() {
        assertThat(find("since")).containsExactly("12 Jan cellar: 3 to 8 C since 2 Jan (reading)");
        assertThat(find("since soon")).isEmpty();
        assertThat(find("-")).containsExactlyElementsOf(find("- "));
    }

    @Test
    void nothingSoughtFindsEverything() {
        assertThat(find("  ")).hasSize(Diary.of(JOURNAL).entries().size());
    }
}
