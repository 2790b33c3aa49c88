// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.util.List;
import java.util.Optional;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.model.Potting.Depth;
import sillbook.model.Settings.LengthUnit;
import sillbook.season.PotFit;
import sillbook.words.PotFitWords;

/**
 * How the bulbs of a pot sit, and what is said of it.
 *
 * @param says in short lines; to know how many would fit takes a while
 */
public record Sits(PotFit fit, Depth depth, List<String> says) {
    public Sits {
        says = List.copyOf(says);
    }

    /** Empty where its width or their size is not known. */
    static Optional<Sits> of(Journal journal, Pot pot) {
        LengthUnit unit = journal.settings().lengths();
        return PotFit.of(journal, pot).map(fit -> of(fit, pot.potting().depth(), unit));
    }

    public static Sits of(PotFit fit, Depth depth, LengthUnit unit) {
        return new Sits(fit, depth, new PotFitWords(fit, unit).lines(depth));
    }
}
