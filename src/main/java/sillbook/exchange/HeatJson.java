// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.Optional;
import sillbook.reckon.heat.ThermalTime;
import sillbook.words.Provisos;

/** The day a sum of degree-days is reached, as JSON. */
public final class HeatJson {
    private HeatJson() {}

    /**
     * The document of {@code sillbook reckon heat --json}; the day and what it has are unknown where the sum is not reached.
     *
     * @param unaccounted hours of which nothing is known
     */
    public static String write(Optional<ThermalTime.Met> met, double unaccounted, Provisos provisos) {
        Fields fields = new Fields()
                .day("day", met.map(ThermalTime.Met::day))
                .decimal("sum", met.map(ThermalTime.Met::sum))
                .decimal("share", met.map(ThermalTime.Met::share))
                .number("unaccountedHours", unaccounted);
        return Answer.write(fields, provisos);
    }
}
