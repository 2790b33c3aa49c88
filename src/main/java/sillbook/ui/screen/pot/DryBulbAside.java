// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.pot;

import sillbook.season.WaitingBulbs;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.State;
import sillbook.words.DryBulbWords;
import sillbook.words.PotNames;

/** What there is to say of bulbs that wait dry. */
public record DryBulbAside(State state) {

    public Aside of(WaitingBulbs bulbs) {
        String name = new PotNames(state.journal()).variety(bulbs.purchase().variety());
        return Aside.of(name, words().howLong(bulbs, state.shown().today()));
    }

    /** The words for them. */
    public DryBulbWords words() {
        return new DryBulbWords(
                state.journal(),
                state.kit().handbook(),
                state.almanac().outlook().figures());
    }
}
