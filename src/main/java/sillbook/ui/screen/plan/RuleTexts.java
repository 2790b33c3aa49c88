// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.SeasonPlan.Rule;
import sillbook.reckon.dates.DaySpan;
import sillbook.ui.screen.State;
import sillbook.words.DayReader;
import sillbook.words.Days;
import sillbook.words.Heard;

/**
 * The four figures of a hand rule as they are written, and read.
 *
 * @param season the days in which pots are brought in
 */
record RuleTexts(DaySpan season, LocalDate today) {
    private static final Pattern NUMBER = Pattern.compile("\\d{1,4}");
    private static final int MOST_POTS = 60;
    private static final int MOST_DAYS = 180;

    /** As they are read on the page of the plan. */
    static RuleTexts in(State state, Drawn drawn) {
        return new RuleTexts(drawn.planning(state).days(), state.shown().today());
    }

    /** How many pots, every how many days, from when, to when. */
    static List<String> of(Rule rule) {
        return List.of(
                Integer.toString(rule.pots()),
                Integer.toString(rule.everyDays()),
                Days.date(rule.from()).toLowerCase(Locale.ROOT),
                Days.date(rule.to()).toLowerCase(Locale.ROOT));
    }

    /** The rule with other figures in it; the rest of it stays. */
    Heard<Rule> read(List<String> texts, Rule rule) {
        return number(texts.get(0), MOST_POTS, "pots")
                .then(pots -> number(texts.get(1), MOST_DAYS, "days")
                        .then(every -> day(texts.get(2))
                                .then(from -> day(texts.get(3))
                                        .then(to -> from.isAfter(to)
                                                ? Heard.not(
                                                        "ends before it begins",
                                                        "From " + Days.date(from) + " to " + Days.date(to)
                                                                + " ends before it begins. Write a later last day.")
                                                : Heard.as(new Rule(
                                                        pots,
                                                        every,
                                                        from,
                                                        to,
                                                        rule.pottedADay(),
                                                        rule.pottingDays()))))));
    }

    private static Heard<Integer> number(String text, int most, String what) {
        String said = text.strip();
        int number = NUMBER.matcher(said).matches() ? Integer.parseInt(said) : 0;
        return number >= 1 && number <= most
                ? Heard.as(number)
                : Heard.not(
                        "1 to " + most,
                        "'" + said + "' is no number of " + what + " from 1 to " + most + ". Write one, as 2 or 12.");
    }

    /** As seen from today, else as it lies in the season. */
    private Heard<LocalDate> day(String text) {
        DayReader ahead = DayReader.ahead(today);
        LocalDate last = season.endExclusive().minusDays(1);
        Heard<LocalDate> asSaid = ahead.parse(text).map(Day::likely);
        return Stream.of(ahead, DayReader.back(last), DayReader.ahead(season.start()))
                .flatMap(reader -> reader.parse(text).map(Day::likely).value().stream())
                .filter(season::contains)
                .findFirst()
                .<Heard<LocalDate>>map(Heard::as)
                .orElseGet(() -> asSaid.then(day -> outside(text)));
    }

    private Heard<LocalDate> outside(String text) {
        return Heard.not(
                "not in this season",
                "'" + text.strip() + "' is not in this season, " + Days.full(season.start()) + " to "
                        + Days.full(season.endExclusive().minusDays(1)) + ". Write a day in it.");
    }
}
