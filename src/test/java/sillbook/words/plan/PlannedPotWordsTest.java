// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PlannedPotWordsTest {
    private final AugustHouse house = AugustHouse.usual();

    @Test
    void aPotSaysWhatItTakesAndByWhen() {
        PlannedPotWords words = new PlannedPotWords(house.planning(), house.now());
        assertThat(words.lines(1))
                .containsExactly(
                        "'Lantern Row' x4: ▫14 weeks cold, ▫21 days to flower, ?10 in bloom.",
                        "To be cold by Sun 13 Sep: potted, watered and standing where it is cold.");
        assertThat(words.lines(0))
                .containsExactly(
                        "'Linen Parade' x5: no cold, ▫35 days to flower, ?10 in bloom.",
                        "To be potted and watered on Sun 20 Dec; it needs no cold.");
    }

    @Test
    void aPotThatStandsInTheColdSaysSinceWhen() {
        house.on(LocalDate.of(2027, 1, 12)).write("Inkwell x3, garage fridge, 14 oct");
        PlannedPotWords words = new PlannedPotWords(house.planning(), house.now());
        assertThat(words.doing(numberOf(words)))
                .startsWith("In the cold since Wed 14 Oct, garage fridge; to come in on ");
    }

    @Test
    void ofAPotThatIsOutOfTheColdNothingIsToBeChosen() {
        house.on(LocalDate.of(2027, 1, 12)).write("Inkwell x3, garage fridge, 14 sep", "H1 kitchen sill, 10 jan");
        PlannedPotWords words = new PlannedPotWords(house.planning(), house.now());
        assertThat(words.lines(numberOf(words)))
                .containsExactly(
                        "H1 'Inkwell': in flower about 31 Jan to 9 Feb.",
                        "It is out of the cold; its days are no longer to be chosen.");
    }

    /** Of the pot that is there. */
    private static int numberOf(PlannedPotWords words) {
        return IntStream.range(0, words.now().pots().size())
                .filter(number -> words.now().plan().pots().get(number).pot().isPresent())
                .findFirst()
                .orElseThrow();
    }
}
