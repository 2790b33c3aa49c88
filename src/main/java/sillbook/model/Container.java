// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Optional;

/**
 * A pot as an object, which can be used again.
 *
 * @param across the inside width at bulb depth
 * @param stock how many there are
 * @param unwashed how many of those not in use want washing before bulbs go in
 */
public record Container(
        Id<Container> id,
        String name,
        Shape shape,
        Optional<Length> across,
        Optional<Length> height,
        int stock,
        int unwashed,
        String note)
        implements Entity<Container> {
    public Container {
        if (stock < 0 || unwashed < 0) {
            throw new IllegalArgumentException("containers cannot be " + stock + ", " + unwashed + " of them unwashed");
        }
    }

    /** The trade's shapes; an outer pot is for show only. */
    public enum Shape {
        STANDARD,
        AZALEA,
        PAN,
        BOWL,
        GLASS,
        OUTER,
        OTHER
    }
}
