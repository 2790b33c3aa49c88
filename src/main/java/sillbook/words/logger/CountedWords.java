// SPDX-License-Identifier: Apache-2.0
package sillbook.words.logger;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.Temperatures;
import sillbook.words.logger.Counted.Span;
import sillbook.words.logger.Counted.Strange;
import sillbook.words.logger.UnderstoodWords.Topic;

/**
 * Says what a thermometer's file comes to, a count a line.
 *
 * @param zone of the days
 */
public record CountedWords(Counted of, ZoneId zone, TemperatureUnit unit) {
    private static final int NAMED = 3;
    private static final double MILLI = 1000;
    private static final int LONGEST_QUOTE = 30;
    private static final String AHEAD = "after now, left out: clock ahead, or dates the wrong way round";

    /**
     * So many of something.
     *
     * @param wants whether it is to be looked at
     * @param topic what about it can be corrected
     */
    public record Line(long count, boolean wants, String says, Optional<Topic> topic) {
        private static Line of(long count, String says) {
            return new Line(count, false, says, Optional.empty());
        }
    }

    /** What of it there is; compared with what the journal has, where that is known. */
    public List<Line> lines(Optional<Compared> compared) {
        List<Line> lines = new ArrayList<>();
        String fromTo = of.span().map(this::fromTo).orElse("");
        compared.ifPresentOrElse(
                beside -> lines.addAll(beside(beside, fromTo)),
                () -> lines.add(Line.of(of.readings(), "with a reading" + fromTo)));
        lines.addAll(withoutReadings());
        return lines;
    }

    private List<Line> beside(Compared compared, String fromTo) {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(compared.fresh(), "new" + (compared.fresh() > 0 ? fromTo : "")));
        add(lines, compared.known(), false, "already here, skipped");
        add(lines, compared.repeated(), false, "twice in it, skipped");
        add(lines, compared.changed(), true, "changed: " + differences(compared, true));
        add(lines, compared.differing(), true, "other than here, which stays: " + differences(compared, false));
        return lines;
    }

    private String differences(Compared compared, boolean isChanged) {
        List<String> some = compared.differences().stream()
                .filter(difference -> difference.isChanged() == isChanged)
                .limit(NAMED)
                .map(difference -> "line " + difference.line() + " " + degrees(difference.file())
                        + (isChanged ? " was " : " not ") + degrees(difference.journal()))
                .toList();
        return String.join(", ", some);
    }

    private String degrees(int milli) {
        return Temperatures.number(milli / MILLI, unit);
    }

    /** The lines beside those that are readings to be kept. */
    private List<Line> withoutReadings() {
        List<Line> lines = new ArrayList<>();
        add(lines, of.withoutValue(), false, "without a value");
        add(lines, of.others(), false, "of something else");
        if (of.suspicious() > 0) {
            String says = "suspicious, " + named(strange -> !strange.isUnreadable(), of.suspicious());
            String end = "; kept, marked, left out of sums";
            lines.add(new Line(of.suspicious(), true, says + end, Optional.of(Topic.SUSPICIOUS)));
        }
        add(lines, of.ahead(), true, AHEAD);
        add(lines, of.unreadable(), true, "unreadable, " + named(Strange::isUnreadable, of.unreadable()));
        return lines;
    }

    private static void add(List<Line> lines, long count, boolean wants, String says) {
        if (count > 0) {
            lines.add(new Line(count, wants, says, Optional.empty()));
        }
    }

    /** {@code , 8 Oct 2026 to 12 Jan 2027}. */
    private String fromTo(Span span) {
        return ", "
                + Days.fromToOfYears(LocalDate.ofInstant(span.first(), zone), LocalDate.ofInstant(span.last(), zone));
    }

    private String named(Predicate<Strange> which, long all) {
        List<String> some =
                of.strange().stream().filter(which).limit(NAMED).map(this::line).toList();
        long more = all - some.size();
        return String.join(", ", some) + (more > 0 ? " and " + Counts.grouped(more) + " more" : "");
    }

    private String line(Strange strange) {
        return "line " + strange.line() + " "
                + strange.milli().map(this::degrees).orElseGet(() -> '"' + quoted(strange.written()) + '"');
    }

    private static String quoted(String written) {
        return written.length() > LONGEST_QUOTE ? written.substring(0, LONGEST_QUOTE) + ".." : written;
    }
}
