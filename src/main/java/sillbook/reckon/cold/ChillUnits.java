// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.cold;

import java.util.List;

/**
 * Weighted chill units of orchards, to compare with: bands of temperature, each hour worth a half, one, nothing or less than nothing (E. A. Richardson, S. D. Seeley and D. R.
 * Walker, HortScience 9, 1974). In bulbs warmth takes nothing off, so nothing else here rests on them.
 *
 * @param upTo the warm ends of the six bands, in order; above them is a seventh
 */
public record ChillUnits(List<Double> upTo) {
    private static final List<Double> WORTH = List.of(0.0, 0.5, 1.0, 0.5, 0.0, -0.5, -1.0);

    /** By bands in C. */
    public static final ChillUnits CELSIUS = new ChillUnits(List.of(1.4, 2.4, 9.1, 12.4, 15.9, 18.0));

    /** By bands in F: not quite the same. */
    public static final ChillUnits FAHRENHEIT = new ChillUnits(List.of(34.0, 36.0, 48.0, 54.0, 60.0, 65.0));

    public ChillUnits {
        upTo = List.copyOf(upTo);
        if (upTo.size() != WORTH.size() - 1) {
            throw new IllegalArgumentException("bands up to " + upTo);
        }
    }

    /** Of an hour at a temperature in its own degrees. */
    public double at(double degrees) {
        int band = 0;
        while (band < upTo.size() && degrees > upTo.get(band)) {
            band++;
        }
        return WORTH.get(band);
    }
}
