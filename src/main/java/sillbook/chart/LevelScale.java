// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import java.util.Optional;

/**
 * A scale for lines drawn in rows of four heights each. The tick of a row is the value at its highest level.
 *
 * @param lowestTick the tick of the bottom row
 * @param tickStep from one row's tick to the next above
 */
public record LevelScale(double lowestTick, double tickStep, int rows) {
    public static final int LEVELS_A_ROW = 4;

    public LevelScale {
        if (!(tickStep > 0) || rows < 1 || !Double.isFinite(lowestTick) || !Double.isFinite(tickStep)) {
            throw new IllegalArgumentException(
                    "no scale from " + lowestTick + " by " + tickStep + " in " + rows + " rows");
        }
    }

    /**
     * Where a value stands.
     *
     * @param row from the top, counted from 0
     * @param level within the row, from 0, the lowest, to 3
     */
    public record Place(int row, int level) {}

    /** The finest scale with round ticks that holds both values in so many rows. */
    public static LevelScale covering(double low, double high, int rows) {
        double step = Ticks.roundStep((high - low) / Math.max(1, rows - 1));
        LevelScale scale = starting(low, step, rows);
        while (scale.at(low).isEmpty() || scale.at(high).isEmpty()) {
            step = Ticks.nextRoundStep(step);
            scale = starting(low, step, rows);
        }
        return scale;
    }

    private static LevelScale starting(double low, double step, int rows) {
        return new LevelScale(Math.ceil(low / step) * step, step, rows);
    }

    /** The nearest level to a value, or empty beyond the scale. */
    public Optional<Place> at(double value) {
        if (Double.isNaN(value)) {
            throw new IllegalArgumentException("no value to place");
        }
        long level = Math.round((value - lowestTick) / levelStep()) + LEVELS_A_ROW - 1;
        if (level < 0 || level >= (long) rows * LEVELS_A_ROW) {
            return Optional.empty();
        }
        int fromBottom = (int) level / LEVELS_A_ROW;
        return Optional.of(new Place(rows - 1 - fromBottom, (int) level % LEVELS_A_ROW));
    }

    /** The value at the highest level of a row, counted from the top. */
    public double tick(int row) {
        return lowestTick + (rows - 1 - row) * tickStep;
    }

    private double levelStep() {
        return tickStep / LEVELS_A_ROW;
    }
}
