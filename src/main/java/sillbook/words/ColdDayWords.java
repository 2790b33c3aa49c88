// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;
import java.util.regex.Pattern;
import sillbook.model.Day;
import sillbook.model.Place.ColdDays;
import sillbook.text.Fold;

/** The days of the year on which a place is cold, both ends in them: {@code 15 Oct to 1 Apr}, {@code all year}. */
public final class ColdDayWords {
    /** A leap year, so that every day of a year can be written. */
    private static final LocalDate ANY_YEAR = LocalDate.of(2028, 1, 1);

    private static final Pattern SPAN = Pattern.compile("(.+?) ?(?: to | until | till |-|\\.\\.) ?(.+)");
    private static final Pattern ALL_YEAR = Pattern.compile("all year|always|the year round");

    private ColdDayWords() {}

    /** {@code 15 oct to 1 apr}, {@code oct 15 - apr 1}, {@code all year}. */
    public static Heard<ColdDays> parse(String text) {
        String said = Fold.of(text).strip();
        if (ALL_YEAR.matcher(said).matches()) {
            return Heard.as(ColdDays.ALL_YEAR);
        }
        return Groups.of(SPAN, said)
                .flatMap(span ->
                        date(span.text(1)).flatMap(from -> date(span.text(2)).map(to -> days(from, to))))
                .orElseGet(() -> Heard.not(
                        "days, as 15 oct to 1 apr",
                        "'" + text.strip() + "' are no days of the year. Write them as 15 oct to 1 apr, or all year."));
    }

    private static Optional<Heard<LocalDate>> date(String text) {
        return DayReader.ahead(ANY_YEAR).tryParse(text).map(heard -> heard.map(Day::likely));
    }

    private static Heard<ColdDays> days(Heard<LocalDate> from, Heard<LocalDate> to) {
        return from.then(first -> to.map(last -> new ColdDays(MonthDay.from(first), MonthDay.from(last.plusDays(1)))));
    }

    /** {@code 15 Oct to 1 Apr}, {@code all year}. */
    public static String say(ColdDays days) {
        if (days.isAllYear()) {
            return "all year";
        }
        LocalDate last = days.untilExclusive().atYear(ANY_YEAR.getYear()).minusDays(1);
        return Days.date(days.from()) + " to " + Days.date(MonthDay.from(last));
    }
}
