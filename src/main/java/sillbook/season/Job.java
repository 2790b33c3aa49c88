// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.reckon.dates.Window;

/** Something to do. A pot has only its next job; looks at pots are asked for by place. */
public sealed interface Job {

    /** One answer for each sort. */
    interface Cases<R> {
        R ofPots(OfPots job);

        R round(Round job);

        R dailyCare(DailyCare job);

        R ofGround(OfGround job);
    }

    <R> R fold(Cases<R> cases);

    JobKind kind();

    /** The pots it is to be done to, by label. */
    List<Id<Pot>> pots();

    /** When it can first, will likely and should last be done, answers of the grower left aside. */
    Window window();

    /** The day it falls due: the likely one, or the one it was put off to. */
    LocalDate on();

    Due due();

    /**
     * The next thing to do with a pot, or with those of a batch that agree.
     *
     * @param batch the whole batch, on the row of those pots that are most of it
     * @param deadline the nearest, where there is one
     * @param readiness of a pot that is to come in from the cold
     * @param heldBack why it comes later than it would by the calendar; of a pot that is to come in from the cold
     * @param putOff the answer that moved it
     */
    record OfPots(
            JobKind kind,
            List<Id<Pot>> pots,
            Optional<BatchShare> batch,
            Window window,
            LocalDate on,
            Due due,
            Optional<Deadline> deadline,
            Route route,
            Optional<Readiness> readiness,
            Optional<Concern.HeldBack> heldBack,
            Optional<Delay> putOff)
            implements Job {
        public OfPots {
            pots = List.copyOf(pots);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.ofPots(this);
        }

        OfPots of(List<Id<Pot>> agreeing, Optional<BatchShare> whole) {
            return new OfPots(kind, agreeing, whole, window, on, due, deadline, route, readiness, heldBack, putOff);
        }

        /** The same, its cold having been less than the calendar says; of another job than that of bringing in it tells nothing. */
        OfPots heldBack(Concern.HeldBack by) {
            return kind == JobKind.BRING_IN
                    ? new OfPots(
                            kind, pots, batch, window, on, due, deadline, route, readiness, Optional.of(by), putOff)
                    : this;
        }

        /** The day it would fall due, had its places so far been as cold as they were taken to be. */
        LocalDate onByCalendar() {
            return heldBack.filter(by -> putOff.isEmpty())
                    .map(by -> on.minusDays(by.daysLost()))
                    .orElse(on);
        }

        /** Days since the deadline; 0 while it is not past. */
        public int daysLate(LocalDate today) {
            return deadline.map(by -> Math.max(0, (int) ChronoUnit.DAYS.between(by.day(), today)))
                    .orElse(0);
        }
    }

    /**
     * The round of one place: a look at all that stands there.
     *
     * @param bulbs purchases that wait there dry
     * @param everyDays the place's own interval; a week at most where dry bulbs wait
     * @param last the day since which not every pot there, or purchase, has been looked at; coming to the place counts as a look
     * @param settles pots there that may come in as soon as somebody has seen roots or a shoot
     * @param asksForSoftness whether frost may have made any of them soft by then
     */
    record Round(
            Id<Place> place,
            List<Id<Pot>> pots,
            List<Id<Purchase>> bulbs,
            int everyDays,
            LocalDate last,
            Window window,
            LocalDate on,
            Due due,
            Optional<Delay> putOff,
            List<Id<Pot>> settles,
            boolean asksForSoftness)
            implements Job {
        public Round {
            pots = List.copyOf(pots);
            bulbs = List.copyOf(bulbs);
            settles = List.copyOf(settles);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.round(this);
        }

        @Override
        public JobKind kind() {
            return JobKind.CHECK;
        }

        Round settling(List<Id<Pot>> waiting) {
            return new Round(place, pots, bulbs, everyDays, last, window, on, due, putOff, waiting, asksForSoftness);
        }
    }

    /**
     * One look a day at all pots out of the cold.
     *
     * @param pots those that nobody has touched today
     * @param ofPots how many there are in all
     * @param places where they stand
     */
    record DailyCare(List<Id<Pot>> pots, int ofPots, List<Id<Place>> places, LocalDate on) implements Job {
        public DailyCare {
            pots = List.copyOf(pots);
            places = List.copyOf(places);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.dailyCare(this);
        }

        @Override
        public JobKind kind() {
            return JobKind.DAILY_CARE;
        }

        @Override
        public Window window() {
            return Window.on(on);
        }

        @Override
        public Due due() {
            return Due.TODAY;
        }
    }

    /**
     * Something to do at a trench as a whole.
     *
     * @param pots those that stand there; of the pots that are to go in, those that wait for the cold
     * @param isByReading whether a thermometer there says so, over what was foretold
     */
    record OfGround(
            JobKind kind,
            Id<Place> place,
            List<Id<Pot>> pots,
            Window window,
            LocalDate on,
            Due due,
            boolean isByReading,
            Optional<Delay> putOff)
            implements Job {
        public OfGround {
            pots = List.copyOf(pots);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.ofGround(this);
        }
    }

    /**
     * The grower put it off.
     *
     * @param reason in the grower's words; may be empty
     */
    record Delay(LocalDate until, String reason) {}
}
