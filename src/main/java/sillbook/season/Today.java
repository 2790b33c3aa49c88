// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.Band;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Place.Hazard;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.Subject;
import sillbook.model.Temperature;
import sillbook.reckon.dates.DaySpan;
import sillbook.reckon.dates.Window;
import sillbook.season.PlaceClimate.Drift;
import sillbook.season.PlaceClimate.Strayed;
import sillbook.season.PlaceClimate.Trial;

/**
 * What a day asks for and shows, in the order it is read.
 *
 * @param late the most days late first
 * @param ready the nearest use-by first
 * @param due for today, but for looks at roots that a round of today settles
 * @param ground what is to be done at trenches, today or within 14 days, the nearest first
 * @param soon within 14 days, or later than that only because its pots are held back, the nearest first; what only waits for flowers is in {@code opening} and {@code inBloom}
 * @param later all that is due after that, the nearest first
 * @param opening pots to come into bloom next, the likeliest first
 * @param afterThat what comes after the 14 days, by weeks that end on a Sunday
 * @param done what was written down today, the first first
 */
public record Today(
        LocalDate day,
        Season season,
        List<Job.OfPots> late,
        List<Job.OfPots> ready,
        List<Job.OfPots> due,
        List<Job.Round> checks,
        Optional<Job.DailyCare> dailyCare,
        List<Job.OfGround> ground,
        List<Job.OfPots> soon,
        List<Job.OfPots> later,
        List<Blooming> inBloom,
        List<Opening> opening,
        List<Attention> places,
        List<Week> afterThat,
        List<Done> done) {

    /** How many days ahead {@code soon} looks. */
    public static final int SOON_DAYS = 14;

    public Today {
        late = List.copyOf(late);
        ready = List.copyOf(ready);
        due = List.copyOf(due);
        checks = List.copyOf(checks);
        ground = List.copyOf(ground);
        soon = List.copyOf(soon);
        later = List.copyOf(later);
        inBloom = List.copyOf(inBloom);
        opening = List.copyOf(opening);
        places = List.copyOf(places);
        afterThat = List.copyOf(afterThat);
        done = List.copyOf(done);
    }

    /**
     * A pot, or those of a batch that agree, in flower.
     *
     * @param dayOfBloom 1 on the day of the first flower
     * @param outOf how many days it is likely to flower in all
     * @param job what its bloom asks for besides what is due today: to stand cooler, or to be past one day
     */
    public record Blooming(List<Id<Pot>> pots, int dayOfBloom, Optional<Integer> outOf, Optional<Job.OfPots> job) {
        public Blooming {
            pots = List.copyOf(pots);
        }
    }

    /** Pots that come into bloom next. */
    public record Opening(List<Id<Pot>> pots, Window firstFlower) {
        public Opening {
            pots = List.copyOf(pots);
        }
    }

    /** Something about a place that wants attention. */
    public sealed interface Attention {

        /** One answer for each case. */
        interface Cases<R> {
            R overRoom(OverRoom attention);

            R hazard(BesideHazard attention);

            R unchecked(Unchecked attention);

            R notCold(NotCold attention);

            R dryLong(DryLong attention);

            R outOfBand(OutOfBand attention);

            R leavingBand(LeavingBand attention);

            R unread(Unread attention);

            R frost(FrostThere attention);

            R trial(OnTrial attention);
        }

        <R> R fold(Cases<R> cases);

        Id<Place> place();

        /** A short, stable name. */
        String code();

        /** More pots than find room. */
        record OverRoom(Id<Place> place, int pots, int room) implements Attention {
            @Override
            public String code() {
                return "over-room";
            }

            @Override
            public <R> R fold(Cases<R> cases) {
                return cases.overRoom(this);
            }
        }

        /** Pots, or dry bulbs, lie with food or with ripening fruit. */
        record BesideHazard(Id<Place> place, int pots, int bulbs, Hazard hazard) implements Attention {
            @Override
            public String code() {
                return "beside-hazard";
            }

            @Override
            public <R> R fold(Cases<R> cases) {
                return cases.hazard(this);
            }
        }

        /** No round for more than twice its interval. */
        record Unchecked(Id<Place> place, LocalDate last, int everyDays) implements Attention {
            @Override
            public String code() {
                return "unchecked";
            }

            @Override
            public <R> R fold(Cases<R> cases) {
                return cases.unchecked(this);
            }
        }

        /** Pots that still need cold stand here, and by its days it is not cold. */
        record NotCold(Id<Place> place, int pots) implements Attention {
            @Override
            public String code() {
                return "not-cold";
            }

            @Override
            public <R> R fold(Cases<R> cases) {
                return cases.notCold(this);
            }
        }

        /**
         * Bulbs have been cold and dry here for about as long as does them good.
         *
         * @param potBy the day from which more of it counts for nothing; may be past
         */
        record DryLong(Id<Place> place, WaitingBulbs bulbs, LocalDate potBy) implements Attention {
            @Override
            public String code() {
                return "dry-long";
            }

            @Override
            public <R> R fold(Cases<R> cases) {
                return cases.dryLong(this);
            }
        }

        /**
         * Pots stand where it is too warm or too cold.
         *
         * @param last the newest reading there; empty where only lowest and highest were read
         */
        record OutOfBand(Id<Place> place, Strayed strayed, Band band, Optional<Temperature> last) implements Attention {
            @Override
            public String code() {
                return "out-of-band";
            }

            @Override
            public <R> R fold(Cases<R> cases) {
                return cases.outOfBand(this);
            }
        }

        /** Pots stand where it will soon be too warm or too cold, if it goes on like this. */
        record LeavingBand(Id<Place> place, Drift drift, Band band) implements Attention {
            @Override
            public String code() {
                return "leaving-band";
            }

            @Override
            public <R> R fold(Cases<R> cases) {
                return cases.leavingBand(this);
            }
        }

        /** Pots stand in the cold where nobody has read for longer than is bridged. */
        record Unread(Id<Place> place, LocalDate last, int days) implements Attention {
            @Override
            public String code() {
                return "unread";
            }

            @Override
            public <R> R fold(Cases<R> cases) {
                return cases.unread(this);
            }
        }

        /**
         * There was frost where pots stand.
         *
         * @param pots those that stood there when it froze, and stand there still
         * @param coldestOn the day of the lowest
         * @param on the last day of it
         * @param lookOn the day to look whether they have gone soft; empty where it was slight
         */
        record FrostThere(
                Id<Place> place,
                int pots,
                Temperature lowest,
                LocalDate coldestOn,
                LocalDate on,
                Optional<LocalDate> lookOn)
                implements Attention {
            @Override
            public String code() {
                return lookOn.isPresent() ? "frozen" : "frost";
            }

            @Override
            public <R> R fold(Cases<R> cases) {
                return cases.frost(this);
            }
        }

        /** No pots stand there yet, and it is read whether it will do. */
        record OnTrial(Id<Place> place, Trial trial, Band band) implements Attention {
            @Override
            public String code() {
                return "trial";
            }

            @Override
            public <R> R fold(Cases<R> cases) {
                return cases.trial(this);
            }
        }
    }

    /** One week of what comes after the next 14 days; the first may be cut short. */
    public record Week(DaySpan days, List<Coming> coming) {
        public Week {
            coming = List.copyOf(coming);
        }
    }

    /** What is expected of some pots in a week. */
    public record Coming(Sort sort, List<Id<Pot>> pots) {
        public Coming {
            pots = List.copyOf(pots);
        }

        /** What is expected. */
        public enum Sort {
            POT_UP,
            READY,
            USE_BY,
            TO_WARM_ROOM,
            FIRST_FLOWER,
            PAST_BLOOM
        }
    }

    /** One thing written down on this day, for all the subjects it was written for at once. */
    public record Done(Instant writtenAt, List<Subject> subjects, Happening what) {
        public Done {
            subjects = List.copyOf(subjects);
        }
    }
}
