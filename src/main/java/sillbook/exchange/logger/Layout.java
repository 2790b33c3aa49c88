// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import java.util.OptionalInt;
import java.util.stream.IntStream;
import sillbook.model.Settings.TemperatureUnit;

/**
 * Where everything stands in a file's lines, as far as it takes to read them.
 *
 * @param firstLine the first that can hold a reading
 * @param joined columns whose figures are cut in two by their own decimal comma, which is the separator too
 * @param offset the column that says how far the clock is from Greenwich
 * @param unit the column that names the unit
 * @param device the column that tells devices apart
 * @param usualUnit of a figure whose line names none
 */
record Layout(
        char separator,
        char decimalSign,
        int firstLine,
        Instants instants,
        int temperature,
        Joined joined,
        OptionalInt offset,
        OptionalInt unit,
        OptionalInt device,
        TemperatureUnit usualUnit) {

    /** How many cells of a line matter, from its beginning. */
    int cellsWanted() {
        if (!joined.isNone()) {
            return Cells.MOST;
        }
        return 1
                + IntStream.of(
                                instants.date(),
                                instants.time(),
                                temperature,
                                offset.orElse(0),
                                unit.orElse(0),
                                device.orElse(0))
                        .max()
                        .orElse(0);
    }
}
