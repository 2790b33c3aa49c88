// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

/** From where to where something is, with a chance that is said beside it. */
public record Interval(double low, double high) {
    public Interval {
        if (!(low <= high)) {
            throw new IllegalArgumentException("an interval from " + low + " to " + high);
        }
    }

    public boolean contains(double value) {
        return low <= value && value <= high;
    }
}
