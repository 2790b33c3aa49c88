// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.soil;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/**
 * Mean temperatures of the months of whole years, and the waves through them by least squares, each month standing for its middle. Over whole years the waves do not
 * depend on each other, so each is a sum by itself.
 *
 * @param months in C, from January on
 */
public record MonthlyMeans(List<Double> months) {
    private static final int MONTHS = 12;

    public MonthlyMeans {
        months = List.copyOf(months);
        if (months.isEmpty() || months.size() % MONTHS != 0) {
            throw new IllegalArgumentException(months.size() + " months are no whole years");
        }
    }

    /** One wave of so many a year: what is beside its sine and its cosine. */
    public record Harmonic(double sine, double cosine) {
        public double amplitude() {
            return Math.hypot(sine, cosine);
        }
    }

    public double mean() {
        return months.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    }

    /** The wave that swings so many times a year. */
    public Harmonic harmonic(int times) {
        return new Harmonic(beside(angle -> Math.sin(times * angle)), beside(angle -> Math.cos(times * angle)));
    }

    private double beside(DoubleUnaryOperator of) {
        double sum = IntStream.range(0, months.size())
                .mapToDouble(month -> months.get(month) * of.applyAsDouble(angle(month)))
                .sum();
        return 2 * sum / months.size();
    }

    private static double angle(int month) {
        return 2 * Math.PI * (month + 0.5) / MONTHS;
    }

    /** The wave once a year. */
    public YearlyWave wave() {
        Harmonic once = harmonic(1);
        double coldest = Math.atan2(-once.sine(), -once.cosine()) / (2 * Math.PI) * YearlyWave.YEAR;
        return new YearlyWave(mean(), once.amplitude(), coldest);
    }

    /** How far the months scatter about the first waves, as a standard deviation. */
    public double residualSd(int harmonics) {
        return Math.sqrt(left(harmonics) / (months.size() - 1 - 2.0 * harmonics));
    }

    /** The share of all scatter that the first waves explain. */
    public double explained(int harmonics) {
        return 1 - left(harmonics) / left(0);
    }

    /** The sum of squares that the first waves leave. */
    double left(int harmonics) {
        double mean = mean();
        List<Harmonic> waves =
                IntStream.rangeClosed(1, harmonics).mapToObj(this::harmonic).toList();
        double sum = 0;
        for (int month = 0; month < months.size(); month++) {
            double fitted = mean;
            for (int i = 0; i < waves.size(); i++) {
                double angle = (i + 1) * angle(month);
                fitted += waves.get(i).sine() * Math.sin(angle) + waves.get(i).cosine() * Math.cos(angle);
            }
            sum += (months.get(month) - fitted) * (months.get(month) - fitted);
        }
        return sum;
    }
}
