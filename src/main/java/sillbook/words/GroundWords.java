// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.stream.Collectors;
import sillbook.model.Journal;
import sillbook.model.Settings;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.model.Trench;
import sillbook.model.Trench.Air;
import sillbook.model.Trench.Means;
import sillbook.model.Trench.Read;

/** How pots stand buried, as it was written down. */
public record GroundWords(Journal journal) {
    private static final double FAHRENHEIT = 1.8;

    /** {@code 25 cm deep in garden soil, under straw 10 cm; months from Jan: -2 -1 3 8 13 17 19 18 14 9 3 -1 C}. */
    public String say(Trench trench) {
        Settings settings = journal.settings();
        String deep =
                Lengths.say(trench.depth(), settings.lengths()) + " deep in " + GroundTerms.SOILS.say(trench.soil());
        String under = trench.cover()
                .map(cover -> ", under " + Covers.say(cover, settings.lengths()))
                .orElse(", bare");
        return deep + under + "; " + air(trench.air());
    }

    /** {@code air as read at the garden}, or the months. */
    public String air(Air air) {
        return air.fold(new SayingAir());
    }

    /** A spread of temperatures, {@code 3 C}: a difference, so in Fahrenheit it is only scaled. */
    public static String spread(double celsius, TemperatureUnit unit) {
        double shown = unit == TemperatureUnit.FAHRENHEIT ? celsius * FAHRENHEIT : celsius;
        return Decimal.say(shown, 1) + " " + Temperatures.unit(unit);
    }

    /** The twelve figures as they are typed, with their unit; empty where a thermometer is gone by. */
    public static String months(Air air, TemperatureUnit unit) {
        return air.fold(new ListingMonths(unit));
    }

    private final class SayingAir implements Air.Cases<String> {
        @Override
        public String means(Means air) {
            return "months from Jan: " + months(air, journal.settings().temperatures());
        }

        @Override
        public String read(Read air) {
            return "air as read at the " + journal.places().get(air.outdoors()).name();
        }
    }

    private record ListingMonths(TemperatureUnit unit) implements Air.Cases<String> {
        @Override
        public String means(Means air) {
            return air.months().stream()
                    .map(mean -> Temperatures.number(mean, unit))
                    .collect(Collectors.joining(" ", "", " " + Temperatures.unit(unit)));
        }

        @Override
        public String read(Read air) {
            return "";
        }
    }
}
