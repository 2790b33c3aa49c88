// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Optional;
import java.util.Set;

/**
 * What was seen at a check; what was not looked at stays empty.
 *
 * @param watered whether it was watered then
 * @param shoot height of the shoot above the bulb
 * @param note in the grower's words; may be empty
 */
public record Findings(
        Optional<Moisture> moisture,
        boolean watered,
        Optional<Roots> roots,
        Optional<Length> shoot,
        Set<Growth> growth,
        Set<Trouble> troubles,
        String note) {

    public static final Findings NOTHING =
            new Findings(Optional.empty(), false, Optional.empty(), Optional.empty(), Set.of(), Set.of(), "");

    /** A check that found all well: moist, and no trouble. */
    public static final Findings ALL_WELL = new Findings(
            Optional.of(Moisture.MOIST), false, Optional.empty(), Optional.empty(), Set.of(), Set.of(), "");

    public Findings {
        growth = Set.copyOf(growth);
        troubles = Set.copyOf(troubles);
    }

    /** How wet the potting mix is. */
    public enum Moisture {
        DRY,
        MOIST,
        WET
    }

    /** Whether roots show at the holes. */
    public enum Roots {
        NONE,
        SHOWING
    }

    /** Signs of what comes next. */
    public enum Growth {
        BUDS,
        COLOUR
    }

    /** Signs of something wrong. */
    public enum Trouble {
        MOULD,
        MICE,
        FROST,
        ROT,
        YELLOWING,
        BLASTED,
        OTHER
    }
}
