// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.firstrun;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.model.Settings;
import sillbook.model.Settings.Colours;
import sillbook.ui.draw.Alphabet;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.Snapshot;
import sillbook.ui.screen.Window;
import sillbook.ui.screen.contents.Sillbook;

class FirstRunTest {

    private static Desk desk() {
        Snapshot nothing = new Snapshot(Journal.empty(Settings.initial(ZoneOffset.UTC)), Desk.TODAY, 0, 0);
        Window window = new Window(Window.SMALLEST, Alphabet.UNICODE);
        return new Desk(Sillbook.firstRun(
                Handbook.standard(), Desk.counting(), nothing, window, "~/.local/share/sillbook/journal.sillbook"));
    }

    @Test
    void looksAsKept() {
        Golden.check("first-run", desk().state());
    }

    @Test
    void beginsAJournalInTheColoursThatWereChosen() {
        assertThat(desk().press("2", "Enter").effects()).containsExactly(new Effect.BeginJournal(Colours.LIGHT));
    }

    @Test
    void showsTheDemo() {
        assertThat(desk().press("Down", "Enter").effects()).containsExactly(new Effect.SeeDemo(Colours.ASK));
    }

    @Test
    void opensAFile() {
        Desk desk = desk().press("End", "Enter").type("winter.sillbook").press("Enter");
        assertThat(desk.effects()).containsExactly(new Effect.OpenJournal("winter.sillbook", Colours.ASK));
        assertThat(desk.press("Esc").line(22)).contains("Leave it half done?");
    }

    @Test
    void opensNoFileWithoutAName() {
        Desk desk = desk().press("Up", "Down", "Down", "Enter", "Enter");
        assertThat(desk.effects()).isEmpty();
        assertThat(desk.line(22)).isEqualTo(" ! Open it is off just now: no file is named yet.");
    }

    @Test
    void asksBeforeItLeaves() {
        assertThat(desk().press("q").effects()).isEmpty();
        assertThat(desk().press("q", "Enter").effects()).containsExactly(new Effect.Quit());
        assertThat(desk().press("Ctrl-C", "Esc", "Enter").effects())
                .containsExactly(new Effect.BeginJournal(Colours.ASK));
    }
}
