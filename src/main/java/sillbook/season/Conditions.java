// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is known of the conditions a plant grew under, or will; each as exactly as it can be known. */
public record Conditions(Map<Condition, Double> values) {
    static final Conditions UNKNOWN = new Conditions(Map.of());

    public Conditions {
        values = Map.copyOf(values);
    }

    static Conditions of(Optional<Double> weeksOfCold, Optional<Double> celsius, Optional<Double> months) {
        Map<Condition, Double> values = new EnumMap<>(Condition.class);
        weeksOfCold.ifPresent(weeks -> values.put(Condition.COLD, Condition.COLD.rounded(weeks)));
        celsius.ifPresent(degrees -> values.put(Condition.ROOM, Condition.ROOM.rounded(degrees)));
        months.ifPresent(since -> values.put(Condition.SEASON, Condition.SEASON.rounded(since)));
        return new Conditions(values);
    }

    public Optional<Double> find(Condition condition) {
        return Optional.ofNullable(values.get(condition));
    }

    /** The mean of each, of those of which it is known. */
    static Conditions mean(Collection<Conditions> several) {
        Map<Condition, Double> means = new EnumMap<>(Condition.class);
        for (Condition condition : Condition.values()) {
            OptionalDouble mean = several.stream()
                    .flatMap(one -> one.find(condition).stream())
                    .mapToDouble(Double::doubleValue)
                    .average();
            mean.ifPresent(value -> means.put(condition, value));
        }
        return new Conditions(means);
    }
}
