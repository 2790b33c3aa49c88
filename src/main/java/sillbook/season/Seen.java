// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Day;
import sillbook.model.Findings;
import sillbook.model.Findings.Growth;
import sillbook.model.Findings.Moisture;
import sillbook.model.Findings.Roots;
import sillbook.model.Findings.Trouble;
import sillbook.model.Length;

/**
 * What was last seen of a pot, each with the day it was seen.
 *
 * @param roots the first day they showed, else the last on which they did not
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

    /** Whether roots have been seen at the holes. */
    public boolean isRooted() {
        return roots.filter(seen -> seen.value() == Roots.SHOWING).isPresent();
    }

    /** What is known after one more check. Roots that showed once are there to stay. */
    Seen with(Day day, Findings found) {
        Set<Growth> signs = EnumSet.noneOf(Growth.class);
        signs.addAll(growth);
        signs.addAll(found.growth());
        return new Seen(
                isRooted() ? roots : newer(found.roots(), day, roots),
                newer(found.shoot(), day, shoot),
                newer(found.moisture(), day, moisture),
                signs,
                found.troubles(),
                Optional.of(day));
    }

    private static <T> Optional<Noted<T>> newer(Optional<T> found, Day day, Optional<Noted<T>> known) {
        return found.map(value -> new Noted<>(value, day)).or(() -> known);
    }
}
