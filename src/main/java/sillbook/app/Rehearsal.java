// SPDX-License-Identifier: Apache-2.0
package sillbook.app;

import java.time.LocalDate;
import sillbook.change.Change;
import sillbook.change.Hand;
import sillbook.change.Step;
import sillbook.model.Journal;

/** What a journal says, to try changes on one after another; no file knows of it. */
public final class Rehearsal implements Page {
    private final Desk desk;
    private Journal journal;

    Rehearsal(Journal journal, Desk desk) {
        this.journal = journal;
        this.desk = desk;
    }

    @Override
    public Journal readAll() {
        return journal;
    }

    @Override
    public LocalDate today() {
        return LocalDate.ofInstant(desk.now(), journal.settings().zone());
    }

    @Override
    public Result carryOut(Change change) {
        return change.on(journal, new Hand(desk.now(), today(), desk.ids()))
                .fold(this::follow, refusal -> new Result.Refused(refusal.sentence()));
    }

    private Result follow(Step step) {
        journal = journal.with(step.edits());
        return new Result.Done(step.name(), journal);
    }
}
