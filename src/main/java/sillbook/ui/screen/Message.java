// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import sillbook.model.ChartColumn;
import sillbook.plan.Seeking;
import sillbook.reckon.effects.Effects;
import sillbook.season.past.Foretellings;
import sillbook.season.past.Merits;
import sillbook.season.past.Trait;
import sillbook.season.past.Trials;
import sillbook.ui.draw.Key;
import sillbook.ui.draw.Size;
import sillbook.words.list.Table;
import sillbook.words.logger.Looked;

/** What the shell tells the screens, one thing after another. */
public sealed interface Message {

    /** One answer for each sort of message. */
    interface Cases<R> {
        R pressed(Pressed message);

        R pasted(Pasted message);

        R resized(Resized message);

        R dayBegan(DayBegan message);

        R changed(Changed message);

        R kept(Kept message);

        R refused(Refused message);

        R failed(Failed message);

        R stepsListed(StepsListed message);

        R opened(Opened message);

        R tableRead(TableRead message);

        R loggerLookedAt(LoggerLookedAt message);

        R takingIn(TakingIn message);

        R notTakenIn(NotTakenIn message);

        R averaged(Averaged message);

        R keptRead(KeptRead message);

        R chartRead(ChartRead message);

        R foundSoFar(FoundSoFar message);

        R sought(Sought message);
    }

    <R> R fold(Cases<R> cases);

    /** A key was pressed. */
    record Pressed(Key key) implements Message {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.pressed(this);
        }
    }

    /** Text was pasted. */
    record Pasted(String text) implements Message {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.pasted(this);
        }
    }

    /** The window has another size. */
    record Resized(Size size) implements Message {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.resized(this);
        }
    }

    /** Midnight has passed in the journal's zone. */
    record DayBegan(LocalDate today) implements Message {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.dayBegan(this);
        }
    }

    /** The journal changed elsewhere, or more of it has been read. */
    record Changed(Snapshot now) implements Message {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.changed(this);
        }
    }

    /**
     * What was asked for is kept: a change, or steps taken back or put back.
     *
     * @param sentence what was done, as it is told: {@code T4 into the cool room, stair window.}
     * @param wasBack whether steps were taken back or put back
     */
    record Kept(String sentence, boolean wasBack, Snapshot now) implements Message {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.kept(this);
        }
    }

    /** A change cannot be; nothing was altered. */
    record Refused(String sentence) implements Message {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.refused(this);
        }
    }

    /** Something asked for did not come about, as when the disk is full; nothing was altered. */
    record Failed(String sentence) implements Message {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.failed(this);
        }
    }

    /** The steps asked for, the newest first. */
    record StepsListed(List<TakenStep> steps) implements Message {
        public StepsListed {
            steps = List.copyOf(steps);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.stepsListed(this);
        }
    }

    /** The table that was asked for, as it stands in that file. */
    record TableRead(String file, Table table) implements Message {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.tableRead(this);
        }
    }

    /** The file of a thermometer was looked at. */
    record LoggerLookedAt(Looked looked) implements Message {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.loggerLookedAt(this);
        }
    }

    /**
     * So many readings are taken in by now.
     *
     * @param all how many there will be, as far as that is known
     * @param secondsLeft how long it will take yet; empty while that cannot be told
     */
    record TakingIn(long done, long all, OptionalLong secondsLeft) implements Message {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.takingIn(this);
        }
    }

    /** Nothing was taken in. */
    record NotTakenIn(String sentence) implements Message {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.notTakenIn(this);
        }
    }

    /**
     * How everything stands by the answer that was averaged.
     *
     * @param trials those that were asked of
     */
    record Averaged(Trials trials, Map<Trait, Merits> merits) implements Message {
        public Averaged {
            merits = Map.copyOf(merits);
        }

        static Averaged of(Trials trials) {
            Optional<Effects> effects = trials.averaged();
            Map<Trait, Merits> merits = new EnumMap<>(Trait.class);
            for (Trait trait : Trait.values()) {
                merits.put(trait, trials.merits(trait, effects));
            }
            return new Averaged(trials, merits);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.averaged(this);
        }
    }

    /** What was foretold, held against the days that came. */
    record KeptRead(Foretellings foretellings) implements Message {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.keptRead(this);
        }
    }

    /**
     * How warm a place was.
     *
     * @param asked what was asked for
     * @param columns those of which anything is known
     */
    record ChartRead(Effect.ReadChart asked, List<ChartColumn> columns) implements Message {
        public ChartRead {
            columns = List.copyOf(columns);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.chartRead(this);
        }
    }

    /**
     * A plan was found that is better than those before.
     *
     * @param turn which search it is of
     */
    record FoundSoFar(int turn, Seeking.Found found) implements Message {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.foundSoFar(this);
        }
    }

    /** A search for the best plan is over. */
    record Sought(int turn, Seeking.Outcome outcome) implements Message {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.sought(this);
        }
    }

    /** Another journal is open now. */
    record Opened(Copy copy, Snapshot now) implements Message {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.opened(this);
        }
    }
}
