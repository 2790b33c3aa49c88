// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;

/** What happened. On an event it has a day and a subject. */
public sealed interface Happening {

    /** One answer for each sort of happening. */
    interface Cases<R> {
        R potted(Potted happening);

        R moved(Moved happening);

        R checked(Checked happening);

        R flowered(Flowered happening);

        R cared(Cared happening);

        R closed(Closed happening);

        R putOff(PutOff happening);

        R leftOut(LeftOut happening);

        R jotted(Jotted happening);

        R displayed(Displayed happening);
    }

    <R> R fold(Cases<R> cases);

    /** The entries it names. */
    default Stream<Id<?>> refersTo() {
        return Stream.empty();
    }

    /** Whether it can only happen to a pot that is potted. */
    default boolean needsPotting() {
        return false;
    }

    /** The pot was potted and watered in. */
    record Potted() implements Happening {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.potted(this);
        }
    }

    /** The pot was carried to a place, and is in that stage from then on. */
    record Moved(Id<Place> place, Stage stage) implements Happening {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.moved(this);
        }

        @Override
        public boolean needsPotting() {
            return true;
        }

        @Override
        public Stream<Id<?>> refersTo() {
            return Stream.of(place);
        }
    }

    /** The pot was looked at. */
    record Checked(Findings findings) implements Happening {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.checked(this);
        }

        @Override
        public boolean needsPotting() {
            return true;
        }
    }

    /** The pot, or one variety in a mixed one, came to a point of its bloom. */
    record Flowered(BloomPoint point, Optional<Id<Variety>> variety) implements Happening {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.flowered(this);
        }

        @Override
        public boolean needsPotting() {
            return true;
        }

        @Override
        public Stream<Id<?>> refersTo() {
            return variety.stream().map(id -> id);
        }
    }

    /** Something was done to the pot that changes no stage. */
    record Cared(Care care) implements Happening {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.cared(this);
        }

        @Override
        public boolean needsPotting() {
            return true;
        }
    }

    /** The pot's winter ended. */
    record Closed(End end, String note) implements Happening {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.closed(this);
        }
    }

    /** A job was put off to another day. */
    record PutOff(JobKind job, LocalDate until, String reason) implements Happening {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.putOff(this);
        }
    }

    /** A job is not going to be done. */
    record LeftOut(JobKind job, String reason) implements Happening {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.leftOut(this);
        }
    }

    /** A note in the grower's words. */
    record Jotted(String text) implements Happening {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.jotted(this);
        }
    }

    /**
     * The pot was made part of a display of several pots, or taken out of the one it was part of.
     *
     * @param display what the display is called; empty when it was taken out
     */
    record Displayed(Optional<String> display) implements Happening {
        public Displayed {
            display = display.filter(name -> !name.isBlank());
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.displayed(this);
        }

        @Override
        public boolean needsPotting() {
            return true;
        }
    }

    /** Points of a bloom. */
    enum BloomPoint {
        FIRST_FLOWER,
        FULL_BLOOM,
        PAST_BLOOM
    }

    /** Things done to a pot. */
    enum Care {
        WATERED,
        TOPPED_UP,
        WATER_CHANGED,
        TIPPED_OUT,
        SPIRIT_IN_WATER,
        FED,
        TURNED,
        STAKED,
        HOODED,
        UNHOODED,
        REPOTTED,
        PLANTED_OUT,
        INTO_OUTER_POT,
        LEAVES_CUT,
        /** Put to its yearly rest: no longer watered, and cool. */
        RESTED,
        /** Watered again and warm, after its rest or without one: a new winter of a plant that lives on. */
        WOKEN,
        /** Put outdoors for the summer. */
        OUTDOORS,
        BROUGHT_IN,
        /** Dug up from where it was buried, to look at it. */
        LIFTED,
        /** A trench was dug, for the pots to stand in. */
        DUG,
        /** The ground of a trench was covered for the winter. */
        COVERED
    }

    /** How a pot's winter ends. */
    enum End {
        FINISHED,
        FAILED,
        SOLD,
        GIVEN,
        BROKEN,
        USED_UP
    }
}
