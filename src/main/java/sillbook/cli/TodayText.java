// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.ArrayList;
import java.util.List;
import sillbook.model.Journal;
import sillbook.season.Job;
import sillbook.season.Today;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.JobWords;
import sillbook.words.PotNames;

/** What a day asks for as plain lines, one fact a line. */
final class TodayText {
    private final Today today;
    private final JobWords words;
    private final PotNames names;
    private final String season;
    private final List<String> lines = new ArrayList<>();

    private TodayText(Journal journal, Today today) {
        this.today = today;
        this.words = new JobWords(journal, today.day());
        this.names = new PotNames(journal);
        this.season = today.season().name(journal.settings().seasonStart());
    }

    static List<String> of(Journal journal, Today today) {
        return new TodayText(journal, today).lines();
    }

    private List<String> lines() {
        lines.add("Today. " + Days.aloud(today.day()) + ", season " + season + ".");
        jobs("Late", today.late());
        jobs("Ready", today.ready());
        jobs("Today", today.due());
        checks();
        jobs("Next " + Today.SOON_DAYS + " days", today.soon());
        bloom();
        if (lines.size() == 1) {
            lines.add("Nothing is due.");
        }
        return lines;
    }

    private void jobs(String heading, List<Job.OfPots> jobs) {
        if (jobs.isEmpty()) {
            return;
        }
        lines.add(heading);
        for (Job.OfPots job : jobs) {
            List<String> parts = new ArrayList<>(List.of(words.what(job), words.where(job), words.when(job)));
            parts.removeIf(String::isEmpty);
            lines.add("  " + names.labels(job.pots()) + " " + names.nameAndCount(job.pots()) + ": "
                    + String.join(", ", parts));
        }
    }

    private void checks() {
        if (today.checks().isEmpty() && today.dailyCare().isEmpty()) {
            return;
        }
        lines.add("Checks");
        for (Job.Round round : today.checks()) {
            lines.add("  " + names.place(round.place()) + ", "
                    + Counts.of(round.pots().size(), "pot") + ": " + JobWords.asks(round) + " every "
                    + Counts.of(round.everyDays(), "day") + ", " + JobWords.last(round));
        }
        today.dailyCare()
                .ifPresent(care -> lines.add("  daily care, " + care.pots().size() + " of "
                        + Counts.of(care.ofPots(), "pot") + ": " + words.places(care.places())));
    }

    private void bloom() {
        if (today.inBloom().isEmpty()) {
            return;
        }
        lines.add("In bloom");
        for (Today.Blooming blooming : today.inBloom()) {
            lines.add("  " + names.labelAndName(blooming.pots()) + ": day " + blooming.dayOfBloom());
        }
    }
}
