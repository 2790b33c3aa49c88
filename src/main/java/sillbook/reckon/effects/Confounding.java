// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What a design cannot tell apart, found before any score is looked at.
 *
 * @param columns levels of all factors, and the mean
 * @param rank how many of the columns say something that the others do not
 * @param factors those with differences that cannot be told from other factors'; a nested factor counts together with
 *     what it belongs to
 */
public record Confounding(int columns, int rank, List<Confounded> factors) {
    private static final double FINENESS = 1e6;

    public Confounding {
        factors = List.copyOf(factors);
    }

    public static Confounding of(Design design) {
        Map<Factor, List<List<String>>> split = new LinkedHashMap<>();
        for (Factor factor : design.layout()) {
            List<List<String>> groups = groups(design, factor);
            if (groups.size() > 1) {
                split.put(factor, groups);
            }
        }
        List<Confounded> found = new ArrayList<>();
        split.forEach((factor, groups) -> found.add(new Confounded(
                factor.name(),
                groups,
                split.keySet().stream()
                        .filter(other -> !other.equals(factor) && !areKin(design, factor, other))
                        .map(Factor::name)
                        .toList())));
        return new Confounding(design.mean() + 1, Aliasing.of(design).rank(), found);
    }

    private static boolean areKin(Design design, Factor one, Factor other) {
        return design.nested().contains(new Nested(one.name(), other.name()))
                || design.nested().contains(new Nested(other.name(), one.name()));
    }

    /** Levels of the factor that can be told apart from each other, together. */
    private static List<List<String>> groups(Design design, Factor factor) {
        List<Integer> columns = columnsBeside(design, factor);
        Aliasing aliasing = Aliasing.of(design, columns);
        Nesting nesting = new Nesting(design);
        Map<List<Long>, List<String>> groups = new LinkedHashMap<>();
        for (int level = 0; level < factor.levels().size(); level++) {
            List<Integer> whole = Arrays.stream(nesting.columns(factor, level))
                    .mapToObj(columns::indexOf)
                    .toList();
            List<Long> key = Arrays.stream(aliasing.part(whole))
                    .mapToObj(part -> Math.round(part * FINENESS))
                    .toList();
            groups.computeIfAbsent(key, any -> new ArrayList<>())
                    .add(factor.levels().get(level));
        }
        return List.copyOf(groups.values());
    }

    /** All columns but those of what is nested in the factor: that is part of it. */
    private static List<Integer> columnsBeside(Design design, Factor factor) {
        List<Integer> columns = new ArrayList<>();
        for (Factor each : design.layout()) {
            if (!design.nested().contains(new Nested(each.name(), factor.name()))) {
                IntStream.range(0, each.levels().size()).map(each::column).forEach(columns::add);
            }
        }
        columns.add(design.mean());
        return columns;
    }
}
