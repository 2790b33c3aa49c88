// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

/** The temperatures between which a place usually stays. */
public record Band(Temperature low, Temperature high) {
    public Band {
        if (low.milli() > high.milli()) {
            throw new IllegalArgumentException("the low end of a band lies above its high end");
        }
    }

    public static Band ofCelsius(double low, double high) {
        return new Band(Temperature.ofCelsius(low), Temperature.ofCelsius(high));
    }
}
