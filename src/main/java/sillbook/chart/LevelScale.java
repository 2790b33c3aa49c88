// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * A scale for lines drawn in rows of four heights each. The tick of a row is the value at its highest level.
 *
 * @param lowestTick the tick of the bottom row
 * @param tickStep from one row's tick to the next above
 */
public record LevelScale(double lowestTick, double tickStep, int rows) {
    public static final int LEVELS_A_ROW = 4;

    /** Ticks are written to the tenth. */
    private static final double FINEST = 0.1;

    private static final double WHOLE_FROM = 1;
    private static final double WHOLE_TO = 5;

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

    /** The finest scale with round ticks, a tenth at the least, that holds both values in so many rows; from 1 to 5 every whole number is round enough. */
    public static LevelScale covering(double low, double high, int rows) {
        double step = Math.max(FINEST, step((high - low) / rows));
        Optional<LevelScale> found = holding(low, high, step, rows);
        while (found.isEmpty()) {
            step = step < WHOLE_FROM || step >= WHOLE_TO ? Ticks.nextRoundStep(step) : step + 1;
            found = holding(low, high, step, rows);
        }
        return found.get();
    }

    private static double step(double atLeast) {
        double round = Ticks.roundStep(atLeast);
        return round > WHOLE_FROM && round <= WHOLE_TO ? Math.ceil(atLeast) : round;
    }

    /** With its lowest tick at or above the low value, which is under it then, or else with the next lower one. */
    private static Optional<LevelScale> holding(double low, double high, double step, int rows) {
        double above = Math.ceil(low / step);
        return Stream.of(above, above - 1)
                .map(tick -> new LevelScale(tick * step + 0.0, step, rows))
                .filter(scale -> scale.at(low).isPresent() && scale.at(high).isPresent())
                .findFirst();
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
