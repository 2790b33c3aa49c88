// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.change.Answer;
import sillbook.change.Change;
import sillbook.change.Check;
import sillbook.change.Jot;
import sillbook.change.Move;
import sillbook.model.Settings;
import sillbook.model.Stage;
import sillbook.ui.screen.Copy;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Snapshot;
import sillbook.ui.screen.Thing;

class ActsTest {
    private final Desk desk = Desk.over(GrowersWinter.told().journal());

    private Change kept() {
        desk.press("Enter");
        if (desk.effects().isEmpty()) {
            desk.press("Enter");
        }
        assertThat(desk.effects()).as("%s", String.join("\n", desk.lines())).hasSize(1);
        return ((Effect.CarryOut) desk.effects().get(0)).change();
    }

    @Test
    void enterOnAJobOpensItsFormFilledIn() {
        desk.press("Enter");

        Golden.check("move", desk.state());
        assertThat(kept()).isInstanceOfSatisfying(Move.class, move -> {
            assertThat(move.stage()).isEqualTo(Stage.COOL_ROOM);
            assertThat(move.pots()).hasSize(1);
        });
    }

    @Test
    void aRefusedDayIsSaidInTheFormAndInTheFoot() {
        desk.press("2", "m")
                .type("stair window")
                .press("Tab", "Tab", "Ctrl-U")
                .type("31 nov")
                .press("Enter", "Enter");

        assertThat(desk.effects()).isEmpty();
        assertThat(String.join(" ", desk.lines())).contains("November has 30 days");
    }

    @Test
    void aJobIsPutOffWithAReason() {
        desk.press("a").type("+3").press("Tab").type("away");

        assertThat(kept()).isInstanceOfSatisfying(Answer.class, answer -> {
            assertThat(answer.until()).contains(LocalDate.of(2027, 1, 15));
            assertThat(answer.reason()).isEqualTo("away");
        });
    }

    @Test
    void orLeftOutAltogether() {
        desk.press("a").type("not at all").press("Tab");

        assertThat(kept())
                .isInstanceOfSatisfying(
                        Answer.class, answer -> assertThat(answer.until()).isEqualTo(Optional.empty()));
    }

    @Test
    void severalPickedPotsAreMovedInOneStep() {
        desk.press("2", "v", "l", "Home", "Space", "Space", "Space").press("m").type("kitchen sill");

        assertThat(String.join(" ", desk.lines())).contains("Move ");
        assertThat(kept()).isInstanceOf(Move.class);
    }

    @Test
    void aPotIsChecked() {
        desk.press("2", "c", "r", "6");

        assertThat(kept())
                .isInstanceOfSatisfying(
                        Check.class, check -> assertThat(check.round()).isEmpty());
    }

    @Test
    void aRoundIsAnsweredForAllPotsOfThePlace() {
        while (!desk.state()
                .top()
                .thing(desk.state())
                .map(Object::toString)
                .orElse("")
                .contains("OfPlace")) {
            desk.press("Down");
        }
        desk.press("Enter");

        assertThat(kept()).isInstanceOfSatisfying(Check.class, check -> {
            assertThat(check.found().keySet())
                    .containsExactlyInAnyOrderElementsOf(desk.state()
                            .almanac()
                            .outlook()
                            .standingAt(check.round().orElseThrow()));
        });
    }

    @Test
    void dailyCareIsARoundOfItsPots() {
        Thing dailyCare = new Thing.Named("daily care");
        while (!desk.state().top().thing(desk.state()).equals(Optional.of(dailyCare))) {
            desk.press("Down");
        }
        desk.press("Enter");

        assertThat(String.join(" ", desk.lines())).contains(" Check ");
        assertThat(kept())
                .isInstanceOfSatisfying(
                        Check.class, check -> assertThat(check.round()).isEmpty());
    }

    @Test
    void aNoteIsJotted() {
        desk.press("j").type("flat sides to the rim");

        assertThat(kept()).isInstanceOf(Jot.class);
    }

    @ParameterizedTest
    @CsvSource({"n,New pot", "s,Same again as T4", "o,Write down: O outcome", "e,Correct T4", "Delete,Remove T4"})
    void eachKeyOpensItsForm(String key, String title) {
        desk.press(key);

        assertThat(String.join(" ", desk.lines())).contains(title);
    }

    @ParameterizedTest
    @CsvSource({"n", "m", "c", "j", "o", "e", "Delete", "l", "Enter"})
    void nothingIsWrittenInAJournalThatIsReadOnly(String key) {
        Snapshot shown = new Snapshot(GrowersWinter.told().journal(), Desk.TODAY, 0, 0);
        desk.tell(new Message.Opened(new Copy("winter.sillbook", false, true), shown))
                .press(key);

        assertThat(desk.state().layers().over()).isEmpty();
        assertThat(String.join(" ", desk.lines())).contains("the journal is read only");
    }

    @Test
    void settingsAreAKeyAway() {
        desk.press(",");

        assertThat(String.join(" ", desk.lines())).contains("Settings of this journal");
        assertThat(desk.state().journal().settings().lengths()).isEqualTo(Settings.LengthUnit.CENTIMETRES);
    }
}
