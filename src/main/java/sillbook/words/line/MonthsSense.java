// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Temperature;
import sillbook.model.Trench.Means;
import sillbook.words.Heard;
import sillbook.words.Temperatures;

/** Twelve mean temperatures, parted by blanks or commas: {@code means -2 -1 3 8 13 17 19 18 14 9 3 -1}; one unit at the end holds for all. */
final class MonthsSense implements Sense<Means> {
    static final MonthsSense SENSE = new MonthsSense();
    private static final List<String> LEADS = List.of("means", "monthly means", "months");
    private static final int MONTHS = 12;
    private static final Set<String> UNITS = Set.of("c", "f");

    private MonthsSense() {}

    @Override
    public Optional<Found<Means>> at(Written line, int from, Bench bench) {
        return Senses.leadIn(line, from, LEADS).map(start -> read(line, start));
    }

    private static Found<Means> read(Written line, int start) {
        List<String> numbers = new ArrayList<>();
        int end = start;
        for (int at = start; numbers.size() < MONTHS && at < line.size(); at++) {
            if (line.isMark(at, ",")) {
                continue;
            }
            if (line.isMark(at, ";:()")
                    || Temperatures.parse(line.text(at, at + 1)).value().isEmpty()) {
                break;
            }
            numbers.add(line.text(at, at + 1));
            end = at + 1;
        }
        boolean isUnit = end < line.size() && UNITS.contains(line.folded(end, end + 1));
        String unit = isUnit ? line.text(end, end + 1) : "";
        boolean isMore = !isUnit
                && end < line.phraseEnd(end)
                && Temperatures.parse(line.text(end, end + 1)).value().isPresent();
        int last = isUnit ? end + 1 : end;
        return new Found<>(
                Math.max(last, start), numbers.size() == MONTHS && !isMore ? means(numbers, unit) : not(), Sure.WHOLE);
    }

    private static Heard<Means> means(List<String> numbers, String unit) {
        List<Temperature> months = new ArrayList<>();
        for (String number : numbers) {
            Temperatures.parse(number + (Temperatures.isSure(number) ? "" : unit))
                    .value()
                    .ifPresent(months::add);
        }
        return months.size() == MONTHS ? Heard.as(new Means(months)) : not();
    }

    private static Heard<Means> not() {
        return Heard.not(
                "twelve means",
                "These are not twelve months. Write twelve mean temperatures, from January on, as: means -2 -1 3 8 13 17 19 18 14 9 3 -1.");
    }
}
