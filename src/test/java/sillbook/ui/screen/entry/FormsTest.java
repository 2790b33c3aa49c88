// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sillbook.ui.screen.Desk;
import sillbook.ui.screen.Golden;
import sillbook.ui.screen.GrowersWinter;

/** A picture of every form, as it opens over the page it is opened on. */
class FormsTest {
    @ParameterizedTest
    @CsvSource({
        "form-new-pot, 2 n",
        "form-same-again, 2 s",
        "form-correct-pot, 2 e",
        "form-note, 2 j",
        "form-outcome, 2 Down Down o o",
        "form-another-day, 1 a",
        "form-remove-pot, 2 Delete",
        "form-new-place, 3 n",
        "form-correct-place, 3 e",
        "form-ground, 3 Down Down Enter Down e",
        "form-new-variety, 4 n",
        "form-correct-variety, 4 e",
        "form-purchase, 4 t",
        "form-arrived, 4 v p Enter",
        "form-wish, ;",
        "form-settings, ','"
    })
    void opens(String name, String keys) {
        Desk desk = Desk.over(GrowersWinter.withAnOrder());

        desk.press(keys.split(" ", -1));

        Golden.check(name, desk.state());
    }
}
