// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import sillbook.model.Event;
import sillbook.model.Journal;
import sillbook.model.Pot;
import sillbook.season.Ahead;
import sillbook.season.PotNow;
import sillbook.words.Days;
import sillbook.words.Entries;
import sillbook.words.JobWords;
import sillbook.words.PotNames;
import sillbook.words.StageWords;
import sillbook.words.Terms;

/** Pots as plain lines. */
record PotText(Journal journal, LocalDate today) {

    /** Label, name, stage and place, next job. */
    String line(PotNow now) {
        Pot pot = now.life().pot();
        PotNames names = new PotNames(journal);
        String where = now.life()
                .stands()
                .map(stay -> ", " + names.place(stay.place()))
                .orElse("");
        String next = now.next()
                .map(job -> "; " + new JobWords(journal, today).what(job) + " " + Days.day(job.on()))
                .orElse("");
        return pot.label() + " " + names.nameAndCount(List.of(pot.id())) + ": "
                + Terms.STAGES.say(now.life().stage()) + where + next;
    }

    /** What is ahead, and all that has been, the newest first. */
    List<String> card(PotNow now) {
        List<String> lines = new ArrayList<>(List.of(line(now)));
        for (Ahead ahead : now.ahead()) {
            lines.add(StageWords.into(ahead.stage()) + ": about "
                    + Days.full(ahead.window().likely()) + " ("
                    + Days.fromTo(ahead.window().earliest(), ahead.window().latest()) + ")");
        }
        now.useBy().ifPresent(day -> lines.add("use by " + Days.full(day)));
        Entries entries = new Entries(journal);
        List<Event> history = journal.history(now.life().pot().id());
        for (int i = history.size() - 1; i >= 0; i--) {
            Event event = history.get(i);
            lines.add(Days.full(event.day()) + ": " + entries.say(event.what()));
        }
        return lines;
    }
}
