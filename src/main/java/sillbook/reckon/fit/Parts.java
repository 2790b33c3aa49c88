// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

import java.util.List;

/**
 * A potting mix put together by volume.
 *
 * @param parts how many of each, above 0
 */
public record Parts(List<Double> parts) {
    /** Loose mix settles: 15 to 20 % more is put together (growers' tables; common practice). The higher, so that it is enough. */
    public static final double SETTLING = 0.2;

    public Parts {
        parts = List.copyOf(parts);
        if (parts.isEmpty() || !parts.stream().allMatch(part -> part > 0)) {
            throw new IllegalArgumentException("parts of " + parts);
        }
    }

    /** How much of each, loose, fills a volume once it has settled; in the unit of the volume. */
    public List<Double> of(double volume) {
        double sum = parts.stream().mapToDouble(Double::doubleValue).sum();
        return parts.stream().map(part -> loose(volume) * part / sum).toList();
    }

    /** How much loose mix fills a volume once it has settled. */
    public static double loose(double volume) {
        return volume * (1 + SETTLING);
    }
}
