// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.stages;

/** The triangle over two ends, highest at a point between or on them. */
record Triangular(double low, double top, double high) implements Distribution {

    @Override
    public double mean() {
        return (low + top + high) / 3;
    }

    @Override
    public double variance() {
        double rise = top - low;
        double fall = high - top;
        return (rise * rise + rise * fall + fall * fall) / 18;
    }

    @Override
    public double cumulative(double days) {
        if (days <= low || days >= high) {
            return days <= low ? 0 : 1;
        }
        double width = high - low;
        return days <= top
                ? (days - low) * (days - low) / (width * (top - low))
                : 1 - (high - days) * (high - days) / (width * (high - top));
    }

    @Override
    public double quantile(double chance) {
        double width = high - low;
        boolean isOnTheRise = Distribution.checked(chance) * width <= top - low;
        return isOnTheRise
                ? low + Math.sqrt(chance * width * (top - low))
                : high - Math.sqrt((1 - chance) * width * (high - top));
    }
}
