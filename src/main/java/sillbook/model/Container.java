// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Optional;

/**
 * A pot as an object, which can be used again.
 *
 * @param across the inside width at bulb depth
 * @param stock how many there are
 */
public record Container(
        Id<Container> id,
        String name,
        Shape shape,
        Optional<Length> across,
        Optional<Length> height,
        int stock,
        String note)
        implements Entity<Container> {

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
