// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.change.Change;
import sillbook.change.Check;
import sillbook.change.Jot;
import sillbook.change.Move;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;

class PickChoiceTest {
    private final Desk desk = Desk.over(GrowersWinter.told().journal()).press("2");

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    /** The labels picked, those of H8 to H22 as one. */
    private Set<String> picked() {
        return desk.state().picked().stream()
                .map(pot -> desk.state().journal().pots().get(pot).label())
                .map(label -> label.matches("H([89]|1\\d|2[0-2])") ? "H8-H22" : label)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private Change kept() {
        desk.press("Enter");
        if (desk.effects().isEmpty()) {
            desk.press("Enter");
        }
        return ((Effect.CarryOut) desk.effects().get(0)).change();
    }

    @Test
    void asksByWhichRule() {
        Golden.check("pick", desk.press("p").state());
    }

    @Test
    void looksAsDrawnWithItsPicks() {
        Golden.check("picked", desk.press("p", "s", "End", "Space").state());
    }

    /** The cursor stands on T4 'Marrow Lane', a tulip in the cellar. */
    @ParameterizedTest
    @CsvSource({
        "s, D2 H4 H8-H22 T4",
        "v, T4",
        "k, T4 T9",
        "d, A1 A2 D1 H1 M1 P1 T4",
        "l, T4",
        "g, C2 D2 H2 H4 H8-H22 S1 T1 T3 T4 T8",
    })
    void eachRulePicksItsPots(String letter, String labels) {
        desk.press("p", letter);

        assertThat(String.join(" ", picked())).isEqualTo(labels);
    }

    @Test
    void allShownMeansWhatIsFound() {
        desk.press("f").type("fridge").press("Enter", "p", "a");

        assertThat(picked()).containsExactly("H2", "T1");
    }

    @Test
    void picksAddUpUntilNone() {
        desk.press("p", "l", "End", "Space");
        assertThat(desk.state().picked()).hasSize(2);

        assertThat(desk.press("p", "n").state().picked()).isEmpty();
    }

    @Test
    void theFootSaysHowManyArePickedAndHowManyOfThemAreElsewhere() {
        desk.press("p", "s");
        assertThat(desk.line(21)).contains(" 18 picked; by next move, 1-17 of 19 ");

        desk.press("f").type("inkwell").press("Enter");
        assertThat(desk.line(21)).contains(" 18 picked, 3 not shown here; by next move, 1-2 of 2 ");
        assertThat(desk.press("3").line(21)).contains(" 18 picked, 18 not shown here; 1-7 of 7 ");
    }

    @Test
    void thePickedAreMovedInOneStep() {
        desk.press("p", "g", "m").type("porch");

        assertThat(all(desk)).contains("Move 24 pots");
        assertThat(((Move) kept()).pots()).hasSize(24);
    }

    @Test
    void thePickedAreCheckedInOneStepWhatIsNotGrowingLeftOut() {
        desk.press("p", "a", "c");
        assertThat(all(desk)).contains(" Check ").contains("Left out: A2 T9, which are not growing.");

        assertThat(((Check) kept()).found()).hasSize(34);
    }

    @Test
    void aNoteIsJottedOnAllPicked() {
        desk.press("p", "s", "j").type("aired");

        assertThat(((Jot) kept()).subjects()).hasSize(18);
    }

    @Test
    void onTodayTheRoundUnderTheCursorMeansItsPlace() {
        desk.press("1", "p");
        assertThat(all(desk)).contains("S cellar");
        desk.press("Esc");
        while (!desk.lines().stream().anyMatch(line -> line.startsWith("▸ » cellar"))) {
            desk.press("Down");
        }
        desk.press("p", "s");

        assertThat(picked()).contains("T4", "H8-H22").doesNotContain("H2");
    }

    @Test
    void onAPlacesCardToo() {
        desk.press("3", "Enter", "Down", "p", "a");

        assertThat(picked()).containsExactly("H2", "T1");
    }

    @Test
    void whereNoPotIsShownThereIsNothingToPick() {
        Desk empty = Desk.over(winter().journal()).press("2", "p");

        assertThat(empty.line(22)).contains("no pot is shown here");
    }
}
