// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.change.Change;
import sillbook.change.Flower;
import sillbook.change.Together;
import sillbook.change.WriteDown;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Id;
import sillbook.model.Outcome;
import sillbook.model.Place.Sort;
import sillbook.model.Variety;
import sillbook.season.Winter;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.entry.Entry;

/** Varieties that share a pot: each comes to flower, fades and is judged in its own time. */
class MixedPotTest {
    private final Winter told = winter().place("sill", Sort.WARM_SILL)
            .mixed("T1", "Marrow Lane", "tulip", "Night Marbles", "grape hyacinth")
            .potted("14 sep", "sill")
            .flowered("20 dec", BloomPoint.FIRST_FLOWER, "Night Marbles");

    private Id<Variety> variety(String name) {
        return told.journal().varieties().all().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private static Change kept(Desk desk) {
        desk.press("Enter");
        if (desk.effects().isEmpty()) {
            desk.press("Enter");
        }
        assertThat(desk.effects()).as("%s", String.join("\n", desk.lines())).hasSize(1);
        return ((Effect.CarryOut) desk.effects().get(0)).change();
    }

    @Test
    void oneOfThemIsPastBloom() {
        Desk desk = Desk.over(told.journal()).press("Enter");
        assertThat(String.join("\n", desk.lines())).contains("past bloom, T1").contains("Variety");

        assertThat(kept(desk.type("Night Marbles"))).isInstanceOfSatisfying(Flower.class, flower -> {
            assertThat(flower.point()).isEqualTo(BloomPoint.PAST_BLOOM);
            assertThat(flower.variety()).contains(variety("Night Marbles"));
        });
    }

    @Test
    void leftEmptyThePotAsAWholeIsMeant() {
        Desk desk = Desk.over(told.journal()).press("Enter");
        assertThat(String.join("\n", desk.lines())).contains("the pot as a whole");

        assertThat(kept(desk))
                .isInstanceOfSatisfying(
                        Flower.class, flower -> assertThat(flower.variety()).isEmpty());
    }

    @Test
    void anotherVarietyIsNotInThePot() {
        told.pot("H1", "Inkwell", "hyacinth").potted("14 sep", "sill");
        Desk desk = Desk.over(told.journal());
        while (!String.join("\n", desk.press("Enter").lines()).contains("past bloom, T1")) {
            desk.press("Esc", "Down");
        }
        desk.type("Inkwell").press("Enter", "Enter");

        assertThat(desk.effects()).isEmpty();
        assertThat(String.join("\n", desk.lines())).contains("past bloom, T1").contains("no variety in the pot");
    }

    @Test
    void eachIsJudgedByItself() {
        Desk desk = Desk.over(told.journal());
        desk.lay(Entry.outcome(told.journal().pots().all()))
                .type("night marbles")
                .press("Tab")
                .type("4");

        Outcome outcome = (Outcome) ((WriteDown) kept(desk)).entity();
        assertThat(outcome.variety()).contains(variety("Night Marbles"));
        assertThat(outcome.score()).contains(4);
    }

    @Test
    void eachIsAskedForItsScoreAtItsBest() {
        told.then("T1")
                .flowered("8 jan", BloomPoint.FIRST_FLOWER, "Marrow Lane")
                .outcomeOf("Night Marbles", "9 jan", 4);
        Desk desk = Desk.over(told.journal());
        desk.lay(ScoreChoice.of(desk.state(), List.of(told.id("T1"))));
        assertThat(String.join("\n", desk.lines())).contains("How is 'Marrow Lane' in T1: 1 poor");

        desk.press("2");

        Together change = (Together) ((Effect.CarryOut) desk.effects().get(0)).change();
        Outcome outcome = (Outcome) ((WriteDown) change.changes().get(0)).entity();
        assertThat(outcome.variety()).contains(variety("Marrow Lane"));
        assertThat(outcome.score()).contains(2);
    }
}
