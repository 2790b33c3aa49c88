// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Happening.End;
import sillbook.model.Stage;

/** Where a pot is in its winter, each case with exactly the dates it has. */
public sealed interface Standing {

    /** One answer for each case. */
    interface Cases<R> {
        R waiting(Waiting standing);

        R potted(Potted standing);

        R inCold(InCold standing);

        R inCoolRoom(InCoolRoom standing);

        R inWarmRoom(InWarmRoom standing);

        R inBloom(InBloom standing);

        R afterBloom(AfterBloom standing);

        R done(Done standing);
    }

    <R> R fold(Cases<R> cases);

    /** The stage, its dates left aside. */
    Stage stage();

    /** The day it came to stand so; empty for one that waits. */
    Optional<Day> begun();

    /** Its bulbs wait to be potted. */
    record Waiting() implements Standing {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.waiting(this);
        }

        @Override
        public Stage stage() {
            return Stage.WAITING;
        }

        @Override
        public Optional<Day> begun() {
            return Optional.empty();
        }
    }

    /** Potted, but not put anywhere yet. */
    record Potted(Day since) implements Standing {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.potted(this);
        }

        @Override
        public Stage stage() {
            return Stage.WAITING;
        }

        @Override
        public Optional<Day> begun() {
            return Optional.of(since);
        }
    }

    /** Put in the cold; whether it is cold there yet is for {@link ColdTime} to say. */
    record InCold(Day since) implements Standing {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.inCold(this);
        }

        @Override
        public Stage stage() {
            return Stage.COLD;
        }

        @Override
        public Optional<Day> begun() {
            return Optional.of(since);
        }
    }

    record InCoolRoom(Day since) implements Standing {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.inCoolRoom(this);
        }

        @Override
        public Stage stage() {
            return Stage.COOL_ROOM;
        }

        @Override
        public Optional<Day> begun() {
            return Optional.of(since);
        }
    }

    record InWarmRoom(Day since) implements Standing {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.inWarmRoom(this);
        }

        @Override
        public Stage stage() {
            return Stage.WARM_ROOM;
        }

        @Override
        public Optional<Day> begun() {
            return Optional.of(since);
        }
    }

    /** From the first flower of the first variety in it. */
    record InBloom(Day since) implements Standing {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.inBloom(this);
        }

        @Override
        public Stage stage() {
            return Stage.IN_BLOOM;
        }

        @Override
        public Optional<Day> begun() {
            return Optional.of(since);
        }
    }

    /** From the day the last variety in it was past bloom. */
    record AfterBloom(Day since) implements Standing {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.afterBloom(this);
        }

        @Override
        public Stage stage() {
            return Stage.AFTER_BLOOM;
        }

        @Override
        public Optional<Day> begun() {
            return Optional.of(since);
        }
    }

    /**
     * Its winter is over.
     *
     * @param note in the grower's words; may be empty
     */
    record Done(End end, Day since, String note) implements Standing {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.done(this);
        }

        @Override
        public Stage stage() {
            return Stage.DONE;
        }

        @Override
        public Optional<Day> begun() {
            return Optional.of(since);
        }
    }
}
