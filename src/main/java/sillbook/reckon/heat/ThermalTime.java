// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.heat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;

/**
 * So many degree-days above a base until something happens, as until a pot brought out flowers.
 *
 * @param base in C
 * @param need in degree-days, above 0
 */
public record ThermalTime(double base, double need) {
    /**
     * 40 F, of garden tulips in a school's phenology programme (Journey North): the only published figure found; that it holds for pots is a judgement of ours.
     */
    public static final double TULIP_BASE = 4.4;

    public ThermalTime {
        if (!(need > 0)) {
            throw new IllegalArgumentException("a need of " + need + " degree-days");
        }
    }

    /**
     * The day a sum is reached.
     *
     * @param sum at the end of that day
     * @param share of that day, by which it was reached
     */
    public record Met(LocalDate day, double sum, double share) {}

    /** How long something took in a room. */
    public record Took(double days, double celsius) {}

    /** In a room that is always the same; empty where that is no warmer than the base. */
    public Optional<Double> daysAt(double celsius) {
        return celsius > base ? Optional.of(need / (celsius - base)) : Optional.empty();
    }

    /** What is still needed after some days at a temperature; empty where it is reached before. */
    public Optional<ThermalTime> after(double days, double celsius) {
        double left = need - days * Math.max(0, celsius - base);
        return left > 0 ? Optional.of(new ThermalTime(base, left)) : Optional.empty();
    }

    /**
     * Counted from a day on; empty where the days do not reach it.
     *
     * @param days how many degree-days above the base each adds; days that are not there add nothing
     */
    public Optional<Met> met(NavigableMap<LocalDate, Double> days, LocalDate from) {
        double sum = 0;
        for (Map.Entry<LocalDate, Double> day : days.tailMap(from, true).entrySet()) {
            double added = day.getValue();
            if (sum + added >= need) {
                return Optional.of(new Met(day.getKey(), sum + added, (need - sum) / added));
            }
            sum += added;
        }
        return Optional.empty();
    }

    /**
     * Base and need by which the speed, one over the days, grows with the temperature in a straight line through some records (least squares).
     *
     * @return empty where the records lie at one temperature, or where warmth makes nothing faster
     */
    public static Optional<ThermalTime> fitted(List<Took> records) {
        double meanAt = records.stream().mapToDouble(Took::celsius).average().orElse(0);
        double meanSpeed =
                records.stream().mapToDouble(took -> 1 / took.days()).average().orElse(0);
        double across = 0;
        double along = 0;
        for (Took took : records) {
            across += (took.celsius() - meanAt) * (1 / took.days() - meanSpeed);
            along += (took.celsius() - meanAt) * (took.celsius() - meanAt);
        }
        double slope = across / along;
        return along > 0 && slope > 0
                ? Optional.of(new ThermalTime(meanAt - meanSpeed / slope, 1 / slope))
                : Optional.empty();
    }
}
