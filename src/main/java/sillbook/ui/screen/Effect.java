// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import sillbook.change.Change;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.LoggerFormat;
import sillbook.model.Place;
import sillbook.model.SeasonPlan.Rule;
import sillbook.model.Settings.Colours;
import sillbook.plan.Planning;
import sillbook.plan.Seeking;
import sillbook.season.past.Foretellings;
import sillbook.season.past.Trials;

/** What a screen asks the shell to do. The shell answers with a {@link Message} where one is named. */
public sealed interface Effect {

    /** One way to do each sort of effect. */
    interface Cases<R> {
        R carryOut(CarryOut effect);

        R takeBack(TakeBack effect);

        R putBack(PutBack effect);

        R listSteps(ListSteps effect);

        R readRest(ReadRest effect);

        R beginJournal(BeginJournal effect);

        R seeDemo(SeeDemo effect);

        R openJournal(OpenJournal effect);

        R readTable(ReadTable effect);

        R lookAtLogger(LookAtLogger effect);

        R takeInLogger(TakeInLogger effect);

        R stopTakingIn(StopTakingIn effect);

        R average(Average effect);

        R readKept(ReadKept effect);

        R readAhead(ReadAhead effect);

        R readChart(ReadChart effect);

        R seek(Seek effect);

        R stopSeeking(StopSeeking effect);

        R quit(Quit effect);

        R suspend(Suspend effect);

        R redraw(Redraw effect);
    }

    <R> R fold(Cases<R> cases);

    /** Carry out a change; answered by {@link Message.Kept}, {@link Message.Refused} or {@link Message.Failed}. */
    record CarryOut(Change change) implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.carryOut(this);
        }
    }

    /** Take back the newest steps; answered by {@link Message.Kept} or {@link Message.Failed}. */
    record TakeBack(int steps) implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.takeBack(this);
        }
    }

    /** Put back the steps last taken back; answered by {@link Message.Kept} or {@link Message.Failed}. */
    record PutBack(int steps) implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.putBack(this);
        }
    }

    /**
     * Name some of the journal's steps; answered by {@link Message.StepsListed}.
     *
     * @param from how many of the newest to pass over; those taken back are newer than all others
     */
    record ListSteps(int from, int howMany) implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.listSteps(this);
        }
    }

    /** Read what the first picture did without; answered by {@link Message.Changed}. */
    record ReadRest() implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.readRest(this);
        }
    }

    /** Make a journal in the usual place and open it; answered by {@link Message.Opened}. */
    record BeginJournal(Colours colours) implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.beginJournal(this);
        }
    }

    /** Open a spare copy of the demo; answered by {@link Message.Opened}. */
    record SeeDemo(Colours colours) implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.seeDemo(this);
        }
    }

    /** Open the journal in a file; answered by {@link Message.Opened} or {@link Message.Failed}. */
    record OpenJournal(String file, Colours colours) implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.openJournal(this);
        }
    }

    /** Read the table in a file; answered by {@link Message.TableRead} or {@link Message.Failed}. */
    record ReadTable(String file) implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.readTable(this);
        }
    }

    /**
     * Look at the file of a thermometer; answered by {@link Message.LoggerLookedAt} or {@link Message.Failed}.
     *
     * @param told what the grower says of it
     */
    record LookAtLogger(String file, LoggerFormat told, Id<Place> place) implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.lookAtLogger(this);
        }
    }

    /**
     * Take in the readings of a thermometer's file; answered by {@link Message.TakingIn} from time to time, and in the end by
     * {@link Message.Kept} or {@link Message.NotTakenIn}.
     */
    record TakeInLogger(String file, LoggerFormat told, Id<Place> place) implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.takeInLogger(this);
        }
    }

    /** Stop what {@link TakeInLogger} began, at once; nothing of it stays. */
    record StopTakingIn() implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.stopTakingIn(this);
        }
    }

    /**
     * Average over how far things may scatter, which takes up to some seconds of work and nothing from the journal;
     * answered by {@link Message.Averaged}.
     */
    record Average(Trials trials) implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.average(this);
        }

        /** Does the work. */
        public Message answer() {
            return Message.Averaged.of(trials);
        }
    }

    /** Work out what the next page will want, while nobody waits for it; not answered. */
    record ReadAhead(Almanac almanac) implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.readAhead(this);
        }

        /** Does the work. */
        public void work() {
            almanac.readAhead();
        }
    }

    /** Read what was foretold of all pots, and hold it against the days that came; answered by {@link Message.KeptRead}. */
    record ReadKept(Journal journal, LocalDate today) implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.readKept(this);
        }

        /** Does the second half. */
        public Message answer(List<KeptWindow> kept) {
            return new Message.KeptRead(Foretellings.of(journal, kept, today));
        }
    }

    /** Read how warm a place was over a stretch of time, in columns of equal length; answered by {@link Message.ChartRead}. */
    record ReadChart(Id<Place> place, Instant from, Instant toExclusive, int columns) implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.readChart(this);
        }
    }

    /**
     * Look for the best plan, which takes up to some seconds of work and nothing from the journal, and nothing else waits for it; answered by
     * {@link Message.FoundSoFar} from time to time, and in the end by {@link Message.Sought}. Another search ends it.
     *
     * @param turn which search it is; the answers say so
     */
    record Seek(int turn, Planning planning, Rule rule) implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.seek(this);
        }

        /**
         * Does the work.
         *
         * @param wantsStop asked often on the way
         * @param soFar is told each plan that is better than those before
         */
        public Message answer(BooleanSupplier wantsStop, Consumer<Message> soFar) {
            Seeking.Progress progress = new Seeking.Progress() {
                @Override
                public boolean wantsStop() {
                    return wantsStop.getAsBoolean();
                }

                @Override
                public void found(Seeking.Found best) {
                    soFar.accept(new Message.FoundSoFar(turn, best));
                }
            };
            return new Message.Sought(turn, Seeking.seek(planning, rule, Seeking.USUAL_EFFORT, progress));
        }
    }

    /**
     * End what {@link Seek} began, or is about to; what it found by then is its answer.
     *
     * @param turn which search it is; those before it end, too
     */
    record StopSeeking(int turn) implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.stopSeeking(this);
        }
    }

    /** Leave the program; everything is kept already. */
    record Quit() implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.quit(this);
        }
    }

    /** Go to the shell that started the program, and come back. */
    record Suspend() implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.suspend(this);
        }
    }

    /** Draw everything anew, whatever is thought to stand on the screen. */
    record Redraw() implements Effect {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.redraw(this);
        }
    }
}
