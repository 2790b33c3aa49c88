// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import sillbook.store.Comparison;
import sillbook.words.logger.Compared;

/** What the readings of a file are beside those of a journal, as words take it. */
public final class Beside {
    private Beside() {}

    public static Compared of(Comparison found) {
        return new Compared(
                found.fresh(),
                found.known(),
                found.repeated(),
                found.changed(),
                found.differing() - found.changed(),
                found.isTakenIn(),
                found.differences().stream().map(Beside::difference).toList());
    }

    private static Compared.Difference difference(Comparison.Difference one) {
        return new Compared.Difference(one.line(), one.journal(), one.delivery(), one.isChanged());
    }
}
