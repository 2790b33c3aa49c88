// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sillbook.change.Move;
import sillbook.change.PotUp;
import sillbook.ui.draw.Key;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;
import sillbook.ui.screen.Message;

class LineSlipTest {
    private final Desk desk = Desk.over(GrowersWinter.told().journal()).press("l");

    private Object kept() {
        assertThat(desk.effects()).hasSize(1);
        return ((Effect.CarryOut) desk.effects().get(0)).change();
    }

    @Test
    void saysWhatItUnderstands() {
        Golden.check(
                "line",
                desk.type("6 x Marrow Lane x5, 14 oct, 19 cm, garage fr").state());
    }

    @Test
    void anEmptyLineShowsHowItIsWritten() {
        Golden.check("line-empty", desk.state());
    }

    @Test
    void tabTakesWhatIsOffered() {
        desk.type("T1 stair wi").press("Tab");

        assertThat(desk.line(9)).contains("T1 stair window");
        desk.press("Enter");
        assertThat(kept()).isInstanceOf(Move.class);
    }

    @Test
    void enterKeepsOneStep() {
        desk.type("2 x Inkwell x3, cellar").press("Enter");

        assertThat(kept())
                .isInstanceOfSatisfying(
                        PotUp.class, change -> assertThat(change.howMany()).isEqualTo(2));
    }

    @Test
    void whatCannotBeIsSaidAndNothingIsKept() {
        desk.type("T1 sprg").press("Enter");

        assertThat(desk.effects()).isEmpty();
        assertThat(desk.line(22)).contains("! ").contains("sprg");
        assertThat(desk.press("Ctrl-U", "Enter").line(22)).contains("Write a line first");
    }

    @Test
    void lettersThatAreKeysElsewhereAreTextHere() {
        desk.type("note: quiet, no ?").press("Enter");

        assertThat(desk.effects()).hasSize(1);
    }

    @Test
    void pasteIsText() {
        desk.tell(new Message.Pasted("T1\nroots"));

        assertThat(desk.state().top())
                .isInstanceOfSatisfying(
                        LineSlip.class, slip -> assertThat(slip.field().text()).isEqualTo("T1 roots"));
    }

    @Test
    void escAsksBeforeTextIsLost() {
        desk.type("T1 ro").press(Key.named(Key.Name.ESCAPE));

        assertThat(String.join(" ", desk.lines())).contains("Leave it half done?");
        desk.press("Enter");
        assertThat(desk.press("l").line(9)).contains("T1 ro");
    }
}
