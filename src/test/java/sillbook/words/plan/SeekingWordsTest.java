// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sillbook.model.Proposal;
import sillbook.model.SeasonPlan.Search;
import sillbook.plan.PlanNow;
import sillbook.plan.Seeking;
import sillbook.plan.Seeking.Found;
import sillbook.plan.Seeking.Missing;

class SeekingWordsTest {
    private static Found found(Search comesTo, Search least, boolean isProven) {
        return new Found(List.of(), comesTo, least, isProven);
    }

    private static String outcome(Search comesTo, Search least, boolean isProven) {
        return SeekingWords.outcome(new Seeking.Best(found(comesTo, least, isProven)));
    }

    @Test
    void onItsWayItSaysTheBestSoFarAndWhatItCannotGoBelow() {
        assertThat(SeekingWords.progress(found(new Search(0, 7, 14), new Search(0, 5, 9), false)))
                .isEqualTo("best so far: 7 days without bloom, 14 pots; cannot be under 5 days");
        assertThat(SeekingWords.progress(found(new Search(0, 0, 14), new Search(0, 0, 14), false)))
                .isEqualTo("best so far: no day without bloom, 14 pots");
    }

    @Test
    void stoppedItSaysHowFarItCame() {
        assertThat(SeekingWords.stopped(Optional.of(found(new Search(0, 7, 14), new Search(0, 5, 9), false))))
                .isEqualTo("Stopped; the best so far: 7 days without bloom, 14 pots; cannot be under 5 days.");
        assertThat(SeekingWords.stopped(Optional.empty())).isEqualTo("Stopped; nothing was found yet.");
    }

    @Test
    void atItsEndItSaysWhetherItIsTheBest() {
        assertThat(outcome(new Search(0, 1, 14), new Search(0, 1, 14), true))
                .isEqualTo("The best there is: 1 day without bloom, 14 pots.");
        assertThat(outcome(new Search(0, 7, 14), new Search(0, 7, 12), false))
                .isEqualTo("The best found: 7 days without bloom, 14 pots; cannot be under 12 pots.");
        assertThat(outcome(new Search(0, 7, 14), new Search(0, 7, 14), false))
                .endsWith("; whether another does as well with less is not proven.");
        assertThat(outcome(new Search(2, 7, 14), new Search(1, 7, 14), false))
                .isEqualTo("The best found: a wish is short, 7 days without bloom, 14 pots; "
                        + "the wish could perhaps be met better.");
    }

    @Test
    void whereThereIsNothingToPlanWithItSaysWhatToDo() {
        assertThat(SeekingWords.outcome(new Seeking.Nothing(Missing.BULBS)))
                .startsWith("There are no bulbs that can flower in the season.");
        assertThat(SeekingWords.outcome(new Seeking.Nothing(Missing.ROOM)))
                .isEqualTo("No place is written where pots flower. Write one down, as place kitchen sill.");
        assertThat(SeekingWords.outcome(new Seeking.TooMuch("the season is longer than 400 days")))
                .isEqualTo("The search takes no season of that size: the season is longer than 400 days.");
    }

    @Test
    void ofAPlanThatWasKeptItSaysWhetherItIsProven() {
        AugustHouse house = AugustHouse.usual().write("wish tulip for easter");
        List<Proposal> pots = house.plan().pots();
        int gap = house.now().ribbon().gapDays();
        assertThat(proven(house, pots, Optional.empty())).isEqualTo("by hand");
        assertThat(proven(house, pots, Optional.of(new Search(0, gap, pots.size()))))
                .isEqualTo("no, a wish is short");
        assertThat(proven(house, pots, Optional.of(new Search(1, gap, pots.size()))))
                .isEqualTo("yes");
    }

    @Test
    void aWishThatNoBulbsSuitDoesNotSpeakAgainstThePlan() {
        AugustHouse house = AugustHouse.usual().write("wish snowdrop 14 feb");
        List<Proposal> pots = house.plan().pots();
        assertThat(proven(house, pots, Optional.of(new Search(0, 0, pots.size()))))
                .isEqualTo("yes");
    }

    @Test
    void howManyDaysItCouldBeBetterIsSaidBeforeHowManyPots() {
        AugustHouse house = AugustHouse.usual();
        List<Proposal> pots = house.plan().pots();
        int gap = house.now().ribbon().gapDays();
        assertThat(gap).isPositive();
        assertThat(proven(house, pots, Optional.of(new Search(0, gap - 1, 3)))).isEqualTo("no, within 1 day");
        assertThat(proven(house, pots, Optional.of(new Search(0, gap, pots.size() - 2))))
                .isEqualTo("no, within 2 pots");
    }

    private static String proven(AugustHouse house, List<Proposal> pots, Optional<Search> search) {
        PlanNow now = house.now(house.plan(pots, search));
        return SeekingWords.proven(now);
    }
}
