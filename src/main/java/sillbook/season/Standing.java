// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

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
    }

    /** Potted, but not put anywhere yet. */
    record Potted(Day on) implements Standing {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.potted(this);
        }

        @Override
        public Stage stage() {
            return Stage.WAITING;
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
    }

    /** From the first flower of the first variety in it. */
    record InBloom(Day firstFlower) implements Standing {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.inBloom(this);
        }

        @Override
        public Stage stage() {
            return Stage.IN_BLOOM;
        }
    }

    /** From the day the last variety in it was past bloom. */
    record AfterBloom(Day pastBloom) implements Standing {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.afterBloom(this);
        }

        @Override
        public Stage stage() {
            return Stage.AFTER_BLOOM;
        }
    }

    /**
     * Its winter is over.
     *
     * @param note in the grower's words; may be empty
     */
    record Done(End end, Day on, String note) implements Standing {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.done(this);
        }

        @Override
        public Stage stage() {
            return Stage.DONE;
        }
    }
}
