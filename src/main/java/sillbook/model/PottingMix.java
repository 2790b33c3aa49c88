// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.List;

/** A potting mix: its parts by volume, or only the name on the bag. */
public record PottingMix(Id<PottingMix> id, String name, List<Part> parts, String note) implements Entity<PottingMix> {
    public PottingMix {
        parts = List.copyOf(parts);
    }

    /** So many parts of a material. */
    public record Part(double parts, String material) {
        public Part {
            if (!(parts > 0)) {
                throw new IllegalArgumentException("a part of nothing: " + material);
            }
        }
    }
}
