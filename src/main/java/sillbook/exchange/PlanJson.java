// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sillbook.model.Journal;
import sillbook.model.SeasonPlan;
import sillbook.model.SeasonPlan.Rule;
import sillbook.model.SeasonPlan.Search;
import sillbook.plan.PlanNow;
import sillbook.plan.Ribbon;
import sillbook.plan.Trouble;
import sillbook.reckon.dates.DaySpan;
import sillbook.words.DaysOfWeek;
import sillbook.words.Provisos;
import sillbook.words.plan.PlanNames;
import sillbook.words.plan.PlanSum;
import sillbook.words.plan.SeekingWords;
import sillbook.words.plan.TroubleWords;

/** A plan of a season as JSON. */
public final class PlanJson {
    private final Named named;
    private final PlanNames names;
    private final TroubleWords troubles;

    private PlanJson(Journal journal, PlanNow now) {
        this.named = new Named(journal);
        this.names = new PlanNames(journal, now.plan());
        this.troubles = new TroubleWords(now, journal);
    }

    /**
     * The document of {@code sillbook plan --json}.
     *
     * @param isKept whether the journal has it
     * @param all the plans of the season there are, to stand beside each other
     */
    public static String write(
            Journal journal,
            LocalDate today,
            PlanNow now,
            boolean isKept,
            List<PlanSum> all,
            List<String> cautions,
            Provisos provisos) {
        PlanJson json = new PlanJson(journal, now);
        SeasonPlan plan = now.plan();
        Fields fields = new Fields()
                .text("season", json.named.season(plan.season()))
                .text("name", plan.name())
                .flag("kept", isKept)
                .day("adopted", plan.adopted())
                .object("rule", rule(plan.rule()))
                .object("bound", plan.search(), PlanJson::bound)
                .list("pots", numbers(now.pots().size()), new PlannedPotJson(json.named, now, json.names)::pot)
                .object("bloom", BloomJson.bloom(now.ribbon()))
                .list("rooms", now.rooms(), BloomJson::room)
                .list("wishes", now.wishes(), new WishJson(journal, today, json.names)::wish)
                .list("troubles", now.troubles(), json::trouble)
                .list("plans", all, PlanJson::sum)
                .texts("cautions", cautions);
        return Answer.write(fields, provisos);
    }

    private static List<Integer> numbers(int size) {
        return IntStream.range(0, size).boxed().toList();
    }

    private static Fields rule(Rule rule) {
        return new Fields()
                .number("pots", rule.pots())
                .number("everyDays", rule.everyDays())
                .day("from", rule.from())
                .day("to", rule.to())
                .number("pottedADay", rule.pottedADay())
                .texts(
                        "pottingDays",
                        rule.pottingDays().stream().map(PlanJson::weekday).toList());
    }

    private static String weekday(DayOfWeek day) {
        return DaysOfWeek.say(List.of(day));
    }

    private static Fields bound(Search bound) {
        return new Fields()
                .number("unmet", bound.unmet())
                .number("gapDays", bound.gapDays())
                .number("pots", bound.pots());
    }

    private Fields trouble(Trouble trouble) {
        return new Fields()
                .code("trouble", trouble.sort())
                .texts("pots", trouble.pots().stream().sorted().map(names::mark).toList())
                .text("place", named.place(trouble.place()))
                .day("from", trouble.days().map(DaySpan::start))
                .day("to", trouble.days().map(DaySpan::last))
                .text("says", troubles.says(trouble))
                .texts("cures", troubles.cures(trouble));
    }

    private static Fields sum(PlanSum sum) {
        Ribbon ribbon = sum.now().ribbon();
        Optional<LocalDate> adopted = sum.now().plan().adopted();
        return new Fields()
                .text("plan", sum.now().plan().name())
                .day("adopted", adopted)
                .number("gapDays", ribbon.gapDays())
                .number("longestGap", ribbon.longestGap())
                .number("pots", sum.now().pots().size())
                .number("mostAtOnce", ribbon.mostAtOnce())
                .list("cost", sum.supplies().cost(), MoneyJson::of)
                .text("proven", SeekingWords.proven(sum.now()));
    }
}
