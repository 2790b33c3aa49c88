// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.Place.Hazard;
import sillbook.model.Temperature;
import sillbook.reckon.dates.DaySpan;
import sillbook.reckon.dates.Warning;

/** Something the grower should know of a pot: its figures, not its sentence. */
public sealed interface Concern {

    /** One answer for each case. */
    interface Cases<R> {
        R ofSchedule(OfSchedule concern);

        R tooWarmHere(TooWarmHere concern);

        R notCold(NotCold concern);

        R coldEnds(ColdEnds concern);

        R coldToRoot(ColdToRoot concern);

        R heldBack(HeldBack concern);

        R warmSpell(WarmSpell concern);

        R frozen(Frozen concern);

        R pastUseBy(PastUseBy concern);

        R besideHazard(BesideHazard concern);

        R assumedFigures(AssumedFigures concern);
    }

    <R> R fold(Cases<R> cases);

    /** A short, stable name. */
    String code();

    /** What the schedule itself warns of; varieties are counted as the pot's plantings are. */
    record OfSchedule(Warning warning) implements Concern {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.ofSchedule(this);
        }

        @Override
        public String code() {
            return warning.code();
        }
    }

    /**
     * A tall shoot before its weeks are had: it should be moved colder, not in.
     *
     * @param daysShort days of cold still missing
     * @param colder a colder place with room; empty when none is known
     */
    record TooWarmHere(Optional<Id<Place>> place, Length shoot, int daysShort, Optional<Destination> colder)
            implements Concern {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.tooWarmHere(this);
        }

        @Override
        public String code() {
            return "too-warm-here";
        }
    }

    /**
     * Put in the cold where, by the place's days, it is not cold now.
     *
     * @param from the next day it is cold there
     */
    record NotCold(Id<Place> place, LocalDate from) implements Concern {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.notCold(this);
        }

        @Override
        public String code() {
            return "not-cold";
        }
    }

    /**
     * The place's cold days end before the pot has had its weeks.
     *
     * @param endsOn the first day that is no longer cold there
     * @param daysShort days of cold that will still be missing then
     */
    record ColdEnds(Id<Place> place, LocalDate endsOn, int daysShort) implements Concern {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.coldEnds(this);
        }

        @Override
        public String code() {
            return "cold-ends";
        }
    }

    /**
     * Its first weeks in the cold were so near freezing that roots hardly grow.
     *
     * @param highest the warmest it is known to have been there then
     */
    record ColdToRoot(Id<Place> place, Temperature highest) implements Concern {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.coldToRoot(this);
        }

        @Override
        public String code() {
            return "cold-to-root";
        }
    }

    /**
     * By the calendar it would have had more cold than its places gave it.
     *
     * @param place where it lost most
     * @param daysLost by how many days its places gave less than the calendar would have
     * @param ranWarm whether most was lost to warmth, else to cold near or below freezing
     * @param enoughOn the day its weeks are likely had
     */
    record HeldBack(Id<Place> place, int daysLost, boolean ranWarm, int daysIn, int daysColdEnough, LocalDate enoughOn)
            implements Concern {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.heldBack(this);
        }

        @Override
        public String code() {
            return "held-back";
        }
    }

    /**
     * Its cold was broken by warmth for more than a day on end; what it had is not taken off.
     *
     * @param above the warmth from which on nothing counts
     * @param highest the warmest that was read there on those days
     */
    record WarmSpell(Id<Place> place, DaySpan days, Temperature above, Temperature highest) implements Concern {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.warmSpell(this);
        }

        @Override
        public String code() {
            return "warm-spell";
        }
    }

    /**
     * It stood through frost. At some degrees below 0 C it is to be kept cold, and looked after.
     *
     * @param lowest the coldest that was read there on those days
     * @param coldestOn the day of that
     * @param on the last of them
     * @param lookOn the day to look whether its bulbs have gone soft; empty where the frost was slight
     */
    record Frozen(Id<Place> place, Temperature lowest, LocalDate coldestOn, LocalDate on, Optional<LocalDate> lookOn)
            implements Concern {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.frozen(this);
        }

        @Override
        public String code() {
            return lookOn.isPresent() ? "frozen" : "frost";
        }
    }

    /** Still in the cold after its use-by day. */
    record PastUseBy(LocalDate useBy) implements Concern {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.pastUseBy(this);
        }

        @Override
        public String code() {
            return "past-use-by";
        }
    }

    /** It stands with food, or with ripening fruit. */
    record BesideHazard(Id<Place> place, Hazard hazard) implements Concern {
        /** The hazards that are told of beside pots or waiting bulbs, in this order. */
        static final List<Hazard> TOLD = List.of(Hazard.FRUIT, Hazard.ROTTING_BULBS, Hazard.FUMES, Hazard.FOOD);

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.besideHazard(this);
        }

        @Override
        public String code() {
            return "beside-hazard";
        }
    }

    /** The handbook does not know this kind; figures for hardy bulbs are taken for granted. */
    record AssumedFigures(Kind kind) implements Concern {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.assumedFigures(this);
        }

        @Override
        public String code() {
            return "assumed-figures";
        }
    }
}
