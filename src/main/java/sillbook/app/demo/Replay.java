// SPDX-License-Identifier: Apache-2.0
package sillbook.app.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import sillbook.app.demo.DatedLines.Dated;
import sillbook.change.Decision;
import sillbook.change.Hand;
import sillbook.change.Refusal;
import sillbook.change.Step;
import sillbook.handbook.Handbook;
import sillbook.model.Edit;
import sillbook.model.Id;
import sillbook.model.Ids;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.Pot;
import sillbook.season.Outlook;
import sillbook.season.past.Settling;
import sillbook.words.line.Bench;
import sillbook.words.line.QuickLine;

/**
 * Writes lines of past days, and thermometers' files, into a journal, each as if it had been written on its own day: the first of a day at twenty
 * to nine, every other a minute later.
 */
final class Replay {
    private static final LocalTime FIRST_LINE = LocalTime.of(8, 40);

    private final Ids ids;
    private final List<KeptWindow> kept = new ArrayList<>();
    private final Downloads downloads = new Downloads();
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

    /** What was foretold on these days, as it would have been kept. */
    List<KeptWindow> kept() {
        return List.copyOf(kept);
    }

    /** The thermometers' files that were taken in on these days. */
    List<Download> downloads() {
        return downloads.all();
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
        if (Downloads.isOne(line.text())) {
            journal = downloads.takenIn(line.text(), journal);
        } else {
            hear(line, file);
        }
    }

    private void hear(Dated line, String file) {
        Decision decision = QuickLine.heard(line.text(), bench())
                .fold(change -> change.on(journal, hand()), not -> new Refusal(not.sentence()));
        Step step = decision.fold(kept -> kept, refusal -> {
            throw new IllegalArgumentException(
                    file + ", line " + line.number() + ", '" + line.text() + "': " + refusal.sentence());
        });
        List<Id<Pot>> foretold = step.pottedOrMoved(journal);
        if (!foretold.isEmpty()) {
            Settling.due(journal, day, this::kept, ids)
                    .ifPresent(windows -> journal = journal.with(List.of(new Edit.Put(windows))));
        }
        journal = journal.with(step.edits());
        if (!foretold.isEmpty()) {
            kept.addAll(outlook().windowsToKeep(foretold));
        }
    }

    private Outlook outlook() {
        return Outlook.of(journal, Handbook.standard(), day);
    }

    private Bench bench() {
        return new Bench(journal, outlook(), Handbook.standard(), ids);
    }

    private Hand hand() {
        Instant now = day.atTime(FIRST_LINE)
                .plusMinutes(ofThisDay)
                .atZone(journal.settings().zone())
                .toInstant();
        return new Hand(now, day, ids);
    }
}
