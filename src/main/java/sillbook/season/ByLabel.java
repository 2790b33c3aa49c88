// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.Comparator;
import sillbook.model.Labels;
import sillbook.model.Pot;

/** The order of labels: by letters, then by number, so that {@code T10} follows {@code T9}. */
public final class ByLabel {
    static final Comparator<String> OF_LABELS = Comparator.comparing(Labels::letters)
            .thenComparingInt(Labels::number)
            .thenComparing(Comparator.naturalOrder());

    public static final Comparator<Pot> OF_POTS =
            Comparator.comparing(Pot::label, OF_LABELS).thenComparing(Pot::id);

    static final Comparator<PotLife> OF_LIVES = Comparator.comparing(PotLife::pot, OF_POTS);

    private ByLabel() {}
}
