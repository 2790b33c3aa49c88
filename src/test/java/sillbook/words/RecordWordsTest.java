// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.model.Id;
import sillbook.model.Kind;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.season.VarietyNow;
import sillbook.season.VarietyNow.Winter;

class RecordWordsTest {
    private static final Variety VARIETY = Variety.of(new Id<>(0, 1), "Night Marbles", Kind.of("grape hyacinth"));

    private static VarietyNow scored(Winter... winters) {
        return new VarietyNow(VARIETY, 0, List.of(winters));
    }

    @Test
    void noRecordIsNoDataNotZero() {
        assertThat(RecordWords.mean(scored())).isEqualTo("no data");
        assertThat(RecordWords.total(scored())).isEqualTo("no data");
    }

    @Test
    void everyScoreCountsAlikeWhateverItsWinter() {
        VarietyNow now =
                scored(new Winter(new Season(2024), List.of(5)), new Winter(new Season(2025), List.of(3, 2, 4)));

        assertThat(RecordWords.mean(now)).isEqualTo("▪3.5");
        assertThat(RecordWords.total(now)).isEqualTo("▪3.5 of 4 pots");
    }

    @Test
    void aWinterTellsItsScoresAndInOneDigitItsMean() {
        Winter winter = new Winter(new Season(2025), List.of(3, 2));

        assertThat(RecordWords.winter(winter)).isEqualTo("▪2.5 of 2 pots: 3, 2");
        assertThat(RecordWords.score(winter)).isEqualTo("3");
    }
}
