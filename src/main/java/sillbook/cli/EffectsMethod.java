// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.reckon.effects.Averaging;
import sillbook.reckon.effects.Design;
import sillbook.reckon.effects.Effects;
import sillbook.reckon.effects.Observation;
import sillbook.reckon.effects.Prior;
import sillbook.reckon.effects.Reml;
import sillbook.words.Counts;
import sillbook.words.EffectWords;
import sillbook.words.Provisos;
import sillbook.words.Warned;

/** How effects are worked out, and what must be so that they can be. */
enum EffectsMethod {
    REML {
        @Override
        Optional<Effects> reckon(Design design) {
            return Reml.fit(design);
        }

        @Override
        List<String> assumed() {
            return List.of(ADDED);
        }
    },
    AVERAGE {
        @Override
        Optional<Effects> reckon(Design design) {
            return Averaging.over(design, Prior.SCORES);
        }

        @Override
        List<String> assumed() {
            return List.of(ADDED, "before any score, each sd is half-normal with scale 1, as of scores from 1 to 5");
        }

        @Override
        void check(List<Observation> observations) {
            super.check(observations);
            double spread = spread(observations);
            if (spread > WIDEST) {
                throw new CouldNot(EffectWords.tooWide(spread) + " Write --method reml.");
            }
        }
    };

    private static final String ADDED = "effects add up, none hangs on another";
    private static final double WIDEST = 4;
    private static final int MOST_NAMED = 8;
    /** The work grows with the third power of it. */
    private static final int MOST_LEVELS = 300;

    static EffectsMethod named(String name) {
        return Stream.of(values())
                .filter(method -> method.word().equals(name))
                .findFirst()
                .orElseThrow(() -> new Misused("'" + name + "' is no method. Write reml or average."));
    }

    private String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    abstract Optional<Effects> reckon(Design design);

    abstract List<String> assumed();

    void check(List<Observation> observations) {
        if (spread(observations) == 0) {
            throw new CouldNot("All these scores are the same: nothing can be told from them.");
        }
    }

    static Design design(List<String> factors, List<Observation> observations) {
        if (observations.size() < 3) {
            throw new CouldNot("There are " + Counts.of(observations.size(), "row")
                    + " with a score and all factors; effects need 3 at least.");
        }
        long levels = 0;
        for (int f = 0; f < factors.size(); f++) {
            int column = f;
            levels += observations.stream()
                    .map(observation -> observation.levels().get(column))
                    .distinct()
                    .count();
        }
        if (levels > MOST_LEVELS) {
            throw new CouldNot("The factors have " + levels + " levels in all, and " + MOST_LEVELS
                    + " are the most. Name fewer factors.");
        }
        return Design.of(factors, observations);
    }

    Effects effects(Design design, List<Observation> observations) {
        check(observations);
        return reckon(design)
                .orElseThrow(() -> new CouldNot(
                        "The factors explain every score exactly: nothing is left over, from which a doubt could be"
                                + " reckoned. Name fewer factors, or add rows."));
    }

    private static double spread(List<Observation> observations) {
        double mean =
                observations.stream().mapToDouble(Observation::score).average().orElseThrow();
        return Math.sqrt(observations.stream()
                .mapToDouble(each -> (each.score() - mean) * (each.score() - mean))
                .average()
                .orElseThrow());
    }

    Provisos provisos(Design design, ScoreTable scores) {
        List<Warned> warnings = new ArrayList<>();
        if (!scores.leftOut().isEmpty()) {
            warnings.add(new Warned("left-out", leftOut(scores.leftOut())));
        }
        for (String factor : design.factors()) {
            if (design.levels(factor).size() == 1) {
                warnings.add(new Warned(
                        "one-level", "All rows have the same " + factor + ": nothing can be said of what it does."));
            }
        }
        return new Provisos(warnings, assumed());
    }

    private static String leftOut(List<Integer> rows) {
        String named = rows.stream().limit(MOST_NAMED).map(String::valueOf).collect(Collectors.joining(", "));
        int more = rows.size() - MOST_NAMED;
        return "Left out, as a cell is empty: " + (rows.size() == 1 ? "row " : "rows ") + named
                + (more > 0 ? " and " + more + " more" : "") + ".";
    }
}
