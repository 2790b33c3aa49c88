// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.change.Change;
import sillbook.change.Together;
import sillbook.change.WriteDown;
import sillbook.model.Outcome;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;

/** On 12 January the amaryllis A1 is in full bloom, and nothing is written of how it is. */
class ScoreChoiceTest {
    private final Desk desk = asked();

    private static Desk asked() {
        Desk desk = Desk.over(GrowersWinter.told().journal());
        while (desk.lines().stream().noneMatch(line -> line.startsWith("▸") && line.contains("how is it?"))) {
            desk.press("Down");
        }
        return desk.press("Enter");
    }

    @Test
    void looksAsKept() {
        Golden.check("score", desk.state());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5})
    void oneKeyWritesIt(int score) {
        Together change = (Together) written(desk.press(Integer.toString(score)));
        assertThat(change.changes()).singleElement().satisfies(one -> {
            Outcome outcome = (Outcome) ((WriteDown) one).entity();
            assertThat(outcome.score()).contains(score);
            assertThat(desk.state().journal().pots().get(outcome.pot()).label()).isEqualTo("A1");
        });
    }

    private static Change written(Desk desk) {
        return ((Effect.CarryOut) desk.effects().get(0)).change();
    }

    @Test
    void anyOtherKeyAsksOn() {
        assertThat(desk.press("6").effects()).isEmpty();
        assertThat(shown()).contains("How is A1: 1 poor");
        desk.press("Esc");
        assertThat(shown()).doesNotContain("How is A1");
    }

    @Test
    void moreOfItIsTheOutcome() {
        desk.press("o");
        assertThat(shown()).contains("Outcome of A1");
    }

    private String shown() {
        return String.join("\n", desk.lines());
    }
}
