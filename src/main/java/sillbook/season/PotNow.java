// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * All that is true of one pot on a day.
 *
 * @param coldNeed the cold it needs; empty when nothing in it needs any
 * @param coldAhead when it will have had its cold; of a pot that stands there and needs any
 * @param ahead the stages to come, in order
 * @param signs the signs to come before its flower and soon after it, as far as own pots taught when
 * @param readiness whether it may come in; of a pot in the cold that needs it
 * @param useBy the last good day in the cold; of a pot that stands there
 * @param wish the nearest wish it is meant to meet that is not past
 * @param next the one thing to do next; empty when nothing is left
 */
public record PotNow(
        PotLife life,
        PotFigures figures,
        Optional<ColdNeed> coldNeed,
        Optional<ColdAhead> coldAhead,
        List<Ahead> ahead,
        List<SignAhead> signs,
        Optional<Readiness> readiness,
        Optional<LocalDate> useBy,
        Optional<WishNow> wish,
        List<Concern> concerns,
        Optional<Job.OfPots> next) {
    public PotNow {
        ahead = List.copyOf(ahead);
        signs = List.copyOf(signs);
        concerns = List.copyOf(concerns);
    }
}
