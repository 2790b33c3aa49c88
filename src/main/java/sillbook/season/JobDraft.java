// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.JobKind;
import sillbook.reckon.dates.Window;

/** A job of one pot while it is put together; it falls due on the likely day unless said otherwise. */
final class JobDraft {
    private final JobKind kind;
    private final Foretold pot;
    private final Window window;
    private Route route;
    private LocalDate on;
    private Optional<Deadline> deadline = Optional.empty();
    private boolean mayWait;
    private boolean isDayGiven;
    private boolean canBeLate = true;
    private boolean isPossible = true;

    JobDraft(JobKind kind, Foretold pot, Window window, Route route) {
        this.kind = kind;
        this.pot = pot;
        this.window = window;
        this.route = route;
        this.on = window.likely();
    }

    Window window() {
        return window;
    }

    JobDraft on(LocalDate day) {
        on = day;
        return this;
    }

    JobDraft to(Optional<Destination> place) {
        route = new Route(route.from(), place, route.stage());
        return this;
    }

    /** Of several deadlines the nearest counts. */
    JobDraft by(Optional<Deadline> other) {
        boolean nearer = other.filter(by -> deadline.filter(known -> !by.day().isBefore(known.day()))
                        .isEmpty())
                .isPresent();
        deadline = nearer ? other : deadline;
        return this;
    }

    /** It can be done now, and may wait until its day. */
    JobDraft mayWait() {
        mayWait = true;
        return this;
    }

    /** The day it is put off to counts, also where it lies before the usual one. */
    JobDraft byAnswer() {
        isDayGiven = true;
        return this;
    }

    /** It cannot be done yet, so no deadline makes it late. */
    JobDraft cannotYet() {
        canBeLate = false;
        return this;
    }

    /** Something is missing without which no day can be named. */
    JobDraft notYet() {
        isPossible = false;
        return this;
    }

    Job.OfPots job() {
        Optional<Job.Delay> delay = delay();
        LocalDate day = delay.map(Job.Delay::until)
                .filter(until -> mayWait || isDayGiven || on.isBefore(until))
                .orElse(on);
        return new Job.OfPots(
                kind,
                List.of(pot.life().pot().id()),
                Optional.empty(),
                window,
                day,
                due(day, delay),
                deadline,
                route,
                pot.readiness(),
                Optional.empty(),
                delay);
    }

    /** An answer from before the pot came to stand as it does says nothing of now. */
    private Optional<Job.Delay> delay() {
        Optional<LocalDate> begun = pot.life().standing().begun().map(Day::likely);
        return Optional.ofNullable(pot.life().answers().putOff().get(kind))
                .filter(said -> begun.filter(said.day().likely()::isBefore).isEmpty())
                .map(Noted::value);
    }

    private Due due(LocalDate day, Optional<Job.Delay> delay) {
        LocalDate today = pot.today();
        if (!isPossible) {
            return Due.LATER;
        }
        if (delay.filter(put -> put.until().isAfter(today)).isPresent()) {
            return Due.on(day, today);
        }
        if (canBeLate && deadline.filter(by -> today.isAfter(by.day())).isPresent()) {
            return Due.LATE;
        }
        return day.isAfter(today) && mayWait ? Due.READY : Due.on(day, today);
    }
}
