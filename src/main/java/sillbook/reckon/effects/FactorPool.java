// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.effects;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The levels of one factor while sets of variances are added up. */
final class FactorPool {
    private static final double CHANCE = 0.8;

    private final Design design;
    private final Factor factor;
    private final List<int[]> columns;
    private final Blend[] effects;
    private final Blend[] scores;
    private final Margin[][] margins;
    private double sd;
    private double weight;

    FactorPool(Design design, Factor factor) {
        this.design = design;
        this.factor = factor;
        int levels = factor.levels().size();
        Nesting nesting = new Nesting(design);
        columns = IntStream.range(0, levels)
                .mapToObj(level -> nesting.columns(factor, level))
                .toList();
        effects = blends(levels);
        scores = blends(levels);
        margins = new Margin[levels][];
        for (int a = 0; a < levels; a++) {
            margins[a] =
                    IntStream.range(a + 1, levels).mapToObj(b -> new Margin()).toArray(Margin[]::new);
        }
    }

    private static Blend[] blends(int levels) {
        return IntStream.range(0, levels).mapToObj(level -> new Blend()).toArray(Blend[]::new);
    }

    void add(double share, double factorSd, Equations equations, Combination[] solved, double variance) {
        weight += share;
        sd += share * factorSd;
        List<Combination> whole = new ArrayList<>();
        for (int level = 0; level < effects.length; level++) {
            effects[level].add(
                    share,
                    equations.value(solved[factor.column(level)]),
                    Math.sqrt(variance * solved[factor.column(level)].squaredLength()));
            Combination sum = sum(solved, columns.get(level));
            whole.add(sum);
            Combination score = sum.plus(solved[design.mean()]);
            scores[level].add(share, equations.value(score), Math.sqrt(variance * score.squaredLength()));
        }
        addMargins(share, whole, equations, variance);
    }

    private static Combination sum(Combination[] solved, int... columns) {
        Combination sum = solved[columns[0]];
        for (int i = 1; i < columns.length; i++) {
            sum = sum.plus(solved[columns[i]]);
        }
        return sum;
    }

    private void addMargins(double share, List<Combination> whole, Equations equations, double variance) {
        double[] values = whole.stream().mapToDouble(equations::value).toArray();
        for (int a = 0; a < margins.length; a++) {
            for (int i = 0; i < margins[a].length; i++) {
                int b = a + 1 + i;
                margins[a][i].add(
                        share, values[a] - values[b], variance * whole.get(a).squaredDistance(whole.get(b)));
            }
        }
    }

    FactorEffects effects() {
        List<LevelEffect> levels =
                IntStream.range(0, effects.length).mapToObj(this::level).toList();
        List<Difference> differences = new ArrayList<>();
        for (int a = 0; a < margins.length; a++) {
            for (int i = 0; i < margins[a].length; i++) {
                differences.add(margins[a][i].between(
                        factor.levels().get(a), factor.levels().get(a + 1 + i)));
            }
        }
        return new FactorEffects(factor.name(), sd / weight, levels, differences);
    }

    private LevelEffect level(int level) {
        int own = factor.column(level);
        return new LevelEffect(
                factor.levels().get(level),
                design.together(own, own),
                effects[level].estimate(0),
                scores[level].estimate(design.centre()),
                scores[level].interval(CHANCE, design.centre()));
    }
}
