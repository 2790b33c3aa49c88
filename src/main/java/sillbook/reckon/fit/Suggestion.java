// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

import java.util.Optional;

/**
 * How many bulbs to set, before it is asked how many could be: the grower's own count, else a published one, else half the surface; never more than are known to fit.
 *
 * @param meant what it rests on, before it is held to what fits
 */
public record Suggestion(int count, int meant, Basis basis) {
    /** Half the surface covered by bulbs (University of Nebraska, Lincoln, Extension). */
    public static final double COVERED = 0.5;

    /** What a count rests on. */
    public enum Basis {
        OWN,
        PUBLISHED,
        HALF_SURFACE
    }

    /**
     * A count for pots of one width.
     *
     * @param across in cm
     */
    public record Published(double count, double across) {
        /** How far another pot may be from it, in cm; a judgement of ours. */
        private static final double NEAR = 1;

        boolean isFor(Bed bed) {
            return Math.abs(across - bed.across()) <= NEAR;
        }
    }

    public static Suggestion of(Optional<Integer> own, Optional<Published> published, Bed bed) {
        int most = bed.most().count();
        return own.map(count -> new Suggestion(count, Basis.OWN))
                .or(() -> published
                        .filter(count -> count.isFor(bed))
                        .map(count -> new Suggestion((int) Math.round(count.count()), Basis.PUBLISHED)))
                .orElseGet(() -> new Suggestion(halfSurface(bed), Basis.HALF_SURFACE))
                .atMost(most);
    }

    private Suggestion(int meant, Basis basis) {
        this(meant, meant, basis);
    }

    /** So many bulbs as cover half of it, to the nearest one; at least one. */
    private static int halfSurface(Bed bed) {
        double times = bed.across() / bed.bulb();
        return (int) Math.max(1, Math.round(COVERED * times * times));
    }

    private Suggestion atMost(int most) {
        return new Suggestion(Math.min(meant, most), meant, basis);
    }

    /** Whether fewer fit than it would come to. */
    public boolean isCut() {
        return count < meant;
    }
}
