// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.seasons;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import sillbook.app.demo.Demo;
import sillbook.model.Journal;
import sillbook.model.Place.Sort;
import sillbook.model.Settings;
import sillbook.season.Winter;
import sillbook.season.past.Trials;
import sillbook.ui.draw.Size;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.Message;
import sillbook.ui.screen.Snapshot;

class EffectsPageTest {
    private static Desk effects(Journal journal) {
        return Desk.over(journal).press("6", "v", "e");
    }

    /** The answer the shell would give. */
    private static Desk answered(Desk desk) {
        Effect.Average asked = (Effect.Average) desk.effects().get(0);
        return desk.tell(asked.answer());
    }

    private static String all(Desk desk) {
        return String.join("\n", desk.lines());
    }

    @Test
    void looksAsDrawn() {
        Golden.check("seasons-effects", answered(effects(PastWinters.journal())).state());
    }

    @Test
    void theDemoLooksAsDrawn() {
        Golden.check("seasons-effects-demo", answered(effects(Demo.journal())).state(), new Size(80, 24));
    }

    @Test
    void theQuickAnswerComesFirstAndTheOneThatStaysTakesItsPlace() {
        Desk desk = effects(PastWinters.journal());
        assertThat(all(desk)).contains("A first answer; the one that stays is being worked out.");
        assertThat(desk.effects()).singleElement().isInstanceOf(Effect.Average.class);
        assertThat(desk.press("Down").effects()).as("asked once").isEmpty();
        Desk fresh = effects(PastWinters.journal());
        assertThat(all(answered(fresh)))
                .doesNotContain("A first answer")
                .contains("A bar holds the truth 8 times in 10.");
        assertThat(fresh.press("v", "p").effects())
                .as("one answer for all views")
                .isEmpty();
        assertThat(all(fresh)).doesNotContain("A first answer").contains("places of cold");
    }

    @Test
    void anAnswerToAnotherJournalIsLeftAside() {
        Desk desk = effects(PastWinters.journal());
        Trials before = ((Effect.Average) desk.effects().get(0)).trials();
        Snapshot changed = new Snapshot(PastWinters.journal(), Desk.TODAY, 0, 0);
        desk.tell(new Message.Changed(changed));
        assertThat(desk.effects())
                .filteredOn(Effect.Average.class::isInstance)
                .as("asked anew")
                .hasSize(1);
        Desk told = desk.tell(new Effect.Average(before).answer());
        assertThat(all(told)).contains("A first answer");
    }

    @Test
    void anyRowOpensThePotsBehindIt() {
        Desk desk = answered(effects(PastWinters.journal()));
        String name = desk.state().top().thing(desk.state()).isPresent() ? "'" : "";
        assertThat(desk.press("Enter").line(4)).startsWith(" " + name).contains(" winters, ");
        assertThat(desk.press("Esc").line(4)).startsWith(" Effects  varieties");
        assertThat(desk.press("v", "p", "Enter").line(4)).contains("6 pots");
        assertThat(desk.press("Esc", "v", "w").line(4)).startsWith(" What did well");
    }

    @Test
    void wSaysWhyAndHowOftenTheBarsWereRight() {
        Desk desk = answered(effects(PastWinters.journal())).press("w");
        Golden.check("seasons-effects-why", desk.state(), new Size(80, 24));
        assertThat(all(desk)).contains("Of 1000 invented growers").contains("plain mean");
        Desk quick = effects(PastWinters.journal()).press("w");
        assertThat(all(quick)).contains("certain (REML)");
    }

    @Test
    void whatCannotBeToldApartStandsBeforeAnyFigure() {
        Winter told = winter().place("fridge", Sort.FRIDGE)
                .place("cellar", Sort.CELLAR)
                .of(2025);
        for (int i = 0; i < 3; i++) {
            told.pot("T" + i, "Tuesday Coat", "tulip").potted("1 oct", "fridge").outcome("1 mar", 5 - i % 2);
            told.pot("M" + i, "Marrow Lane", "tulip").potted("1 oct", "cellar").outcome("1 mar", 3);
            told.pot("L" + i, "Lantern Row", "tulip").potted("1 oct", "cellar").outcome("1 mar", 2 + i % 2);
        }
        Desk desk = answered(effects(told.journal()));
        assertThat(desk.line(5)).startsWith("    All 3 pots of 'Tuesday Coat' stood in the fridge, and no other did.");
        assertThat(all(desk)).contains("'Tuesday Coat'       3    plain mean 4.7");
        assertThat(desk.press("Down", "Down").line(22)).contains("'Tuesday Coat'  All 3 pots of 'Tuesday Coat'");
        assertThat(all(desk.press("v", "m"))).contains("No scored pot says which it had.");
    }

    @Test
    void littleJournalsHaveNoFigure() {
        Desk empty = effects(Journal.empty(Settings.initial(ZoneOffset.UTC)));
        assertThat(all(empty)).contains("No score yet.").doesNotContain("A first answer");
        assertThat(empty.effects()).isEmpty();
        assertThat(empty.press("Enter").line(22)).contains("there is no score yet");
        Desk one = effects(winter().of(2025)
                .pot("T1", "Marrow Lane", "tulip")
                .outcome("12 feb", 4)
                .journal());
        assertThat(all(one.press("w"))).contains("Too few scores").contains("no figure");
        one.press("Esc");
        assertThat(all(one)).contains("Too few scores to tell anything apart").contains("plain mean 4.0");
        List<String> figures = one.lines().stream()
                .filter(line -> line.contains("◉") || line.contains("◦"))
                .toList();
        assertThat(figures).isEmpty();
    }
}
