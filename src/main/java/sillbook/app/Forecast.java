// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import java.time.LocalDate;
import java.util.List;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.Pot;

/** Says when the stages of a pot still to come are expected. */
@FunctionalInterface
public interface Forecast {
    /** The windows shown on a day, one for each stage to come. */
    List<KeptWindow> windows(Journal journal, Id<Pot> pot, LocalDate madeOn);
}
