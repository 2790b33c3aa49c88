// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Outcome.Again;
import sillbook.model.Variety;
import sillbook.reckon.effects.Interval;
import sillbook.reckon.effects.Proportion;
import sillbook.season.past.By;
import sillbook.season.past.Foretelling;
import sillbook.season.past.Foretellings;
import sillbook.season.past.Grown.Rating;
import sillbook.season.past.Summary;
import sillbook.season.past.Summary.Cold;
import sillbook.season.past.Tallied;
import sillbook.season.past.Tally;
import sillbook.season.past.Truth;
import sillbook.words.PotNames;
import sillbook.words.Provisos;
import sillbook.words.SummaryWords;
import sillbook.words.TallyWords;
import sillbook.words.Terms;
import sillbook.words.Vocabulary;
import sillbook.words.Weeks;

/** What winters came to, and what did well in them, as JSON. */
public final class SeasonsJson {
    private final Journal journal;
    private final Foretellings foretellings;
    private final TallyWords words;

    private SeasonsJson(Journal journal, Foretellings foretellings) {
        this.journal = journal;
        this.foretellings = foretellings;
        words = new TallyWords(journal);
    }

    /** The document of {@code sillbook seasons --json}. */
    public static String write(
            Journal journal, By by, List<Summary> winters, Foretellings foretellings, List<Tallied> tallied) {
        SeasonsJson json = new SeasonsJson(journal, foretellings);
        Fields fields = new Fields()
                .code("by", by)
                .list("seasons", winters, json::summary)
                .list("records", tallied, json::tallied);
        return Answer.write(fields, new Provisos(List.of(), List.of()));
    }

    private Fields summary(Summary summary) {
        Fields fields = new Fields()
                .text("season", new SummaryWords(journal).winter(summary))
                .number("pots", summary.pots())
                .number("flowered", summary.flowered());
        return counts(fields, summary.tally())
                .object(
                        "bulbs",
                        summary.bulbs().interval(StandingsJson.CHANCE),
                        range -> StandingsJson.flowered(summary.bulbs(), range))
                .decimal("daysWithBloom", summary.daysWithBloom().map(Long::doubleValue))
                .object("coldWeeks", summary.cold(), SeasonsJson::cold)
                .object("dates", dates(foretellings.of(summary.winter())))
                .texts("best", names(summary.best()))
                .texts("worst", names(summary.worst()))
                .list("signs", sorted(summary.signs()), one -> counted(one, Terms.SIGNS))
                .list("causes", sorted(summary.causes()), one -> counted(one, Terms.CAUSES));
    }

    private static Fields counts(Fields fields, Tally tally) {
        return fields.number("judged", tally.pots())
                .number("well", tally.count(Rating.WELL))
                .number("fair", tally.count(Rating.FAIR))
                .number("failed", tally.count(Rating.FAILED));
    }

    private static Fields cold(Cold cold) {
        return new Fields()
                .number("least", Weeks.ofDays((double) cold.least()))
                .number("middle", Weeks.ofDays((double) cold.middle()))
                .number("most", Weeks.ofDays((double) cold.most()));
    }

    private Fields dates(Truth truth) {
        Optional<Interval> range = truth.held().interval(StandingsJson.CHANCE);
        return share(truth.held())
                .decimal("low", range.map(Interval::low))
                .decimal("high", range.map(Interval::high))
                .number("early", truth.early())
                .number("late", truth.late())
                .decimal("middleDays", truth.middleMiss().map(Long::doubleValue))
                .list(
                        "byStage",
                        truth.byStage().entrySet(),
                        one -> share(one.getValue()).code("stage", one.getKey()))
                .list("missed", truth.missed(), this::missed);
    }

    private static Fields share(Proportion share) {
        return new Fields().number("held", share.hits()).number("of", share.of());
    }

    private Fields missed(Foretelling one) {
        return new Fields()
                .texts(
                        "pots",
                        one.pots().stream().map(new PotNames(journal)::label).toList())
                .code("stage", one.window().stage())
                .day("foretold", one.window().madeOn())
                .day("earliest", one.window().earliest())
                .day("latest", one.window().latest())
                .day("came", one.came())
                .number("days", one.daysOff());
    }

    private List<String> names(List<Id<Variety>> varieties) {
        return varieties.stream().map(new PotNames(journal)::variety).toList();
    }

    private static <T extends Enum<T>> List<Map.Entry<T, Integer>> sorted(Map<T, Integer> counts) {
        return counts.entrySet().stream().sorted(Map.Entry.comparingByKey()).toList();
    }

    private static <T> Fields counted(Map.Entry<T, Integer> one, Vocabulary<T> said) {
        return new Fields().text("says", said.say(one.getKey())).number("outcomes", one.getValue());
    }

    private Fields tallied(Tallied one) {
        Tally tally = one.tally();
        Fields fields = new Fields()
                .text("name", words.name(one.what()))
                .number("grown", one.grown().size())
                .number("winters", one.tally().winters());
        return counts(fields, tally)
                .text(
                        "again",
                        tally.again().filter(said -> said != Again.NOT_SAID).map(Fields::code))
                .text("noted", tally.noted())
                .text("onlyAt", tally.onlyAt().map(new PotNames(journal)::place));
    }
}
