// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Journal;
import sillbook.season.Deadline;
import sillbook.season.Job;
import sillbook.season.Outlook;
import sillbook.season.PlaceNow;
import sillbook.season.Route;
import sillbook.season.Today;
import sillbook.text.Safe;
import sillbook.words.Days;
import sillbook.words.GroundJobWords;
import sillbook.words.JobWords;
import sillbook.words.PotNames;
import sillbook.words.Terms;

/**
 * What a journal asks for from a day on, for a calendar: the next job of every pot or batch, and the next round of every place. Said so
 * that it stays the same while the days go by: a calendar is told again only what changed.
 */
public final class ComingJobs {
    private final PotNames names;
    private final JobWords words;

    private ComingJobs(Journal journal, LocalDate today) {
        this.names = new PotNames(journal);
        this.words = new JobWords(journal, today);
    }

    /** By day, those of one day by what they say. Daily care is left out: it is for every day alike. */
    public static List<CalendarEntry> of(Journal journal, Outlook outlook) {
        ComingJobs jobs = new ComingJobs(journal, outlook.day());
        Today today = outlook.today();
        List<CalendarEntry> entries = new ArrayList<>();
        Stream.of(today.late(), today.ready(), today.due(), today.soon(), today.later())
                .flatMap(List::stream)
                .map(jobs::entry)
                .forEach(entries::add);
        outlook.places().stream()
                .map(PlaceNow::round)
                .flatMap(round -> round.stream())
                .map(jobs::entry)
                .forEach(entries::add);
        today.ground().stream().map(jobs::entry).forEach(entries::add);
        entries.sort(Comparator.comparing(CalendarEntry::day)
                .thenComparing(CalendarEntry::says)
                .thenComparing(CalendarEntry::uid));
        return List.copyOf(entries);
    }

    private CalendarEntry entry(Job.OfPots job) {
        Id<?> whose =
                job.batch().<Id<?>>map(share -> share.batch()).orElse(job.pots().get(0));
        String says =
                names.labels(job.pots()) + " " + names.nameAndCount(job.pots()) + ": " + Terms.JOBS.say(job.kind());
        String more = Stream.of(
                        where(job.route()), job.deadline().map(ComingJobs::by).orElse(""))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("; "));
        return entry(whose, job, says, more);
    }

    private String where(Route route) {
        return route.to()
                .map(to -> "to " + names.place(to.place()))
                .or(() -> route.from().map(names::place))
                .orElse("");
    }

    private CalendarEntry entry(Job.Round round) {
        String says = "Round of the " + names.place(round.place()) + ", " + JobWords.what(round);
        return entry(round.place(), round, says, words.asks(round));
    }

    private CalendarEntry entry(Job.OfGround job) {
        String says = names.place(job.place()) + ": " + GroundJobWords.what(job);
        return entry(job.place(), job, says, String.join(" ", GroundJobWords.steps(job.kind())));
    }

    private static CalendarEntry entry(Id<?> whose, Job job, String says, String more) {
        return new CalendarEntry(uid(whose, job.kind()), job.on(), Safe.text(says), Safe.text(more));
    }

    private static String uid(Id<?> whose, JobKind kind) {
        return whose + "-" + kind.name().toLowerCase(Locale.ROOT).replace('_', '-') + "@sillbook";
    }

    private static String by(Deadline deadline) {
        return deadline.fold(new Deadline.Cases<>() {
            @Override
            public String useBy(Deadline.UseBy last) {
                return "use by " + Days.date(last.day());
            }

            @Override
            public String forWish(Deadline.ForWish last) {
                return "wish by " + Days.date(last.day());
            }
        });
    }
}
