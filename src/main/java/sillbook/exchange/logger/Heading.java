// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange.logger;

import static java.util.stream.Collectors.joining;

import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.words.Groups;

/** What the name of a column says, or a line before the readings. The words are those of many makers' files. */
final class Heading {
    private static final Pattern INSTANT = Pattern.compile("date|time|stamp|day|when|moment|instant|clock|datum|zeit");
    private static final Pattern TEMPERATURE = Pattern.compile("temp|celsius|fahrenheit|\\bt\\d?\\b");

    /** Worked out from a temperature, or a bound that was set. */
    private static final Pattern DERIVED = Pattern.compile("dew|alarm|heat|hum|limit");

    private static final Pattern OTHER =
            Pattern.compile("\\brh\\b|%|press|pa\\b|bar\\b|batt|volt|\\bv\\b|lux|light|wind|rain|co2|rssi|signal|index"
                    + "|\\bno\\b|number|record|count|#|\\bid\\b|serial|moist|offset|zone|unit");
    private static final Pattern DEVICE =
            Pattern.compile("device|serial|sensor|probe|logger|channel|station|\\bbox\\b|\\bid\\b|\\bname\\b");
    private static final Pattern UNITS = Pattern.compile("\\bunits?\\b");
    private static final Pattern CLOCK = Pattern.compile("zone|offset|clock|times?\\b");
    private static final Pattern OFFSET = Pattern.compile("offset|zone|\\btz\\b");
    private static final Pattern IN_BRACKETS = Pattern.compile("\\([^)]*\\)");
    /** With some sign of a degree before it, in brackets, a capital of its own, or behind the word; never the end of "of". */
    private static final Pattern UNIT =
            Pattern.compile(".*?(?:(?<![A-Za-z])(?:[^\\x00-\\x7F]{1,3}\\s?|[Dd]eg(?:rees?)?\\.?\\s?)([CFcf])"
                    + "|(?<![A-Za-z])o([CF])|[(\\[]([cf])(?=[)\\]])|(?<![A-Za-z])([CF])|[Tt]emp(?:erature)?[ _]?([CFcf])"
                    + "|([Cc])elsius|([Ff])ahrenheit)(?![A-Za-z0-9]).*");

    private static final Pattern ZONE =
            Pattern.compile(".*?\\b(?:utc|gmt)\\s*(?:([+\\-\\u2212])\\s*(\\d{1,2}):?(\\d{2})?)?(?![a-z0-9]).*");
    private static final int UNIT_GROUPS = 7;
    private static final int LAST_OFFSET_MINUTE = 18 * 60;

    private Heading() {}

    private static boolean says(Pattern pattern, String name) {
        return pattern.matcher(small(name)).find();
    }

    private static String small(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Without what stands in brackets: {@code Temp (sensor 3)} is no name of a sensor. */
    private static String bare(String name) {
        return IN_BRACKETS.matcher(small(name)).replaceAll(" ");
    }

    static boolean isInstant(String name) {
        return says(INSTANT, name);
    }

    static boolean isTemperature(String name) {
        return !isOther(name) && (says(TEMPERATURE, name) || unit(name).isPresent());
    }

    /** Whether it names another quantity than a temperature of the place. */
    static boolean isOther(String name) {
        return says(DERIVED, bare(name)) || (says(OTHER, bare(name)) && !says(TEMPERATURE, bare(name)));
    }

    static boolean isDevice(String name) {
        return says(DEVICE, bare(name)) && !isTemperature(name);
    }

    static boolean isOffset(String name) {
        return says(OFFSET, name);
    }

    /** Whether a line speaks of the unit of temperatures: {@code Temperature unit: C}. */
    static boolean isOfUnit(String saying) {
        return says(UNITS, saying);
    }

    /** Whether a line speaks of the clock's zone: {@code Time zone: GMT+01:00}. */
    static boolean isOfClock(String saying) {
        return says(CLOCK, saying);
    }

    /** The unit it names. */
    static Optional<TemperatureUnit> unit(String name) {
        return Groups.of(UNIT, name).map(said -> {
            String letter =
                    IntStream.rangeClosed(1, UNIT_GROUPS).mapToObj(said::text).collect(joining());
            return letter.equalsIgnoreCase("f") ? TemperatureUnit.FAHRENHEIT : TemperatureUnit.CELSIUS;
        });
    }

    /** The zone it names, by its distance from Greenwich: {@code Date Time, GMT-06:00}. */
    static Optional<ZoneOffset> zone(String name) {
        return Groups.of(ZONE, small(name)).flatMap(Heading::offset);
    }

    private static Optional<ZoneOffset> offset(Groups said) {
        if (!said.has(2)) {
            return Optional.of(ZoneOffset.UTC);
        }
        int minutes = said.number(2) * 60 + (said.has(3) ? said.number(3) : 0);
        return minutes > LAST_OFFSET_MINUTE
                ? Optional.empty()
                : Optional.of(
                        ZoneOffset.ofTotalSeconds(minutes * 60 * (said.text(1).equals("+") ? 1 : -1)));
    }
}
