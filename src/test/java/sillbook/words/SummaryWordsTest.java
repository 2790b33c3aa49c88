// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Cause;
import sillbook.model.Failure.Sign;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.reckon.effects.Proportion;
import sillbook.season.past.Summary;
import sillbook.season.past.Summary.Cold;
import sillbook.season.past.Tally;
import sillbook.season.past.Truth;

class SummaryWordsTest {
    private static final Journal JOURNAL = winter().pot("T1", "Marrow Lane", "tulip")
            .pot("T2", "Tuesday Coat", "tulip")
            .pot("T3", "Penny Gloaming", "tulip")
            .pot("T4", "Bramble Tax", "tulip")
            .journal();
    private static final List<Id<Variety>> VARIETIES = JOURNAL.pots().all().stream()
            .sorted((one, other) -> one.label().compareTo(other.label()))
            .map(pot -> pot.plantings().get(0).variety())
            .toList();

    private static Summary summary(Proportion bulbs, List<Id<Variety>> best, Map<Sign, Integer> signs, Cold cold) {
        return new Summary(
                new Season(2025),
                4,
                1,
                Tally.of(List.of()),
                bulbs,
                Optional.of(1L),
                best,
                List.of(),
                signs,
                Map.of(Cause.RUSHED, 1),
                Optional.of(cold));
    }

    @Test
    void allThatIsKnownIsSaidOnOneLine() {
        Summary summary = summary(
                new Proportion(9, 10),
                VARIETIES.subList(0, 1),
                Map.of(Sign.ROT, 1, Sign.FLOPPY, 2),
                new Cold(77, 98, 112));
        assertThat(new SummaryWords(JOURNAL).line(summary, new Truth(List.of())))
                .isEqualTo("2025-26: 4 pots, 1 flowered; 9 of 10 bulbs flowered (60-98 %); 1 day with bloom;"
                        + " cold 11 to 16 weeks, half of them 14 or more; best 'Marrow Lane';"
                        + " signs: floppy in 2, rot in 1; causes: rushed in 1; no kept window whose day came.");
    }

    @Test
    void whatIsNotKnownIsNotSaid() {
        Summary nothing = new Summary(
                new Season(2025),
                1,
                0,
                Tally.of(List.of()),
                new Proportion(0, 0),
                Optional.empty(),
                List.of(),
                List.of(),
                Map.of(),
                Map.of(),
                Optional.empty());
        assertThat(new SummaryWords(JOURNAL).line(nothing, new Truth(List.of())))
                .isEqualTo("2025-26: 1 pot, none flowered; no kept window whose day came.");
    }

    @Test
    void ofManyAlikeThreeAreNamed() {
        Summary summary = summary(new Proportion(0, 0), VARIETIES, Map.of(), new Cold(98, 98, 98));
        assertThat(new SummaryWords(JOURNAL).facts(summary))
                .contains("best 'Marrow Lane', 'Tuesday Coat', 'Penny Gloaming' and 1 more", "cold 14 weeks");
    }
}
