// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Journal;
import sillbook.season.past.Merit;
import sillbook.season.past.Merits;
import sillbook.season.past.Tie;
import sillbook.season.past.Trials;

/** Why something stands where it stands among its like. */
public final class MeritWhy {
    private static final String RULE =
            "A score is a mean, and what kind, variety, mix, place and winter each add to it,"
                    + " and luck. What they add is drawn towards nothing, the more the fewer the pots.";
    private static final String TAKEN = "The likeliest scatter, taken for certain (REML).";
    private static final String AVERAGED =
            "Averaged over how far each may scatter, half-normal with scale 1 before any score; the work of ";
    private static final String SOURCE = "Henderson 1975; Patterson and Thompson 1971; Gelman 2006.";
    /** SimulatedGrowersTest: its figures, and how they came about, stand on docs/explanation. */
    private static final String CHECKED =
            "Of 1000 invented growers whose truth is known, the bars held it 81 times in 100,"
                    + " and of 1000 more, who score in whole points, 95 times.";

    private final MeritWords words;

    public MeritWhy(Journal journal) {
        words = new MeritWords(journal);
    }

    /** With the plain mean, what was taken out, and what comes of it. */
    public Explanation explain(Trials trials, Merits merits, Merit merit) {
        String name = words.name(merit.influence());
        String stands = merit.level()
                .map(level -> MeritWords.score(level.score().value()))
                .orElse("no figure");
        return new Explanation(
                name + ": " + stands,
                RULE,
                from(trials, merits, merit),
                sum(merit),
                total(merit),
                wouldChange(merits, merit));
    }

    private static List<String> from(Trials trials, Merits merits, Merit merit) {
        List<String> from = new ArrayList<>();
        from.add(Counts.of(trials.scored().size(), "scored pot") + " of " + Counts.of(trials.winters(), "winter") + ". "
                + trials.silence().map(MeritWords::said).orElseGet(() -> answer(merits)));
        MeritWords.shares(merit).ifPresent(from::add);
        from.add(SOURCE);
        from.add(CHECKED);
        return from;
    }

    private static String answer(Merits merits) {
        return merits.effectiveSize().isPresent()
                ? AVERAGED + Counts.of(Math.round(merits.effectiveSize().getAsDouble()), "point") + "."
                : TAKEN;
    }

    private static List<Explanation.Line> sum(Merit merit) {
        List<Explanation.Line> sum = new ArrayList<>();
        merit.plainMean()
                .ifPresent(mean -> sum.add(new Explanation.Line(
                        "plain mean", "of " + Counts.of(merit.scores(), "pot"), Decimal.sayFixed(mean, 2))));
        merit.level().ifPresent(level -> {
            double rest = level.score().value() - merit.plainMean().orElseThrow();
            sum.add(new Explanation.Line(
                    "the rest", "taken out, and drawn to its like", (rest < 0 ? "" : "+") + Decimal.sayFixed(rest, 2)));
            sum.add(new Explanation.Line(
                    "doubt",
                    "as a standard deviation",
                    Decimal.sayFixed(level.score().sd(), 2)));
        });
        return sum;
    }

    private static String total(Merit merit) {
        return MeritWords.level(merit).orElse("no figure");
    }

    private List<String> wouldChange(Merits merits, Merit merit) {
        Optional<Tie> tie = merits.ties().stream()
                .filter(one -> one.these().contains(merit.influence()))
                .findFirst();
        return List.of(
                tie.map(words::said).orElse("Most is learnt from a pot of it where, or in which, it never stood."));
    }
}
