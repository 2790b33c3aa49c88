// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Day;
import sillbook.model.Findings;
import sillbook.model.Findings.Growth;
import sillbook.model.Findings.Moisture;
import sillbook.model.Findings.Roots;
import sillbook.model.Findings.Trouble;
import sillbook.model.Length;
import sillbook.model.Pot.Way;

/**
 * What was last seen of a pot, each with the day it was seen.
 *
 * @param roots the first day they showed, else the last on which they did not
 * @param rootLength as last measured
 * @param signs every sign of growth seen so far, with the first day it was
 * @param troubles those of the last check
 * @param lastLook the last check of any sort
 */
public record Seen(
        Optional<Noted<Roots>> roots,
        Optional<Noted<Length>> rootLength,
        Optional<Noted<Length>> shoot,
        Optional<Noted<Moisture>> moisture,
        Map<Growth, Day> signs,
        Set<Trouble> troubles,
        Optional<Day> lastLook) {

    /** Roots in a glass are long enough from so many cm (common practice). */
    static final double GLASS_ROOTS = 10;

    static final Seen NOTHING = new Seen(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Map.of(),
            Set.of(),
            Optional.empty());

    public Seen {
        signs = Map.copyOf(signs);
        troubles = Set.copyOf(troubles);
    }

    /** Every sign of growth seen so far. */
    public Set<Growth> growth() {
        return signs.keySet();
    }

    /** Whether roots have been seen. */
    public boolean isRooted() {
        return roots.filter(seen -> seen.value() == Roots.SHOWING).isPresent();
    }

    /**
     * The roots as they speak of coming in, by what can be seen in the pot's way. A bowl and pebbles hide them, so that
     * only what was seen showing counts; in a glass they show early, so that they count once they are long enough, where
     * somebody measured.
     */
    Optional<Noted<Roots>> rootsIn(Way way) {
        return switch (way) {
            case DRAINED -> roots;
            case BOWL, PEBBLES -> roots.filter(seen -> seen.value() == Roots.SHOWING);
            case GLASS -> rootLength.<Noted<Roots>>map(Seen::measured).or(() -> roots);
        };
    }

    private static Noted<Roots> measured(Noted<Length> length) {
        boolean isLong = length.value().centimetres() >= GLASS_ROOTS;
        return new Noted<>(isLong ? Roots.SHOWING : Roots.NONE, length.day());
    }

    /** What is known after one more check. Roots that showed once are there to stay. */
    Seen with(Day day, Findings found) {
        Map<Growth, Day> first = new EnumMap<>(Growth.class);
        found.growth().forEach(sign -> first.put(sign, day));
        first.putAll(signs);
        return new Seen(
                isRooted() ? roots : newer(found.roots(), day, roots),
                newer(found.rootLength(), day, rootLength),
                newer(found.shoot(), day, shoot),
                newer(found.moisture(), day, moisture),
                first,
                found.troubles(),
                Optional.of(day));
    }

    private static <T> Optional<Noted<T>> newer(Optional<T> found, Day day, Optional<Noted<T>> known) {
        return found.map(value -> new Noted<>(value, day)).or(() -> known);
    }
}
