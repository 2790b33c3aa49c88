// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import sillbook.handbook.Handbook;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.Pot;
import sillbook.season.Outlook;

/** Says when the stages of pots still to come are expected. */
@FunctionalInterface
public interface Forecast {
    /** The windows shown on a day, one for each stage to come of each pot. */
    List<KeptWindow> windows(Journal journal, Collection<Id<Pot>> pots, LocalDate madeOn);

    /** The windows that the screens show, worked out with a handbook. */
    static Forecast by(Handbook handbook) {
        return (journal, pots, madeOn) -> Outlook.of(journal, handbook, madeOn).windowsToKeep(pots);
    }
}
