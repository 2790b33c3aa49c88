// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Failure.Sign;
import sillbook.model.Journal;
import sillbook.reckon.effects.Interval;
import sillbook.reckon.effects.Proportion;
import sillbook.season.past.Influence;
import sillbook.season.past.Merit;
import sillbook.season.past.Merits;
import sillbook.season.past.Tie;
import sillbook.season.past.Trait;
import sillbook.season.past.Trials;
import sillbook.season.past.Trials.Silence;

/** How varieties, potting mixes and places stand, in words. Scores are said to a tenth. */
public final class MeritWords {
    private static final int MOST_NAMED = 2;
    static final double SHARE_CHANCE = 0.95;

    private final InfluenceWords names;

    public MeritWords(Journal journal) {
        names = new InfluenceWords(journal);
    }

    public String name(Influence influence) {
        return names.name(influence);
    }

    /** All of it, a fact a line: what cannot be told before any figure. */
    public List<String> lines(Trials trials, Merits merits) {
        List<String> lines = new ArrayList<>();
        if (merits.all().isEmpty()) {
            return lines;
        }
        lines.add(heading(trials, merits.trait()));
        trials.silence().ifPresent(silence -> lines.add(said(silence)));
        merits.ties().forEach(tie -> lines.add(said(tie)));
        merits.scored().forEach(merit -> lines.add(said(merit)));
        merits.scored()
                .forEach(merit -> remark(merits, merit)
                        .ifPresent(remark -> lines.add(names.name(merit.influence()) + ": " + remark)));
        withoutScore(merits).ifPresent(lines::add);
        if (merits.leader().isPresent()) {
            lines.add("A range of scores holds the truth 8 times in 10, one of shares 19 times in 20. Up to "
                    + Merit.FEW + " pots are few.");
        }
        return lines;
    }

    /** {@code Varieties, with winter and place of cold taken out: 3 winters, 78 scored pots.} */
    public String heading(Trials trials, Trait trait) {
        String of = InfluenceWords.traits(trait);
        String counts = Counts.of(trials.winters(), "winter") + ", "
                + Counts.of(trials.scored().size(), "scored pot");
        String out = takenOut(trials, trait);
        return of.substring(0, 1).toUpperCase(Locale.ROOT) + of.substring(1)
                + (out.isEmpty() ? "" : ", with " + out + " taken out") + ": " + counts + ".";
    }

    /** The traits whose part is taken out of this one's levels; nothing where nothing is worked out. */
    public static String takenOut(Trials trials, Trait trait) {
        return trials.silence().isPresent() || !trials.traits().contains(trait)
                ? ""
                : Counts.and(trials.traits().stream()
                        .filter(other -> other != trait && !(trait == Trait.VARIETY && other == Trait.KIND))
                        .map(InfluenceWords::code)
                        .toList());
    }

    /** Why there are plain counts only. */
    public static String said(Silence silence) {
        return switch (silence) {
            case NO_SCORE -> "No score yet. It is asked for in full bloom; O on a pot's card writes it.";
            case TOO_FEW -> "Too few scores to tell anything apart: it takes three.";
            case ALL_ALIKE -> "The scored pots differ in nothing but perhaps the winter: nothing can be told apart.";
            case ALL_EQUAL -> "All scores are the same: nothing did better or worse.";
            case TOO_MANY -> "There are too many varieties, mixes, places and winters to be told apart at once.";
        };
    }

    /** What nobody can tell apart, and which pot would. */
    public String said(Tie tie) {
        String whose = tie.these().stream().map(names::whose).collect(Collectors.joining(", "));
        String did = tie.with().stream().map(names::did).collect(Collectors.joining(" and "));
        String would = tie.with().stream()
                .map(InfluenceWords::traitOf)
                .distinct()
                .map(InfluenceWords::otherwise)
                .collect(Collectors.joining(" or "));
        String all = tie.pots() == 1 ? "The one pot " + whose + " " : "All " + tie.pots() + " pots " + whose + " ";
        return all + (tie.pots() == 1 ? did.replaceFirst("^were ", "was ") : did)
                + ", and no other " + (did.startsWith("were") ? "was" : "did")
                + ". Which made the difference cannot be told; one "
                + names.whose(tie.these().get(0)) + " " + would + " would tell.";
    }

    /** {@code 'Marrow Lane': 3.8 (3.4 to 4.2), 7 pots, plain mean 3.9; cannot be told from 'Inkwell'} */
    public String said(Merit merit) {
        List<String> facts = new ArrayList<>();
        facts.add(level(merit).orElse("no figure"));
        facts.add(Counts.of(merit.scores(), "pot") + (merit.isFew() ? ", few" : ""));
        merit.plainMean().ifPresent(mean -> facts.add("plain mean " + score(mean)));
        facts.addAll(counted(merit));
        String not = notToldFrom(merit).map(told -> "; " + told).orElse("");
        return names.name(merit.influence()) + ": " + String.join(", ", facts) + not;
    }

    /** {@code 3.8 (3.4 to 4.2)}; empty where there is no figure. */
    static Optional<String> level(Merit merit) {
        return merit.level()
                .map(level -> score(level.score().value()) + " ("
                        + score(inScale(level.eighty().low())) + " to "
                        + score(inScale(level.eighty().high())) + ")");
    }

    /** Scores are 1 to 5; a range that goes on beyond is cut there. */
    private static double inScale(double score) {
        return Math.max(1, Math.min(5, score));
    }

    public static String score(double value) {
        return Decimal.sayFixed(value, 1);
    }

    /** {@code 31 of 35 bulbs flowered (74-95 %)}; empty where none were counted. */
    public static Optional<String> flowered(Proportion share) {
        return share.interval(SHARE_CHANCE)
                .map(range ->
                        share.hits() + " of " + Counts.of(share.of(), "bulb") + " flowered (" + percent(range) + ")");
    }

    /** What was counted of it, with how far the shares are known; empty where nothing was. */
    static Optional<String> shares(Merit merit) {
        List<String> counted = counted(merit);
        return counted.isEmpty()
                ? Optional.empty()
                : Optional.of("Counted: " + String.join(", ", counted) + "; the shares 19 times in 20 (Wilson 1927).");
    }

    private static List<String> counted(Merit merit) {
        return Stream.concat(flowered(merit.flowered()).stream(), signs(merit.signs()).stream())
                .toList();
    }

    /** {@code floppy in 2 of 4 (15-85 %)}, one for each sign. */
    private static List<String> signs(Map<Sign, Proportion> signs) {
        return signs.entrySet().stream()
                .flatMap(sign -> sign.getValue().interval(SHARE_CHANCE).stream()
                        .map(range -> Terms.SIGNS.say(sign.getKey()) + " in "
                                + sign.getValue().hits() + " of "
                                + sign.getValue().of() + " (" + percent(range) + ")"))
                .toList();
    }

    static String percent(Interval range) {
        return Math.round(100 * range.low()) + "-" + Math.round(100 * range.high()) + " %";
    }

    /** {@code cannot be told from 'Inkwell', 'Marrow Lane' and 3 more}; empty where it can be told from all. */
    public Optional<String> notToldFrom(Merit merit) {
        List<Influence> others = merit.notToldFrom();
        if (others.isEmpty()) {
            return Optional.empty();
        }
        int more = others.size() - MOST_NAMED;
        List<String> named = Stream.concat(
                        others.stream().limit(MOST_NAMED).map(names::name),
                        more > 0 ? Stream.of(more + " more") : Stream.empty())
                .toList();
        return Optional.of("cannot be told from " + Counts.and(named));
    }

    /** {@code 7 pots, plain mean 3.9. It cannot be told from 'Inkwell'.} */
    public String aside(Merit merit) {
        String mean = merit.plainMean().isPresent()
                ? ", plain mean " + score(merit.plainMean().getAsDouble())
                : "";
        String told = merit.level().isEmpty()
                ? ""
                : notToldFrom(merit).map(not -> " It " + not + ".").orElse(" It can be told from all others.");
        return Counts.of(merit.scores(), "pot") + mean + "." + told;
    }

    /** Of one that leads by its plain mean while all its pots stood in the best place: what is left with that taken out. */
    public Optional<String> remark(Merits merits, Merit merit) {
        return merit.level()
                .filter(level -> merits.trait() == Trait.VARIETY
                        && merits.isBestByPlainMean(merit)
                        && merit.onlyAt().isPresent()
                        && merit.onlyAt().equals(merits.bestPlace()))
                .map(level -> "Plain mean " + score(merit.plainMean().orElseThrow()) + ", the best; but all "
                        + merit.scores() + " stood in the best place, "
                        + names.name(merit.onlyAt().orElseThrow()) + ". Taken out: "
                        + score(level.score().value()) + rank(merits, merit) + ".");
    }

    private String rank(Merits merits, Merit merit) {
        Merit leader = merits.leader().orElse(merit);
        if (leader.equals(merit)) {
            return ", still first"
                    + merit.notToldFrom().stream()
                            .findFirst()
                            .map(nearest -> ", not to be told from " + names.name(nearest))
                            .orElse("");
        }
        boolean isSure = !merit.notToldFrom().contains(leader.influence());
        return "; " + names.name(leader.influence()) + " leads" + (isSure ? "" : ", not surely");
    }

    public Optional<String> withoutScore(Merits merits) {
        List<String> without = merits.withoutScore().stream()
                .map(merit -> names.name(merit.influence()))
                .toList();
        return without.isEmpty() ? Optional.empty() : Optional.of("No data: " + Counts.and(without) + ".");
    }
}
