// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.stages;

import java.util.List;

/**
 * What own lengths come to.
 *
 * @param count how many there are
 * @param mean days; 0 of none
 * @param squares the sum of the squared distances from the mean, at least 0
 */
public record Sample(int count, double mean, double squares) {
    public static final Sample NONE = new Sample(0, 0, 0);

    public Sample {
        if (count < 0 || !Double.isFinite(mean) || !(squares >= 0 && squares < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("no sample: " + count + ", " + mean + ", " + squares);
        }
    }

    /**
     * The sample of these days.
     *
     * @throws IllegalArgumentException when one of them is no number
     */
    public static Sample of(List<Double> days) {
        if (days.isEmpty()) {
            return NONE;
        }
        double mean = days.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double squares =
                days.stream().mapToDouble(day -> (day - mean) * (day - mean)).sum();
        return new Sample(days.size(), mean, squares);
    }

    /** The rest, when one of its days is left out. */
    Sample without(double day) {
        if (count <= 1) {
            return NONE;
        }
        double off = day - mean;
        double left = squares - off * off * count / (count - 1);
        return new Sample(count - 1, mean - off / (count - 1), Math.max(0, left));
    }
}
