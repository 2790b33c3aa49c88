// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.SeasonPlan.Search;
import sillbook.model.Wish;
import sillbook.plan.Seeking;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Snapshot;

class RibbonViewTest {
    private final Desk desk = Desk.over(ComingWinter.wished()).press("5", "v");

    static Seeking.Found found(Desk desk, int pots, boolean isProven) {
        PlanPage page = PlanPage.beneath(desk.state());
        Search bound = new Search(0, isProven ? 7 : 5, pots);
        return new Seeking.Found(
                page.drawn().plan(desk.state()).pots().subList(0, pots), new Search(0, 7, pots), bound, isProven);
    }

    // What stands there

    @Test
    void todayRunsThroughAllOfIt() {
        desk.tell(new Message.DayBegan(LocalDate.of(2027, 8, 20)));
        int today = desk.line(3).indexOf('╎');
        assertThat(desk.lines().subList(3, 15))
                .allSatisfy(line -> assertThat(line.charAt(today)).isEqualTo('╎'));
    }

    @Test
    void looksAsDrawn() {
        Golden.check("plan-ribbon", desk.state());
        Golden.check("plan-ribbon", desk.state(), new Size(120, 40));
    }

    @Test
    void withoutWishesTheFirstRowHasTheFlowers() {
        Golden.check(
                "plan-ribbon-no-wish",
                Desk.over(ComingWinter.bulbs()).press("5", "v").state(),
                new Size(80, 24));
    }

    @Test
    void theFootSaysTheFirstGapAndWhatWouldCureIt() {
        assertThat(desk.line(22)).startsWith(" ◌  Gap 10-12 Jan, 3 days:");
        assertThat(desk.line(23)).startsWith("    Cure: one more pot");
    }

    @Test
    void vTurnsBackToTheHand() {
        assertThat(desk.press("v").line(4)).startsWith(" Bring in 2");
    }

    @Test
    void nWishes() {
        assertThat(String.join("\n", desk.press("n").lines())).contains("New wish");
    }

    // The search

    @Test
    void bLooksForTheBestAndShowsWhatItHas() {
        desk.press("b");
        assertThat(desk.effects()).singleElement().isInstanceOf(Effect.Seek.class);
        assertThat(desk.line(23)).contains("looking for the best plan; nothing found yet");
        Golden.check(
                "plan-seeking",
                desk.tell(new Message.FoundSoFar(1, found(desk, 9, false))).state(),
                new Size(80, 24));
        assertThat(desk.line(23)).contains("best so far: 7 days without bloom").contains("cannot be under 5 days");
        assertThat(desk.line(21)).contains("as found, not kept, 9 pots");
        assertThat(desk.line(24)).contains("B stop");
    }

    @Test
    void whatComesOfItIsSaidUntilTheNextMove() {
        desk.press("b");
        desk.tell(new Message.Sought(1, new Seeking.Best(found(desk, 8, true))));
        assertThat(desk.line(23)).contains("The best there is: 7 days without bloom");
        assertThat(desk.line(21)).contains("as found, not kept, 8 pots");
        assertThat(desk.press("Down").line(23)).doesNotContain("The best there is");
        assertThat(desk.press("k").kept().line(21)).contains("plan A of 1, 8 pots");
    }

    @Test
    void bOrEscStopsItWithTheBestSoFar() {
        desk.press("b").tell(new Message.FoundSoFar(1, found(desk, 9, false)));
        assertThat(desk.press("b").effects()).containsExactly(new Effect.StopSeeking(1));
        assertThat(desk.line(21)).contains("9 pots");
        desk.tell(new Message.Sought(1, new Seeking.Best(found(desk, 4, true))));
        assertThat(desk.line(21)).as("what is told late is not heard").contains("9 pots");

        assertThat(desk.press("b", "Esc").effects()).containsExactly(new Effect.StopSeeking(2));
        desk.tell(new Message.FoundSoFar(2, found(desk, 4, true)));
        assertThat(desk.line(21)).contains("9 pots");
    }

    @Test
    void whileItGoesOnThePlanIsNotChangedByHand() {
        desk.press("b");
        assertThat(desk.press("+").line(22)).contains("the search goes on, B stops it");
        assertThat(desk.press("k").line(22)).contains("the search goes on, B stops it");
    }

    @Test
    void whatCannotBeLookedForIsSaid() {
        desk.press("b").tell(new Message.Sought(1, new Seeking.Nothing(Seeking.Missing.ROOM)));
        assertThat(desk.line(22))
                .isEqualTo(" No place is written where pots flower. Write one down, as place kitchen sill.");
        assertThat(desk.line(21)).contains("by hand, 12 pots");
    }

    @Test
    void itGoesOnOverOtherPages() {
        Seeking.Found best = found(desk, 8, true);
        desk.press("b", "2").tell(new Message.Sought(1, new Seeking.Best(best)));
        assertThat(desk.line(21)).doesNotContain("8 pots");
        assertThat(desk.press("5").line(21)).contains("8 pots");
    }

    @Test
    void placesThatDoNotFitAreCounted() {
        assertThat(List.of(desk.line(9), desk.line(10), desk.line(11)).toString())
                .contains("Room   garage fridge  9")
                .contains("cellar        20")
                .contains("kitchen sill   6");
        Journal crowded = desk.state().journal();
        Wish one = crowded.wishes().all().iterator().next();
        for (int more = 0; more < 6; more++) {
            Wish another =
                    new Wish(new Id<>(73, more), one.season(), one.from(), one.to(), "", one.asks(), Set.of(), "");
            crowded = crowded.with(List.of(new Edit.Put(another)));
        }
        desk.tell(new Message.Changed(new Snapshot(crowded, Desk.TODAY, 0, 0)));
        assertThat(desk.line(14)).startsWith("         and 4 lines more");
        assertThat(desk.line(15)).startsWith("▸   a 'Pewter Choir'");
    }
}
