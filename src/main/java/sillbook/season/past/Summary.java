// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Cause;
import sillbook.model.Failure.Sign;
import sillbook.model.Id;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.reckon.effects.Proportion;

/**
 * What one winter came to, as far as it was written.
 *
 * @param pots potted, a mixed one counted once
 * @param flowered those of them that came to flower
 * @param tally of the varieties in them
 * @param bulbs that flowered of those planted, where flowers were counted
 * @param daysWithBloom on which any pot was in flower; empty where no flower was written
 * @param best the varieties with the highest mean score, and {@code worst} those with the lowest; both empty where all are the
 *     same
 * @param signs of failure, each with the number of outcomes that have it
 * @param causes that were confirmed, each with the number of outcomes that have it
 * @param cold empty where no pot had any
 */
public record Summary(
        Season winter,
        int pots,
        int flowered,
        Tally tally,
        Proportion bulbs,
        Optional<Long> daysWithBloom,
        List<Id<Variety>> best,
        List<Id<Variety>> worst,
        Map<Sign, Integer> signs,
        Map<Cause, Integer> causes,
        Optional<Cold> cold) {
    public Summary {
        best = List.copyOf(best);
        worst = List.copyOf(worst);
        signs = Map.copyOf(signs);
        causes = Map.copyOf(causes);
    }

    /** Days in the cold, of the pots that had any. */
    public record Cold(long least, long middle, long most) {}
}
