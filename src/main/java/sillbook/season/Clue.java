// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import sillbook.handbook.FigureInForce;
import sillbook.model.Findings;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Temperature;

/** Something in the journal that speaks for a cause of failure, or says why nothing does. */
public sealed interface Clue {

    /** One answer for each sort of clue. */
    interface Cases<R> {
        R tooCold(TooCold clue);

        R tooWarm(TooWarm clue);

        R jotted(Jotted clue);

        R found(Found clue);

        R weeksIn(WeeksIn clue);

        R beside(Beside clue);

        R coolRoom(CoolRoom clue);

        R notChecked(NotChecked clue);

        R neverRead(NeverRead clue);

        R readBetween(ReadBetween clue);

        R nothingNoted(NothingNoted clue);

        R foundMoist(FoundMoist clue);

        R neverBroughtIn(NeverBroughtIn clue);

        R needsNoCold(NeedsNoCold clue);
    }

    <R> R fold(Cases<R> cases);

    /** Readings under the freezing point, all of them from while the pot stood there. */
    record TooCold(StoodThrough reading) implements Clue {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.tooCold(this);
        }
    }

    /**
     * Readings over the band of the cold, all of them from while the pot stood there.
     *
     * @param most the top of that band
     */
    record TooWarm(StoodThrough reading, Temperature most) implements Clue {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.tooWarm(this);
        }
    }

    /** A note on the pot, or on the place while the pot stood there. */
    record Jotted(LocalDate day, String text) implements Clue {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.jotted(this);
        }
    }

    /** A check of the pot. */
    record Found(LocalDate day, Findings findings) implements Clue {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.found(this);
        }
    }

    /**
     * The cold it had.
     *
     * @param daysNeeded after potting, dry cold taken off
     * @param figure what the need rests on
     * @param isOver whether it has left the cold
     */
    record WeeksIn(int daysIn, int daysColdEnough, int daysNeeded, FigureInForce figure, boolean isOver)
            implements Clue {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.weeksIn(this);
        }
    }

    /** Fruit is kept where it stood. */
    record Beside(Id<Place> place) implements Clue {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.beside(this);
        }
    }

    /**
     * The days it had between the cold and the warm room.
     *
     * @param broughtIn the day it left the cold
     */
    record CoolRoom(LocalDate broughtIn, int days, FigureInForce figure) implements Clue {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.coolRoom(this);
        }
    }

    /** Nobody wrote down whether it was dry or wet there. */
    record NotChecked(Id<Place> place, LocalDate since) implements Clue {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.notChecked(this);
        }
    }

    /** No thermometer was read at the cold places it stood at. */
    record NeverRead(List<Id<Place>> places) implements Clue {
        public NeverRead {
            places = List.copyOf(places);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.neverRead(this);
        }
    }

    /**
     * Readings there are, and none of them beyond the limit.
     *
     * @param isLow whether the limit is the least, else the most
     * @param since the first day they tell of
     */
    record ReadBetween(Temperature limit, boolean isLow, LocalDate since) implements Clue {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.readBetween(this);
        }
    }

    /** Nothing of the sort was noted where it stood. */
    record NothingNoted(List<Id<Place>> places) implements Clue {
        public NothingNoted {
            places = List.copyOf(places);
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.nothingNoted(this);
        }
    }

    /** Every check that told found it moist. */
    record FoundMoist(int checks) implements Clue {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.foundMoist(this);
        }
    }

    /** It never left the cold, or never was in it. */
    record NeverBroughtIn() implements Clue {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.neverBroughtIn(this);
        }
    }

    /** Nothing in it needs cold. */
    record NeedsNoCold() implements Clue {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.needsNoCold(this);
        }
    }
}
