// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * What was seen at a check; what was not looked at stays empty. A check of a pot says nothing of {@code firmness} unless a
 * bulb was felt, one of dry bulbs nothing of water, roots or shoot.
 *
 * @param watered whether water was given then: the potting mix watered, the water topped up or changed
 * @param water how high the water stood, where bulbs stand over water
 * @param roots whether they show: at the holes, or in the glass
 * @param rootLength where they can be seen at their length, as in a glass
 * @param shoot height of the shoot above the bulb
 * @param firmness how the bulb felt
 * @param note in the grower's words; may be empty
 */
public record Findings(
        Optional<Moisture> moisture,
        boolean watered,
        Optional<Water> water,
        Optional<Roots> roots,
        Optional<Length> rootLength,
        Optional<Length> shoot,
        Optional<Firmness> firmness,
        Set<Growth> growth,
        Set<Trouble> troubles,
        String note) {

    public static final Findings NOTHING = new Findings(
            Optional.empty(),
            false,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Set.of(),
            Set.of(),
            "");

    /** A check of a pot with potting mix that found all well: moist, and no trouble. */
    public static final Findings ALL_WELL = NOTHING.withMoisture(Moisture.MOIST);

    /** A check of bulbs over water that found all well: the water where it should be, and no trouble. */
    public static final Findings WATER_WELL = NOTHING.withWater(Water.RIGHT);

    /** A check of dry bulbs that found all well: firm, and no trouble. */
    public static final Findings DRY_WELL = NOTHING.withFirmness(Firmness.FIRM);

    public Findings {
        growth = Sorted.copyOf(growth);
        troubles = Sorted.copyOf(troubles);
    }

    /** The same in the terms of a way of growing: over water, dry is water that stands low, and wet one that stands high. */
    public Findings in(Pot.Way way) {
        return way.isOverWater() && moisture.isPresent() ? overWater(moisture.get()) : this;
    }

    /** The same of bulbs that are not potted: how they feel, and troubles. */
    public Findings ofDryBulbs() {
        return new Findings(
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                firmness,
                Set.of(),
                troubles,
                note);
    }

    private Findings overWater(Moisture felt) {
        Water level = switch (felt) {
            case DRY -> Water.LOW;
            case MOIST -> Water.RIGHT;
            case WET -> Water.HIGH;
        };
        return new Findings(
                Optional.empty(),
                watered,
                water.or(() -> Optional.of(level)),
                roots,
                rootLength,
                shoot,
                firmness,
                growth,
                troubles,
                note);
    }

    /** Whether anybody looked how wet it is: the potting mix, or the water under the bulbs. */
    public boolean tellsOfWater() {
        return moisture.isPresent() || water.isPresent();
    }

    /** Whether it was found too dry or too wet. */
    public boolean isTooDryOrWet() {
        return moisture.filter(felt -> felt != Moisture.MOIST).isPresent()
                || water.filter(level -> level != Water.RIGHT).isPresent();
    }

    public Findings withMoisture(Moisture found) {
        return new Findings(
                Optional.of(found), watered, water, roots, rootLength, shoot, firmness, growth, troubles, note);
    }

    public Findings withWatered(boolean given) {
        return new Findings(moisture, given, water, roots, rootLength, shoot, firmness, growth, troubles, note);
    }

    public Findings withWater(Water level) {
        return new Findings(
                moisture, watered, Optional.of(level), roots, rootLength, shoot, firmness, growth, troubles, note);
    }

    public Findings withoutWater() {
        return new Findings(
                moisture, watered, Optional.empty(), roots, rootLength, shoot, firmness, growth, troubles, note);
    }

    public Findings withRoots(Roots found) {
        return new Findings(
                moisture, watered, water, Optional.of(found), rootLength, shoot, firmness, growth, troubles, note);
    }

    /** The same, with roots of that length; of no length, there are none. */
    public Findings withRootLength(Length length) {
        Roots seen = length.tenths() == 0 ? Roots.NONE : Roots.SHOWING;
        return new Findings(
                moisture,
                watered,
                water,
                Optional.of(seen),
                Optional.of(length),
                shoot,
                firmness,
                growth,
                troubles,
                note);
    }

    public Findings withShoot(Length height) {
        return new Findings(
                moisture, watered, water, roots, rootLength, Optional.of(height), firmness, growth, troubles, note);
    }

    public Findings withFirmness(Firmness felt) {
        return new Findings(
                moisture, watered, water, roots, rootLength, shoot, Optional.of(felt), growth, troubles, note);
    }

    /** The same, with one sign of growth more. */
    public Findings with(Growth sign) {
        return new Findings(
                moisture, watered, water, roots, rootLength, shoot, firmness, union(growth, sign), troubles, note);
    }

    /** The same, with one trouble more. */
    public Findings with(Trouble trouble) {
        return new Findings(
                moisture, watered, water, roots, rootLength, shoot, firmness, growth, union(troubles, trouble), note);
    }

    /** The same, with more words after those it has. */
    public Findings withNote(String more) {
        String all = note.isEmpty() || more.isEmpty() ? note + more : note + "; " + more;
        return new Findings(moisture, watered, water, roots, rootLength, shoot, firmness, growth, troubles, all);
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

    /** How high the water stands, measured by the base of the bulb. */
    public enum Water {
        LOW,
        RIGHT,
        HIGH
    }

    /** Whether roots show. */
    public enum Roots {
        NONE,
        SHOWING
    }

    /** How a bulb feels between the fingers. */
    public enum Firmness {
        FIRM,
        SOFT
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
        CLOUDY,
        OTHER
    }
}
