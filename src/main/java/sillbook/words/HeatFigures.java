// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.reckon.heat.ThermalTime;

/** When a sum of degree-days is reached, in plain lines. */
public final class HeatFigures {
    private HeatFigures() {}

    /**
     * A fact a line.
     *
     * @param unaccounted hours of which nothing is known
     */
    public static List<String> lines(ThermalTime time, Optional<ThermalTime.Met> met, double unaccounted) {
        List<String> lines = new ArrayList<>(lines(time, met));
        if (unaccounted > 0) {
            lines.add("not accounted for: " + Decimal.sayFixed(unaccounted, 2) + " hours");
        }
        return lines;
    }

    private static List<String> lines(ThermalTime time, Optional<ThermalTime.Met> met) {
        String need = Decimal.say(time.need(), 1) + " degree-days above " + Decimal.say(time.base(), 1) + " C";
        return met.map(day -> List.of(
                        need + " reached on " + Days.full(day.day()),
                        "sum at the end of that day: " + Decimal.sayFixed(day.sum(), 2),
                        "share of that day: " + Decimal.sayFixed(day.share(), 2)))
                .orElse(List.of(need + " not reached"));
    }
}
