// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * Scores and what they were made under, boiled down to a table of counts and sums: a column for each level of each
 * factor, one for the mean, one for the score (taken from the plain mean, so that little is lost where the sums are
 * taken off each other). The factor with the most levels has the first columns: they meet in no record, and a table
 * that begins with empty cells is quickly taken apart.
 */
public final class Design {
    private final List<Factor> factors;
    private final List<Nested> nested;
    private final double[][] products;
    private final int records;
    private final double centre;

    private Design(List<Factor> factors, List<Nested> nested, double[][] products, int records, double centre) {
        this.factors = List.copyOf(factors);
        this.nested = List.copyOf(nested);
        this.products = products;
        this.records = records;
        this.centre = centre;
    }

    /** Takes a factor as nested wherever each of its levels happens to be in one level of another that has fewer. */
    public static Design of(List<String> factors, List<Observation> observations) {
        Design bare = of(factors, observations, List.of());
        return new Design(bare.factors, new Nesting(bare).found(), bare.products, observations.size(), bare.centre);
    }

    /**
     * Takes as nested only what is said to be.
     *
     * @param nested the factors that are nested by nature; what only happens to be is not taken for it
     * @throws IllegalArgumentException with fewer than two records, a record with too few levels, two factors of one
     *     name, or a factor said to be nested that is not
     */
    public static Design of(List<String> factors, List<Observation> observations, List<Nested> nested) {
        if (observations.size() < 2) {
            throw new IllegalArgumentException("effects need two records at least");
        }
        if (factors.stream().distinct().count() < factors.size()) {
            throw new IllegalArgumentException("two factors have one name");
        }
        List<Map<String, Integer>> levels = levels(factors, observations);
        List<Factor> laid = lay(factors, levels);
        double centre =
                observations.stream().mapToDouble(Observation::score).average().orElseThrow();
        Design design =
                new Design(laid, nested, products(laid, levels, observations, centre), observations.size(), centre);
        new Nesting(design).check();
        return design;
    }

    private static List<Map<String, Integer>> levels(List<String> factors, List<Observation> observations) {
        List<Map<String, Integer>> levels = new ArrayList<>();
        factors.forEach(factor -> levels.add(new LinkedHashMap<>()));
        for (Observation observation : observations) {
            if (observation.levels().size() != factors.size()) {
                throw new IllegalArgumentException("a record must have a level of each factor");
            }
            for (int f = 0; f < factors.size(); f++) {
                Map<String, Integer> known = levels.get(f);
                known.putIfAbsent(observation.levels().get(f), known.size());
            }
        }
        return levels;
    }

    private static List<Factor> lay(List<String> names, List<Map<String, Integer>> levels) {
        List<Integer> bySize = IntStream.range(0, names.size())
                .boxed()
                .sorted(Comparator.comparingInt(f -> -levels.get(f).size()))
                .toList();
        int[] firsts = new int[names.size()];
        int next = 0;
        for (int f : bySize) {
            firsts[f] = next;
            next += levels.get(f).size();
        }
        return IntStream.range(0, names.size())
                .mapToObj(
                        f -> new Factor(names.get(f), List.copyOf(levels.get(f).keySet()), firsts[f]))
                .toList();
    }

    private static double[][] products(
            List<Factor> factors, List<Map<String, Integer>> levels, List<Observation> observations, double centre) {
        int mean = levels.stream().mapToInt(Map::size).sum();
        double[][] products = new double[mean + 2][mean + 2];
        int[] columns = new int[factors.size() + 1];
        columns[factors.size()] = mean;
        for (Observation observation : observations) {
            for (int f = 0; f < factors.size(); f++) {
                columns[f] = factors.get(f)
                        .column(Objects.requireNonNull(
                                levels.get(f).get(observation.levels().get(f))));
            }
            add(products, columns, observation.weight(), observation.score() - centre);
        }
        return products;
    }

    private static void add(double[][] products, int[] columns, double weight, double score) {
        int last = products.length - 1;
        for (int row : columns) {
            for (int column : columns) {
                products[row][column] += weight;
            }
            products[row][last] += weight * score;
            products[last][row] += weight * score;
        }
        products[last][last] += weight * score * score;
    }

    public List<String> factors() {
        return factors.stream().map(Factor::name).toList();
    }

    /** In the order they first occur in the records. */
    public List<String> levels(String factor) {
        return factor(factor).levels();
    }

    public List<Nested> nested() {
        return nested;
    }

    public int records() {
        return records;
    }

    List<Factor> layout() {
        return factors;
    }

    Factor factor(String name) {
        return factors.stream()
                .filter(factor -> factor.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no factor " + name));
    }

    double[][] products() {
        return Arrays.stream(products).map(double[]::clone).toArray(double[][]::new);
    }

    /** Weight of the records that have both. */
    double together(int column, int other) {
        return products[column][other];
    }

    int mean() {
        return products.length - 2;
    }

    int score() {
        return products.length - 1;
    }

    /** What was taken off every score. */
    double centre() {
        return centre;
    }
}
