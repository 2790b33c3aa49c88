// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.Optional;
import java.util.Set;
import sillbook.model.Day;
import sillbook.model.Findings.Growth;
import sillbook.model.Findings.Moisture;
import sillbook.model.Findings.Roots;
import sillbook.model.Findings.Trouble;
import sillbook.model.Length;

/**
 * What was last seen of a pot, each with the day it was seen.
 *
 * @param roots once showing they stay so
 * @param growth every sign seen so far
 * @param troubles those of the last check
 * @param lastLook the last check of any sort
 */
public record Seen(
        Optional<Noted<Roots>> roots,
        Optional<Noted<Length>> shoot,
        Optional<Noted<Moisture>> moisture,
        Set<Growth> growth,
        Set<Trouble> troubles,
        Optional<Day> lastLook) {

    static final Seen NOTHING =
            new Seen(Optional.empty(), Optional.empty(), Optional.empty(), Set.of(), Set.of(), Optional.empty());

    public Seen {
        growth = Set.copyOf(growth);
        troubles = Set.copyOf(troubles);
    }
}
