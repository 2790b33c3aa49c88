// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.handbook.Handbook;
import sillbook.model.Findings.Roots;
import sillbook.model.Journal;
import sillbook.model.Length;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Window;
import sillbook.season.ColdCount;
import sillbook.season.Deadline;
import sillbook.season.Lever;
import sillbook.season.Noted;
import sillbook.season.RoundDue;
import sillbook.season.Why;
import sillbook.season.WhyClimate;
import sillbook.season.WhyCold;
import sillbook.season.WhyGround;
import sillbook.season.WhyLearnt;
import sillbook.season.WhyOfYear;
import sillbook.words.Explanation.Line;

/** Whys as they are read. */
public record WhyWords(Journal journal, Handbook handbook) implements Why.Cases<Explanation> {

    public Explanation say(Why<?> why) {
        return why.fold(this);
    }

    private Explanation page(Why<?> why, String title, String rule, List<Line> sum, String total) {
        SourceWords sources = new SourceWords(handbook, journal.settings());
        List<String> from = new ArrayList<>();
        why.figures().forEach(figure -> from.add(sources.figure(figure)));
        from.add(sources.rule(why.ruleSources()));
        List<String> levers =
                why.levers().stream().sorted().map(WhyWords::wouldChange).toList();
        return new Explanation(title, rule, from, sum, total, levers);
    }

    @Override
    public Explanation coldSoFar(Why.ColdSoFar why) {
        ColdCount cold = why.result();
        return page(
                why,
                PotWords.cold(cold.daysIn(), cold.daysColdEnough()),
                new ColdWhy(journal).rule(cold),
                why.stretches().stream().flatMap(new ColdWhy(journal)::stretch).toList(),
                ColdWhy.total(cold));
    }

    @Override
    public Explanation coldNeeded(Why.ColdNeeded why) {
        List<Line> sum = why.shares().stream().flatMap(ColdWhy::share).toList();
        return page(
                why,
                "needs " + weeks(why.result().typical()) + " of cold in the pot",
                "What the neediest variety needs, less the weeks its bulbs were cooled dry: at most 10 of them count, and at "
                        + "least 5 weeks stay, for the roots.",
                sum,
                range(why.result()));
    }

    @Override
    public Explanation mayComeIn(Why.MayComeIn why) {
        LengthSaid lengths = new LengthSaid(journal);
        List<Line> sum = List.of(
                new Line("weeks", "cold enough on", Days.day(why.coldEnoughOn())),
                new Line(
                        "roots",
                        why.signs().roots().map(WhyWords::roots).orElse("nobody looked"),
                        seen(why.signs().roots())),
                new Line(
                        "shoot",
                        why.signs().shoot().map(lengths::say).orElse("nobody looked"),
                        seen(why.signs().shoot())));
        return page(
                why,
                VerdictWords.brief(why.result()),
                "Weeks enough, and roots at the holes or a shoot of 4 to 8 cm. A tall shoot before its weeks means that it is "
                        + "too warm there; a shoot never cancels missing cold.",
                sum,
                VerdictWords.brief(why.result()));
    }

    private static String roots(Noted<Roots> seen) {
        return Terms.ROOTS.say(seen.value());
    }

    private static String seen(Optional<? extends Noted<?>> noted) {
        return noted.map(seen -> Days.day(seen.day())).orElse("");
    }

    /** A length in the grower's unit. */
    private record LengthSaid(Journal journal) {
        String say(Noted<Length> seen) {
            return Lengths.say(seen.value(), journal.settings().lengths());
        }
    }

    @Override
    public Explanation useBy(Why.UseBy why) {
        return page(
                why,
                "use by " + Days.day(why.result()),
                "The day on which the longest published cold is had. After it stems grow long and flop.",
                new ColdWhy(journal).ahead(why.cold(), "at most", why.potted().high()),
                Days.full(why.result()));
    }

    @Override
    public Explanation neededForWish(Why.NeededForWish why) {
        return page(
                why,
                "for its wish by " + Days.day(why.result()),
                "The usual lengths, taken off the wished day backward.",
                List.of(
                        new Line(
                                "wished for",
                                why.wish().feast(),
                                Days.day(why.wish().to())),
                        new Line(
                                "before it",
                                "from the end of the cold to the flower",
                                days(why.share().need().afterCold().typical()))),
                Days.full(why.result()));
    }

    @Override
    public Explanation stageBegins(Why.StageBegins why) {
        return page(
                why,
                Terms.STAGES.say(why.stage()) + " about "
                        + Days.day(why.result().likely()),
                "The lengths are added up from what has really begun: the least to the earliest day, the most to the latest; "
                        + "never before today. "
                        + (isLearnt(why) ? LearntWords.CHANCE : "A range, not a chance."),
                new StageSum(why.prospect(), why.milestone()).lines(),
                dates(why.result()));
    }

    private static boolean isLearnt(Why<?> why) {
        return why.figures().stream().anyMatch(figure -> figure.origin().isLearnt());
    }

    @Override
    public Explanation ofYear(WhyOfYear why) {
        List<Line> sum = List.of(
                new Line(YearJobWords.from(why.job()), "", Days.day(why.from())),
                new Line("then", "", range(why.after())));
        return page(
                why,
                Terms.JOBS.say(why.job()) + " about " + Days.day(why.result().likely()),
                YearJobWords.rule(why.job()),
                sum,
                dates(why.result()));
    }

    @Override
    public Explanation coldEnough(WhyCold why) {
        Window enough = why.result();
        return page(
                why,
                "cold enough about " + Days.day(enough.likely()),
                ColdWhy.AHEAD,
                new ColdWhy(journal).ahead(why.cold(), "needs", why.potted().typical()),
                dates(enough));
    }

    @Override
    public Explanation ground(WhyGround why) {
        Explanation page = page(
                why,
                GroundWhy.title(why.result()),
                GroundWhy.RULE,
                new GroundWhy(journal).sum(why),
                GroundWhy.total(why.result(), journal.settings().lengths()));
        return page.alsoFrom(new GroundWhy(journal).figures(why));
    }

    @Override
    public Explanation climate(WhyClimate<?> why) {
        Explanation said = why.foldClimate(new ClimateWhy(journal.settings()));
        return page(why, said.title(), said.rule(), said.sum(), said.total()).alsoFrom(said.from());
    }

    @Override
    public Explanation learnt(WhyLearnt why) {
        return page(
                why,
                LearntWords.title(why),
                LearntWords.rule(why),
                new LearntWords().sum(why.given(), new PotNames(journal)),
                LearntWords.value(why, journal.settings()));
    }

    @Override
    public Explanation late(Why.Late why) {
        return page(
                why,
                Counts.of(why.result(), "day") + " late",
                "Days since the last good day. Only a use-by day and a dated wish make a pot late.",
                List.of(
                        new Line(
                                "last good day",
                                why.deadline().fold(new DeadlineSaid()),
                                Days.day(why.deadline().day())),
                        new Line("today", "", Days.day(why.today()))),
                days(why.result()));
    }

    /** What a deadline is for. */
    private static final class DeadlineSaid implements Deadline.Cases<String> {
        @Override
        public String useBy(Deadline.UseBy deadline) {
            return "use by";
        }

        @Override
        public String forWish(Deadline.ForWish deadline) {
            return "for its wish on " + Days.day(deadline.wish().to());
        }
    }

    @Override
    public Explanation roundDue(RoundDue why) {
        List<Line> sum = new ArrayList<>();
        boolean isAnyDry = !why.felt().isEmpty();
        String unseen = isAnyDry ? "not all there was looked at since" : "not every pot was looked at since";
        sum.add(new Line("last", unseen, Days.day(why.last())));
        String interval = isAnyDry ? "with dry bulbs weekly, or the place's own interval" : "the place's own interval";
        sum.add(new Line("every", interval, days(why.everyDays())));
        why.afterFrost()
                .ifPresent(
                        day -> sum.add(new Line("or sooner", "two weeks after frost (?): any soft?", Days.day(day))));
        return page(
                why,
                "round due " + Days.day(why.result()),
                "The place's interval after the day since which not every pot there was looked at. Coming to the place counts as "
                        + "a look, and so does a round that was left out.",
                sum,
                Days.full(why.result()));
    }

    private static String wouldChange(Lever lever) {
        return switch (lever) {
            case A_CHECK -> "Another look at the pot would change it.";
            case A_DAY -> "It moves with the days written: a wrong one can be corrected.";
            case A_MOVE -> "Carrying the pot elsewhere would change it.";
            case COLD_DAYS_OF_PLACE -> "It follows the days on which its place is cold.";
            case OWN_FIGURE -> "A figure of your own would stand over the handbook's.";
            case DRY_COLD -> "It follows how long the bulbs were cooled before.";
            case WISH -> "Another wish would change it.";
            case A_READING -> "Another reading of its place would change it.";
            case GROUND -> "It follows what is written of the ground: depth, soil, cover and months.";
            case READINGS -> "It follows what is read there, and what is written as usual for the place.";
            case INTERVAL -> "It follows how often the place is asked for.";
        };
    }

    private static String dates(Window window) {
        return Days.date(window.earliest()) + ", " + Days.date(window.likely()) + ", " + Days.date(window.latest());
    }

    private static String days(long days) {
        return Counts.of(days, "day");
    }

    private static String weeks(int days) {
        return Weeks.sayDays(days);
    }

    static String range(DayCount days) {
        return Weeks.range(Weeks.ofDays(days.low()), Weeks.ofDays(days.typical()), Weeks.ofDays(days.high()));
    }
}
