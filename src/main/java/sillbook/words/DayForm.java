// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import sillbook.model.Day;

/**
 * One way to say a day.
 *
 * @param pattern of the whole, in small letters
 * @param meaning what it means; empty when the words only look like this form
 */
record DayForm(Pattern pattern, Meaning meaning) {
    /** What matched words mean. */
    interface Meaning {
        Optional<Heard<Day>> of(Groups said, DayReader reader);
    }

    private static final String UNIT = "(d|days?|w|wks?|weeks?)";
    private static final String DAY_OF_WEEK = "(?:([a-z]{3,9})\\.? )?";
    private static final String PART =
            "(early|early in|mid|late|late in|in|some time in|beginning of|start of|middle of|end of)";

    private static final List<DayForm> ALL = List.of(
            form("(today|yesterday|tomorrow)", DayForm::byName),
            form("([+-]) ?(\\d{1,4}) ?" + UNIT + "?", DayForm::step),
            form("()in (\\d{1,4}) " + UNIT, DayForm::step),
            form("(\\d{1,4}) " + UNIT + " ago", DayForm::ago),
            form("(?:(last|next|this|coming|on) )?([a-z]{3,9})", DayForm::dayOfWeek),
            form(
                    DAY_OF_WEEK + "(\\d{1,2})(?:st|nd|rd|th|\\.)? ?(?:of )?([a-z]{3,9})\\.?(?: (\\d{4}))?",
                    (said, reader) -> date(said, said.text(2), said.text(3), reader)),
            form(
                    DAY_OF_WEEK + "([a-z]{3,9})\\.? (\\d{1,2})(?:st|nd|rd|th)?(?: (\\d{4}))?",
                    (said, reader) -> date(said, said.text(3), said.text(2), reader)),
            form("(\\d{4})-(\\d{1,2})-(\\d{1,2})", DayForm::iso),
            form("(\\d{1,2})([./-])(\\d{1,2})(?:\\2(\\d{4})?)?", DayForm::numerals),
            form(PART + "[ -]([a-z]{3,9})\\.?(?: (\\d{4}))?", DayForm::roughly));

    private static DayForm form(String pattern, Meaning meaning) {
        return new DayForm(Pattern.compile(pattern), meaning);
    }

    static Optional<Heard<Day>> read(String said, DayReader reader) {
        return ALL.stream()
                .flatMap(form ->
                        Groups.of(form.pattern, said).flatMap(groups -> form.meaning.of(groups, reader)).stream())
                .findFirst();
    }

    private static Optional<Heard<Day>> exactly(LocalDate day) {
        return Optional.of(Heard.as(Day.on(day)));
    }

    private static Optional<Heard<Day>> byName(Groups said, DayReader reader) {
        return exactly(
                switch (said.text(1)) {
                    case "today" -> reader.today();
                    case "tomorrow" -> reader.today().plusDays(1);
                    default -> reader.today().minusDays(1);
                });
    }

    private static Optional<Heard<Day>> step(Groups said, DayReader reader) {
        long days = days(said.number(2), said.text(3));
        return exactly(reader.today().plusDays(said.text(1).equals("-") ? -days : days));
    }

    private static Optional<Heard<Day>> ago(Groups said, DayReader reader) {
        return exactly(reader.today().minusDays(days(said.number(1), said.text(2))));
    }

    private static long days(int count, String unit) {
        return unit.startsWith("w") ? 7L * count : count;
    }

    private static Optional<Heard<Day>> dayOfWeek(Groups said, DayReader reader) {
        return Calendar.dayOfWeek(said.text(2)).flatMap(day -> exactly(nearest(day, said.text(1), reader)));
    }

    private static LocalDate nearest(DayOfWeek day, String which, DayReader reader) {
        return reader.today()
                .with(
                        switch (which) {
                            case "last" -> TemporalAdjusters.previous(day);
                            case "next", "coming" -> TemporalAdjusters.next(day);
                            default ->
                                reader.looking() == Looking.BACK
                                        ? TemporalAdjusters.previousOrSame(day)
                                        : TemporalAdjusters.next(day);
                        });
    }

    private static Optional<Heard<Day>> date(Groups said, String dayOfMonth, String month, DayReader reader) {
        Optional<DayOfWeek> weekday = Calendar.dayOfWeek(said.text(1));
        if (said.has(1) && weekday.isEmpty()) {
            return Optional.empty();
        }
        return Calendar.month(month)
                .map(found -> new DateSought(Integer.parseInt(dayOfMonth), found, weekday, reader).in(said.text(4)));
    }

    private static Optional<Heard<Day>> iso(Groups said, DayReader reader) {
        return Optional.of(Numerals.iso(said, reader));
    }

    private static Optional<Heard<Day>> numerals(Groups said, DayReader reader) {
        return Optional.of(Numerals.read(said.number(1), said.number(3), said.text(4), reader));
    }

    private static Optional<Heard<Day>> roughly(Groups said, DayReader reader) {
        return Rough.parse(said.text(1))
                .flatMap(rough -> Calendar.month(said.text(2)).map(month -> rough.in(month, said.text(3), reader)));
    }
}
