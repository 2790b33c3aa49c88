// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.HashSet;
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
        growth = Sorted.copyOf(growth);
        troubles = Sorted.copyOf(troubles);
    }

    public Findings withMoisture(Moisture found) {
        return new Findings(Optional.of(found), watered, roots, shoot, growth, troubles, note);
    }

    public Findings withWatered(boolean given) {
        return new Findings(moisture, given, roots, shoot, growth, troubles, note);
    }

    public Findings withRoots(Roots found) {
        return new Findings(moisture, watered, Optional.of(found), shoot, growth, troubles, note);
    }

    public Findings withShoot(Length height) {
        return new Findings(moisture, watered, roots, Optional.of(height), growth, troubles, note);
    }

    /** The same, with one sign of growth more. */
    public Findings with(Growth sign) {
        return new Findings(moisture, watered, roots, shoot, union(growth, sign), troubles, note);
    }

    /** The same, with one trouble more. */
    public Findings with(Trouble trouble) {
        return new Findings(moisture, watered, roots, shoot, growth, union(troubles, trouble), note);
    }

    /** The same, with more words after those it has. */
    public Findings withNote(String more) {
        String all = note.isEmpty() || more.isEmpty() ? note + more : note + "; " + more;
        return new Findings(moisture, watered, roots, shoot, growth, troubles, all);
    }

    private static <E> Set<E> union(Set<E> set, E one) {
        Set<E> all = new HashSet<>(set);
        all.add(one);
        return all;
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
