// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.firstrun;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.MonthDay;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.change.Together;
import sillbook.change.WriteDown;
import sillbook.handbook.Handbook;
import sillbook.model.Entity;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Settings;
import sillbook.model.Settings.Colours;
import sillbook.ui.draw.Alphabet;
import sillbook.ui.screen.Copy;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.Message;
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

    private static Desk begun() {
        Desk desk = desk().press("Enter");
        Snapshot empty = new Snapshot(Journal.empty(Settings.initial(ZoneOffset.UTC)), Desk.TODAY, 0, 0);
        return desk.tell(new Message.Opened(new Copy("journal.sillbook", false, false), empty));
    }

    private static List<Entity<?>> written(Desk desk) {
        Together begun =
                (Together) ((Effect.CarryOut) desk.press("Enter").effects().get(0)).change();
        return begun.changes().stream()
                .<Entity<?>>map(change -> ((WriteDown) change).entity())
                .toList();
    }

    @Test
    void aBookOfOnesOwnAsksForUnitsSeasonAndPlaces() {
        Golden.check("begin", begun().state());
    }

    @Test
    void whatIsAnsweredIsKeptAsOneStep() {
        Desk desk = begun().press("Shift-Tab", "Shift-Tab", "Shift-Tab", "Ctrl-U")
                .type("F")
                .press("Tab", "Ctrl-U");
        desk.type("inches").press("Tab", "Ctrl-U").type("jan").press("Tab");
        desk.type("garage fridge, cellar, stair window (cool room)");
        Golden.check("begin-filled", desk.state());

        List<Entity<?>> written = written(desk);

        assertThat(written.get(0)).isInstanceOfSatisfying(Settings.class, settings -> {
            assertThat(settings.temperatures()).isEqualTo(Settings.TemperatureUnit.FAHRENHEIT);
            assertThat(settings.lengths()).isEqualTo(Settings.LengthUnit.INCHES);
            assertThat(settings.seasonStart()).isEqualTo(MonthDay.of(1, 1));
        });
        assertThat(written.subList(1, 4))
                .extracting(place -> ((Place) place).name() + ", " + ((Place) place).sort())
                .containsExactly("garage fridge, FRIDGE", "cellar, CELLAR", "stair window, COOL_ROOM");
    }

    @Test
    void eachQuestionMayBeLeftAsItStands() {
        assertThat(written(begun())).containsExactly(Settings.initial(ZoneOffset.UTC));
    }

    @Test
    void orAllOfThemByEsc() {
        Desk desk = begun().press("Esc");

        assertThat(desk.state().layers().over()).isEmpty();
        assertThat(String.join(" ", desk.lines())).contains("there are no pots yet");
    }

    @ParameterizedTest
    @CsvSource({"loft,which sort?", "loft (shelf),shelf"})
    void aPlaceOfNoSortIsAskedAbout(String place, String asks) {
        Desk desk = begun().type(place).press("Enter");

        assertThat(desk.effects()).isEmpty();
        assertThat(String.join(" ", desk.lines())).contains(asks);
    }

    @Test
    void aMonthThatIsNoneIsAskedAbout() {
        Desk desk = begun().press("Shift-Tab", "Ctrl-U").type("sprg").press("Enter");

        assertThat(desk.effects()).isEmpty();
        assertThat(desk.line(22)).startsWith(" ! ");
    }

    @Test
    void theDemoAsksNothing() {
        Desk desk = desk().press("Down", "Enter");
        Snapshot empty = new Snapshot(Journal.empty(Settings.initial(ZoneOffset.UTC)), Desk.TODAY, 0, 0);
        desk.tell(new Message.Opened(new Copy("demo.sillbook", true, false), empty));

        assertThat(desk.state().layers().over()).isEmpty();
    }
}
