// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Pattern;
import sillbook.model.Day;
import sillbook.reckon.dates.DaySpan;
import sillbook.reckon.dates.Feast;
import sillbook.text.Fold;
import sillbook.words.DayReader;
import sillbook.words.Days;
import sillbook.words.Feasts;
import sillbook.words.Groups;
import sillbook.words.Heard;
import sillbook.words.Looking;

/**
 * The days a flower is wished for: one, several in a row, or a feast.
 *
 * @param feast the feast they were written as
 */
record WishedDays(DaySpan span, Optional<Feast> feast) {
    private static final Pattern FEAST = Pattern.compile("(?:for |on )?([^\\d]+?)(?: (\\d{4}))?");
    private static final Pattern SPAN =
            Pattern.compile("(?:from )?(\\d{1,2})( [a-z]+)?(?: to |-| - )(\\d{1,2} [a-z]+(?: \\d{4})?)");
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;

    static final Sense<WishedDays> SENSE = Senses.any(java.util.List.of(
            Senses.longest(WishedDays::read), Senses.day(Looking.AHEAD).map(WishedDays::on)));

    private static WishedDays on(Day day) {
        return new WishedDays(DaySpan.ofInclusive(day.earliest(), day.latest()), Optional.empty());
    }

    private static Optional<Heard<WishedDays>> read(String words, Bench bench) {
        String said = Fold.of(words);
        return Groups.of(FEAST, said)
                .flatMap(groups -> feast(groups, bench))
                .or(() -> Groups.of(SPAN, said).flatMap(groups -> span(groups, bench)));
    }

    private static Optional<Heard<WishedDays>> feast(Groups said, Bench bench) {
        return Feasts.ALL
                .findWhole(said.text(1))
                .map(feast ->
                        said.has(2) ? in(feast, said.number(2)) : Heard.as(of(feast, feast.onOrAfter(bench.today()))));
    }

    private static Heard<WishedDays> in(Feast feast, int year) {
        return year < FIRST_YEAR || year > LAST_YEAR
                ? Heard.not("1900 to 2199", "The year " + year + " is out of reach. Write one from 1900 to 2199.")
                : Heard.as(of(feast, feast.in(year)));
    }

    private static WishedDays of(Feast feast, LocalDate day) {
        return new WishedDays(DaySpan.ofInclusive(day, day), Optional.of(feast));
    }

    /** {@code 2 to 9 mar}: the month, and the year, of the last hold for the first where it has none. */
    private static Optional<Heard<WishedDays>> span(Groups said, Bench bench) {
        DayReader days = bench.days(Looking.AHEAD);
        return days.tryParse(said.text(3))
                .map(last -> last.map(Day::likely).then(to -> {
                    String month = said.has(2)
                            ? said.text(2)
                            : " " + Days.date(to).substring(Days.date(to).indexOf(' ') + 1);
                    return days.parse(said.text(1) + month + " " + to.getYear())
                            .map(Day::likely)
                            .then(from -> inOrder(from.isAfter(to) ? from.minusYears(1) : from, to));
                }));
    }

    private static Heard<WishedDays> inOrder(LocalDate from, LocalDate to) {
        return from.plusDays(120).isBefore(to)
                ? Heard.not("a long wish", "A wish of more than 120 days is none. Write the first day before the last.")
                : Heard.as(new WishedDays(DaySpan.ofInclusive(from, to), Optional.empty()));
    }

    /** {@code Sun 28 Mar 2027 (Easter)}, {@code 2 to 9 Mar 2027}. */
    String says() {
        LocalDate last = span.last();
        String days =
                span.start().equals(last) ? Days.full(last) : Days.fromTo(span.start(), last) + " " + last.getYear();
        return days + feast.map(one -> " (" + Feasts.ALL.say(one) + ")").orElse("");
    }
}
