// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Journal;
import sillbook.plan.OrderDue;
import sillbook.season.Job;
import sillbook.season.Today;
import sillbook.words.AttentionWords;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.Entries;
import sillbook.words.GroundJobWords;
import sillbook.words.JobWords;
import sillbook.words.PotNames;
import sillbook.words.plan.OrderWords;

/** What a day asks for as plain lines, one fact a line under its heading. */
final class TodayText {
    private final Journal journal;
    private final Today today;
    private final List<OrderDue> orders;
    private final JobWords words;
    private final PotNames names;
    private final List<String> lines = new ArrayList<>();

    private TodayText(Journal journal, Today today, List<OrderDue> orders) {
        this.journal = journal;
        this.today = today;
        this.orders = orders;
        this.words = new JobWords(journal, today.day());
        this.names = new PotNames(journal);
    }

    static List<String> of(Journal journal, Today today, List<OrderDue> orders) {
        return new TodayText(journal, today, orders).lines();
    }

    private List<String> lines() {
        String season = journal.nameOf(today.season());
        lines.add("Today. " + Days.aloud(today.day()) + ", season " + season + ".");
        section("Late", today.late(), this::job);
        section("Ready", today.ready(), this::job);
        section("Today", today.due(), this::job);
        section("Checks", checks(), check -> check);
        section("Trench", today.ground(), this::ground);
        section("To order", orders, new OrderWords(journal, today.day())::line);
        section("Next " + Today.SOON_DAYS + " days", today.soon(), this::job);
        section("In bloom", today.inBloom(), this::blooming);
        section("Places", today.places(), new AttentionWords(journal)::say);
        if (lines.size() == 1) {
            lines.add("Nothing is due.");
        }
        section("Done today", today.done(), this::done);
        return lines;
    }

    private <T> void section(String heading, Collection<T> entries, Function<T, String> line) {
        if (!entries.isEmpty()) {
            lines.add(heading);
            entries.forEach(entry -> lines.add("  " + line.apply(entry).replaceAll(" +", " ")));
        }
    }

    private String job(Job.OfPots job) {
        String said = Stream.of(words.inList(job), words.where(job), words.when(job))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", "));
        return names.labels(job.pots()) + " " + names.nameAndCount(job.pots()) + ": " + said;
    }

    private List<String> checks() {
        List<String> checks =
                new ArrayList<>(today.checks().stream().map(this::round).toList());
        today.dailyCare().ifPresent(care -> checks.add(dailyCare(care)));
        return checks;
    }

    private String round(Job.Round round) {
        return names.place(round.place()) + ", " + JobWords.what(round) + ": " + words.asks(round) + " every "
                + Counts.of(round.everyDays(), "day") + ", " + JobWords.last(round);
    }

    private String ground(Job.OfGround job) {
        return names.place(job.place()) + ": "
                + Stream.of(GroundJobWords.what(job), GroundJobWords.because(job), GroundJobWords.when(job))
                        .filter(part -> !part.isEmpty())
                        .collect(Collectors.joining(", "));
    }

    private String dailyCare(Job.DailyCare care) {
        return "daily care, " + care.pots().size() + " of " + Counts.of(care.ofPots(), "pot") + ": "
                + words.places(care.places());
    }

    private String blooming(Today.Blooming blooming) {
        return names.labelAndName(blooming.pots()) + ": day " + blooming.dayOfBloom();
    }

    private String done(Today.Done done) {
        LocalTime at = LocalTime.ofInstant(done.writtenAt(), journal.settings().zone());
        String whose = names.whose(done.subjects());
        String minute = at.withSecond(0).withNano(0).toString();
        return minute + " " + (whose.isEmpty() ? "" : whose + ": ") + new Entries(journal).say(done.what());
    }
}
