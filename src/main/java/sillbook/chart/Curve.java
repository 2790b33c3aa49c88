// SPDX-License-Identifier: Apache-2.0
package sillbook.chart;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** How warm it was in each part of an axis; empty where nothing is known: a gap stays a gap. */
public record Curve(List<Optional<Warmth>> parts) {
    public Curve {
        parts = List.copyOf(parts);
    }

    /** Of days: a part takes the mean of those it holds, each by how much of it is known, and their lowest and highest. */
    public static Curve of(TimeAxis axis, Collection<WarmDay> days) {
        Draft draft = new Draft(axis);
        days.forEach(day -> axis.parts(day.day()).forEach(part -> draft.add(part, day.weight(), day.warmth())));
        return draft.curve();
    }

    /** A curve while it is added up. */
    private static final class Draft {
        private final double[] weights;
        private final double[] sums;
        private final double[] lowest;
        private final double[] highest;

        Draft(TimeAxis axis) {
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

    public boolean isEmpty() {
        return parts.stream().allMatch(Optional::isEmpty);
    }

    /** What is known, from the first part to the last. */
    public Stream<Warmth> known() {
        return parts.stream().flatMap(Optional::stream);
    }
}
