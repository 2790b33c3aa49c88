// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.Optional;
import sillbook.store.Comparison;
import sillbook.store.Progress;
import sillbook.words.Counts;

/** Says how far a long file is: at its beginning and at each quarter. A short one is done before that could be read. */
final class Quarters implements Progress {
    private static final long LONG = 200_000;
    private static final int PARTS = 4;

    private final Printer printer;
    private final String name;
    private final long all;
    private Optional<Comparison> last = Optional.empty();
    private int said = -1;

    /** @param all how many readings there will be, about */
    Quarters(Printer printer, String name, long all) {
        this.printer = printer;
        this.name = name;
        this.all = all;
    }

    @Override
    public boolean goesOn(Comparison soFar) {
        last = Optional.of(soFar);
        int quarter = all == 0 ? PARTS : (int) (PARTS * (long) soFar.readings() / all);
        if (all >= LONG && quarter > said && quarter < PARTS) {
            said = quarter;
            printer.say(
                    "Reading " + name + ": " + Counts.grouped(soFar.readings()) + " of " + Counts.grouped(all) + ".");
        }
        return true;
    }

    /** What was told last; empty when nothing was read at all. */
    Optional<Comparison> last() {
        return last;
    }
}
