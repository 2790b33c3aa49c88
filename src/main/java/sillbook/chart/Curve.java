// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** How warm it was in each part of an axis; empty where nothing is known: a gap stays a gap. */
public record Curve(List<Optional<Warmth>> parts) {
    /** What a lone reading weighs beside those that stand for a stretch of time: it is there, and hardly counts. */
    private static final double LONE_SECONDS = 1;

    public Curve {
        parts = List.copyOf(parts);
    }

    /** Of days: a part takes the mean of those it holds, each by how much of it is known, and their lowest and highest. */
    public static Curve of(TimeAxis axis, Collection<WarmDay> days) {
        Draft draft = new Draft(axis);
        days.forEach(day -> axis.parts(day.day()).forEach(part -> draft.add(part, day.weight(), day.warmth())));
        return draft.curve();
    }

    /**
     * Of readings: from one to the next the value goes evenly, unless they lie further apart than is bridged.
     *
     * @param samples the first first
     * @param bridged the longest time between two readings over which the line goes on
     */
    public static Curve of(TimeAxis axis, List<Sample> samples, Duration bridged) {
        Draft draft = new Draft(axis);
        for (int i = 0; i < samples.size(); i++) {
            Sample sample = samples.get(i);
            axis.part(sample.at()).ifPresent(part -> draft.add(part, LONE_SECONDS, Warmth.steady(sample.value())));
            if (i > 0 && Duration.between(samples.get(i - 1).at(), sample.at()).compareTo(bridged) <= 0) {
                draft.join(samples.get(i - 1), sample);
            }
        }
        return draft.curve();
    }

    /** A curve while it is added up. */
    private static final class Draft {
        private final TimeAxis axis;
        private final double[] weights;
        private final double[] sums;
        private final double[] lowest;
        private final double[] highest;

        Draft(TimeAxis axis) {
            this.axis = axis;
            weights = new double[axis.count()];
            sums = new double[axis.count()];
            lowest = new double[axis.count()];
            highest = new double[axis.count()];
        }

        void add(int part, double weight, Warmth warmth) {
            boolean isFirst = weights[part] == 0;
            lowest[part] = isFirst ? warmth.lowest() : Math.min(lowest[part], warmth.lowest());
            highest[part] = isFirst ? warmth.highest() : Math.max(highest[part], warmth.highest());
            weights[part] += weight;
            sums[part] += weight * warmth.mean();
        }

        void join(Sample one, Sample next) {
            axis.parts(one.at(), next.at()).forEach(part -> {
                double from = value(one, next, later(one.at(), axis.from(part)));
                double to = value(one, next, earlier(next.at(), axis.to(part)));
                double seconds = seconds(later(one.at(), axis.from(part)), earlier(next.at(), axis.to(part)));
                add(part, seconds, new Warmth((from + to) / 2, Math.min(from, to), Math.max(from, to)));
            });
        }

        private static double value(Sample one, Sample next, Instant at) {
            double share = seconds(one.at(), at) / seconds(one.at(), next.at());
            return one.value() + share * (next.value() - one.value());
        }

        private static double seconds(Instant from, Instant to) {
            return Duration.between(from, to).toMillis() / 1000.0;
        }

        private static Instant later(Instant one, Instant other) {
            return one.isAfter(other) ? one : other;
        }

        private static Instant earlier(Instant one, Instant other) {
            return one.isBefore(other) ? one : other;
        }

        Curve curve() {
            return new Curve(
                    IntStream.range(0, weights.length).mapToObj(this::warmth).toList());
        }

        /** The mean is kept between lowest and highest, which the rounding of sums can leave by a hair. */
        private Optional<Warmth> warmth(int part) {
            if (weights[part] == 0) {
                return Optional.empty();
            }
            double mean = Math.max(lowest[part], Math.min(highest[part], sums[part] / weights[part]));
            return Optional.of(new Warmth(mean, lowest[part], highest[part]));
        }
    }

    /** This curve, and where nothing of it is known the other. */
    public Curve filledBy(Curve other) {
        return new Curve(IntStream.range(0, parts.size())
                .mapToObj(part -> parts.get(part).or(() -> other.parts.get(part)))
                .toList());
    }

    public Curve in(DoubleUnaryOperator unit) {
        return new Curve(
                parts.stream().map(part -> part.map(warmth -> warmth.in(unit))).toList());
    }

    public boolean isEmpty() {
        return parts.stream().allMatch(Optional::isEmpty);
    }

    /** What is known, from the first part to the last. */
    public Stream<Warmth> known() {
        return parts.stream().flatMap(Optional::stream);
    }
}
