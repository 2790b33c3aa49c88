// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sillbook.model.Failure.Sign;
import sillbook.model.Journal;
import sillbook.reckon.effects.Interval;
import sillbook.reckon.effects.Proportion;
import sillbook.season.past.Influence;
import sillbook.season.past.Merit;
import sillbook.season.past.Merits;
import sillbook.season.past.Tie;
import sillbook.season.past.Trials;
import sillbook.words.InfluenceWords;
import sillbook.words.MeritWords;
import sillbook.words.Provisos;
import sillbook.words.Terms;

/** How varieties, potting mixes or places stand, as JSON. */
public final class StandingsJson {
    static final double CHANCE = 0.95;
    private static final String ASSUMED =
            "effects add up; before any score, each sd is half-normal with scale 1, as of whole scores from 1 to 5";

    private final InfluenceWords names;
    private final MeritWords words;

    private StandingsJson(Journal journal) {
        names = new InfluenceWords(journal);
        words = new MeritWords(journal);
    }

    /** The document of {@code sillbook standings --json}. */
    public static String write(Journal journal, Trials trials, Merits merits) {
        return new StandingsJson(journal).document(trials, merits);
    }

    private String document(Trials trials, Merits merits) {
        boolean isWorkedOut = merits.leader().isPresent();
        Fields fields = new Fields()
                .text("by", InfluenceWords.code(merits.trait()))
                .number("winters", trials.winters())
                .number("pots", trials.scored().size())
                .text("silence", trials.silence().map(Fields::code))
                .list("ties", merits.ties(), this::tie)
                .list("standings", merits.all(), this::merit)
                .text("bestPlace", merits.bestPlace().map(names::name))
                .decimal("effectiveSize", boxed(merits.effectiveSize()));
        return Answer.write(fields, new Provisos(List.of(), isWorkedOut ? List.of(ASSUMED) : List.of()));
    }

    private static Optional<Double> boxed(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    private List<String> names(List<Influence> influences) {
        return influences.stream().map(names::name).toList();
    }

    private Fields tie(Tie tie) {
        return new Fields()
                .texts("these", names(tie.these()))
                .number("pots", tie.pots())
                .texts("with", names(tie.with()))
                .text("says", words.said(tie));
    }

    private Fields merit(Merit merit) {
        return new Fields()
                .text("name", names.name(merit.influence()))
                .number("pots", merit.scores())
                .decimal("plainMean", boxed(merit.plainMean()))
                .decimal("score", merit.level().map(level -> level.score().value()))
                .decimal("low", merit.level().map(level -> level.eighty().low()))
                .decimal("high", merit.level().map(level -> level.eighty().high()))
                .flag("few", merit.isFew())
                .texts("notToldFrom", names(merit.notToldFrom()))
                .text("onlyAt", merit.onlyAt().map(names::name))
                .object("flowered", merit.flowered().interval(CHANCE), range -> flowered(merit.flowered(), range))
                .list("signs", List.copyOf(merit.signs().entrySet()), StandingsJson::sign);
    }

    private static Fields sign(Map.Entry<Sign, Proportion> seen) {
        Interval range = seen.getValue().interval(CHANCE).orElseThrow();
        return new Fields()
                .text("sign", Terms.SIGNS.say(seen.getKey()))
                .number("outcomes", seen.getValue().hits())
                .number("of", seen.getValue().of())
                .number("low", range.low())
                .number("high", range.high());
    }

    static Fields flowered(Proportion share, Interval range) {
        return new Fields()
                .number("bulbs", share.hits())
                .number("of", share.of())
                .number("low", range.low())
                .number("high", range.high());
    }
}
