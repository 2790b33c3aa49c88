// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import sillbook.change.Decision;
import sillbook.change.Hand;
import sillbook.change.Refusal;
import sillbook.change.Step;
import sillbook.exchange.DatedLines.Dated;
import sillbook.handbook.Handbook;
import sillbook.model.Ids;
import sillbook.model.Journal;
import sillbook.season.Outlook;
import sillbook.words.Complaint;
import sillbook.words.line.Bench;
import sillbook.words.line.LineReading;
import sillbook.words.line.QuickLine;

/**
 * Writes lines of past days into a journal, each as if it had been written on its own day: the first of a day at twenty
 * to nine, every other a minute later.
 */
final class Replay {
    private static final LocalTime FIRST_LINE = LocalTime.of(8, 40);

    private final Ids ids;
    private Journal journal;
    private LocalDate day = LocalDate.MIN;
    private int ofThisDay;

    Replay(Journal beginning, Ids ids) {
        this.journal = beginning;
        this.ids = ids;
    }

    Journal journal() {
        return journal;
    }

    /**
     * Writes all lines of a file.
     *
     * @throws IllegalArgumentException when one is not understood, or cannot be
     */
    void write(DatedLines file) {
        file.lines().forEach(line -> write(line, file.name()));
    }

    private void write(Dated line, String file) {
        ofThisDay = line.day().equals(day) ? ofThisDay + 1 : 0;
        day = line.day();
        LineReading reading = QuickLine.read(line.text(), bench());
        Decision decision = reading.change()
                .map(change -> change.on(journal, hand()))
                .orElseGet(() ->
                        new Refusal(reading.complaint().map(Complaint::sentence).orElse("It says nothing.")));
        Step step = decision.fold(kept -> kept, refusal -> {
            throw new IllegalArgumentException(
                    file + ", line " + line.number() + ", '" + line.text() + "': " + refusal.sentence());
        });
        journal = journal.with(step.edits());
    }

    private Bench bench() {
        Handbook handbook = Handbook.standard();
        return new Bench(journal, Outlook.of(journal, handbook, day), handbook, ids);
    }

    private Hand hand() {
        Instant now = day.atTime(FIRST_LINE)
                .plusMinutes(ofThisDay)
                .atZone(journal.settings().zone())
                .toInstant();
        return new Hand(now, day, ids);
    }
}
