// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sillbook.change.Change;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.season.Outlook;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Effect;
import sillbook.ui.screen.GrowersWinter;
import sillbook.words.line.Bench;
import sillbook.words.line.QuickLine;

/** What is typed on the screens and what {@code write} is given ask for the same change, to the last word. */
class SameChangesTest {
    private static final Journal JOURNAL = GrowersWinter.told().journal();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "T4 roots, 6 cm",
                "H5-H7 stair window",
                "T4 stair window, yesterday",
                "cellar all moist, T4 dry",
                "T4 fed",
                "T4 later fri because the sill is full",
                "T4 not at all because it failed",
                "D1 first flower",
                "note T4: from the back of the shelf",
                "H4 failed",
                "pot T4, x6, 18 cm",
                "place cellar, room 30"
            })
    void aLineIsTheSameChangeInBoth(String line) {
        Desk desk = Desk.over(JOURNAL).press("l").type(line).press("Enter");

        assertThat(desk.effects()).contains(new Effect.CarryOut(written(line)));
    }

    private static Change written(String line) {
        Outlook outlook = Outlook.of(JOURNAL, Handbook.standard(), Desk.TODAY);
        return QuickLine.read(line, new Bench(JOURNAL, outlook, Handbook.standard(), Desk.counting()))
                .change()
                .orElseThrow();
    }
}
