// SPDX-License-Identifier: Apache-2.0
package sillbook.words.logger;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.words.Days;
import sillbook.words.Temperatures;
import sillbook.words.logger.Counted.Span;
import sillbook.words.logger.Counted.Strange;

/**
 * Says what a thermometer's file comes to, a count a line.
 *
 * @param zone of the days
 */
public record CountedWords(Counted of, ZoneId zone, TemperatureUnit unit) {
    private static final int NAMED = 3;
    private static final double MILLI = 1000;
    private static final int LONGEST_QUOTE = 30;

    /**
     * So many of something.
     *
     * @param wants whether it is to be looked at
     */
    public record Line(long count, boolean wants, String says) {}

    /** What of it there is. */
    public List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(
                of.readings(),
                false,
                "with a reading" + of.span().map(this::fromTo).orElse("")));
        lines.addAll(withoutReadings());
        return lines;
    }

    /** The lines beside those that are readings to be kept. */
    public List<Line> withoutReadings() {
        List<Line> lines = new ArrayList<>();
        add(lines, of.withoutValue(), false, "without a value");
        add(lines, of.others(), false, "of something else");
        add(
                lines,
                of.suspicious(),
                true,
                "suspicious, " + named(strange -> !strange.isUnreadable()) + "; kept, marked, left out of sums");
        add(lines, of.unreadable(), true, "unreadable, " + named(Strange::isUnreadable));
        return lines;
    }

    private static void add(List<Line> lines, long count, boolean wants, String says) {
        if (count > 0) {
            lines.add(new Line(count, wants, says));
        }
    }

    /** {@code , 8 Oct to 12 Jan}. */
    public String fromTo(Span span) {
        return ", " + Days.fromTo(LocalDate.ofInstant(span.first(), zone), LocalDate.ofInstant(span.last(), zone));
    }

    private String named(Predicate<Strange> which) {
        List<Strange> all = of.strange().stream().filter(which).toList();
        List<String> some = all.stream().limit(NAMED).map(this::line).toList();
        return String.join(", ", some) + (all.size() > NAMED ? " .." : "");
    }

    private String line(Strange strange) {
        return "line " + strange.line() + " "
                + strange.milli()
                        .map(milli -> Temperatures.number(milli / MILLI, unit))
                        .orElseGet(() -> '"' + quoted(strange.written()) + '"');
    }

    private static String quoted(String written) {
        return written.length() > LONGEST_QUOTE ? written.substring(0, LONGEST_QUOTE) + ".." : written;
    }
}
