// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.season.Job;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.State;
import sillbook.ui.screen.entry.Entry;
import sillbook.ui.screen.form.Form;
import sillbook.ui.screen.form.Sheet;
import sillbook.ui.screen.round.RoundPage;

/** The form in which a job is done. */
final class JobForm {
    private JobForm() {}

    static Layer of(State state, Job.OfPots job) {
        Pots pots = new Pots(job.pots(), List.of());
        return switch (job.kind()) {
            case POT_UP -> form(new DaySheet(pots, DaySheet.What.POTTED, to(job), List.of()));
            case INTO_COLD, BRING_IN, MOVE_TO_WARMTH, KEEP_COOL_IN_BLOOM -> form(MoveSheet.of(state, pots, job));
            case WATCH_FOR_FLOWER -> form(DaySheet.ofBloom(state, pots, DaySheet.What.FIRST_FLOWER));
            case PAST_BLOOM -> form(DaySheet.ofBloom(state, pots, DaySheet.What.PAST_BLOOM));
            case AFTERCARE -> AftercareChoice.of(state, job.pots());
            case FEED -> form(DaySheet.of(pots, DaySheet.What.FED));
            case PUT_OUTDOORS -> form(DaySheet.of(pots, DaySheet.What.OUTDOORS));
            case TAKE_INDOORS -> form(DaySheet.of(pots, DaySheet.What.BROUGHT_IN));
            case START_REST -> form(DaySheet.of(pots, DaySheet.What.RESTED));
            case WAKE -> form(DaySheet.of(pots, DaySheet.What.WOKEN));
            case REPOT -> form(DaySheet.of(pots, DaySheet.What.REPOTTED));
            case WRITE_OUTCOME ->
                job.route().stage() == Stage.IN_BLOOM
                        ? ScoreChoice.of(state, job.pots())
                        : Entry.outcome(named(state, job), WhatFailed::after);
            case CHECK, DAILY_CARE, DIG_TRENCH, POTS_IN, COVER_TRENCH, LIFT_POTS -> RoundPage.of(state, job.pots());
        };
    }

    private static Layer form(Sheet sheet) {
        return Form.of(sheet);
    }

    private static Optional<Id<Place>> to(Job.OfPots job) {
        return job.route().to().map(there -> there.place());
    }

    private static List<Pot> named(State state, Job.OfPots job) {
        return job.pots().stream().map(state.journal().pots()::get).toList();
    }
}
