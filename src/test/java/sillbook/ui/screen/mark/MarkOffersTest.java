// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.mark;

import static org.assertj.core.api.Assertions.assertThat;
import static sillbook.season.Winter.winter;

import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.change.Choose;
import sillbook.model.Choice.Chosen;
import sillbook.model.Choice.SetAside;
import sillbook.model.Choice.Undecided;
import sillbook.model.Journal;
import sillbook.model.Place.Sort;
import sillbook.model.Season;
import sillbook.model.Settings;
import sillbook.model.Variety;
import sillbook.season.Winter;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;

/** The same two keys on every page on which varieties stand. */
class MarkOffersTest {
    private static final Season COMING = new Season(2027);

    private static Journal journal() {
        Winter told = winter().place("fridge", Sort.FRIDGE).place("cellar", Sort.CELLAR);
        for (int year = 2023; year < 2026; year++) {
            told.of(year);
            told.pot("T1", "Marrow Lane", "tulip").potted("5 oct", "cellar").outcome("1 mar", 5);
            told.pot("H1", "Inkwell", "hyacinth").potted("5 oct", "fridge").outcome("1 mar", 3);
        }
        return told.journal();
    }

    private static Desk at(String keys) {
        return Desk.over(journal()).press(keys.split(" ", -1));
    }

    private static Variety under(Desk desk) {
        String line = cursorLine(desk);
        return desk.state().journal().varieties().all().stream()
                .filter(variety -> line.contains(variety.name()))
                .findFirst()
                .orElseThrow();
    }

    private static String cursorLine(Desk desk) {
        return desk.lines().stream()
                .filter(line -> line.startsWith("▸"))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"4", "4 v s", "4 Enter", "6", "6 v e", "6 v c"})
    void cAndXMarkTheVarietyUnderTheCursor(String page) {
        Desk desk = at(page);
        Variety variety = under(desk);

        assertThat(desk.press("c").effects())
                .containsExactly(new Effect.CarryOut(new Choose(variety.id(), COMING, new Chosen(5))));
        assertThat(desk.kept().line(23))
                .contains("'" + variety.name() + "' chosen for 2027-28, 5 bulbs. U takes it back.");
        assertThat(desk.press("c").effects())
                .containsExactly(new Effect.CarryOut(new Choose(variety.id(), COMING, new Undecided())));
        desk.kept();
        assertThat(desk.press("x").type("too tall").press("Enter").effects())
                .containsExactly(new Effect.CarryOut(new Choose(variety.id(), COMING, new SetAside("too tall"))));
        desk.kept();
        assertThat(desk.press("x").effects())
                .containsExactly(new Effect.CarryOut(new Choose(variety.id(), COMING, new Undecided())));
    }

    @ParameterizedTest
    @ValueSource(strings = {"4", "6", "6 v e", "6 v c"})
    void itsLineBearsASign(String page) {
        Desk desk = at(page);
        assertThat(cursorLine(desk.press("c").kept())).startsWith("▸+  '");
        assertThat(cursorLine(desk.press("x", "Enter").kept())).startsWith("▸ - '");
    }

    @Test
    void theCardSaysForWhichSeasonItIsMarked() {
        Desk card = at("4 Enter");
        assertThat(String.join("\n", card.press("c").kept().lines())).contains(" Mark   for 2027-28 chosen, 5 bulbs");
        assertThat(String.join("\n", card.press("c").kept().lines())).doesNotContain(" Mark ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"6 v p", "6 v e v p"})
    void whereNoVarietyStandsThereIsNothingToMark(String page) {
        Desk desk = at(page);
        assertThat(desk.press("c").effects()).isEmpty();
        assertThat(desk.line(22)).contains("Choose is off just now: no variety is under the cursor.");
    }

    @Test
    void anEmptyBookHasNothingToMark() {
        Desk empty = Desk.over(Journal.empty(Settings.initial(ZoneOffset.UTC))).press("4");
        assertThat(empty.press("x").line(22)).contains("Set aside is off just now: no variety is under the cursor.");
    }

    @Test
    void onPotsCStillChecks() {
        Desk pots = Desk.over(winter().place("cellar", Sort.CELLAR)
                .pot("T1", "Marrow Lane", "tulip")
                .potted("5 oct", "cellar")
                .journal());
        assertThat(String.join("\n", pots.press("2", "c").lines()))
                .contains("T1")
                .contains("0 marked");
    }
}
