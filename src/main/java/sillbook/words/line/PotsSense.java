// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import sillbook.model.Happening;
import sillbook.model.Journal;
import sillbook.model.LabelRun;
import sillbook.model.Labels;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.words.Heard;

/**
 * Pots by their labels: {@code T4}, {@code T1-T6}, {@code t1-6}, {@code H11 H14}. A label is looked for in this season,
 * then among the plants that live on from earlier ones, then in the one before. Of a run, pots that are done are left out.
 */
final class PotsSense implements Sense<List<Pot>> {
    static final PotsSense SENSE = new PotsSense();

    private static final Pattern LABEL = Pattern.compile("(?!x\\d)[a-z]{1,3}\\d{1,4}");
    private static final int MOST_OFFERED = 6;

    private PotsSense() {}

    @Override
    public Optional<Found<List<Pot>>> at(Written line, int from, Bench bench) {
        int end = line.phraseEnd(from);
        Set<Pot> pots = new LinkedHashSet<>();
        int at = from;
        for (; at < end && !line.isQuoted(at); at++) {
            Optional<Heard<List<Pot>>> some = pots(line.folded(at, at + 1), bench);
            if (some.isEmpty() || some.get().complaint().isPresent()) {
                break;
            }
            some.get().value().ifPresent(pots::addAll);
        }
        return at > from ? Optional.of(Found.whole(at, List.copyOf(pots))) : unknown(line, from, end, bench);
    }

    /** What looks like a label but is none; only where no pot was named before it. */
    private static Optional<Found<List<Pot>>> unknown(Written line, int from, int end, Bench bench) {
        return from < end && !line.isQuoted(from)
                ? pots(line.folded(from, from + 1), bench).map(wrong -> new Found<>(from + 1, wrong, Sure.WHOLE))
                : Optional.empty();
    }

    private static Optional<Heard<List<Pot>>> pots(String word, Bench bench) {
        Optional<Pot> one = labelled(word, bench);
        if (one.isPresent()) {
            return one.map(pot -> Heard.as(List.of(pot)));
        }
        Optional<LabelRun> run = LabelRun.parse(word);
        if (run.isPresent()) {
            return run.map(labels -> run(labels, word, bench));
        }
        return LABEL.matcher(word).matches() ? Optional.of(unknown(word, bench)) : Optional.empty();
    }

    private static Optional<Pot> labelled(String label, Bench bench) {
        Journal journal = bench.journal();
        return journal.pot(bench.season(), label)
                .or(() -> bench.outlook().livingOn().pots().stream()
                        .filter(pot -> pot.label().equalsIgnoreCase(label))
                        .findFirst())
                .or(() -> journal.pot(bench.season().previous(), label));
    }

    private static Heard<List<Pot>> run(LabelRun run, String word, Bench bench) {
        List<Pot> pots = inRun(run, bench.season(), bench);
        List<Pot> found = pots.isEmpty() ? inRun(run, bench.season().previous(), bench) : pots;
        return found.isEmpty() ? unknown(word, bench) : Heard.as(found);
    }

    private static List<Pot> inRun(LabelRun run, Season season, Bench bench) {
        return bench.journal().potsOf(season).stream()
                .filter(pot -> run.contains(pot.label()))
                .filter(pot -> !isDone(pot, bench.journal()))
                .sorted(Comparator.comparingInt(pot -> Labels.number(pot.label())))
                .toList();
    }

    static boolean isDone(Pot pot, Journal journal) {
        return journal.history(pot.id()).stream().anyMatch(event -> event.what() instanceof Happening.Closed);
    }

    private static Heard<List<Pot>> unknown(String word, Bench bench) {
        String label = word.toUpperCase(Locale.ROOT);
        String season = bench.journal().nameOf(bench.season());
        List<String> labels = bench.journal().potsOf(bench.season()).stream()
                .filter(pot -> Labels.letters(pot.label()).equalsIgnoreCase(Labels.letters(word)))
                .map(Pot::label)
                .toList();
        String there = labels.isEmpty() ? "" : " There are " + Labels.say(labels) + ".";
        return Heard.not("no pot " + label, "There is no pot " + label + " in season " + season + "." + there);
    }

    @Override
    public List<Offer> offers(String beginning, Bench bench) {
        String typed = beginning.strip().toUpperCase(Locale.ROOT);
        List<Offer> offers = new ArrayList<>();
        bench.journal().potsOf(bench.season()).stream()
                .filter(pot -> pot.label().toUpperCase(Locale.ROOT).startsWith(typed))
                .filter(pot -> !isDone(pot, bench.journal()))
                .sorted(Comparator.comparingInt(pot -> Labels.number(pot.label())))
                .limit(MOST_OFFERED)
                .forEach(pot -> offers.add(Offer.of(pot.label(), contents(pot, bench), Rank.OWN)));
        return offers;
    }

    private static String contents(Pot pot, Bench bench) {
        return pot.plantings().stream()
                .map(planting -> "'"
                        + bench.journal().varieties().get(planting.variety()).name() + "' x" + planting.count())
                .collect(Collectors.joining(", "));
    }
}
