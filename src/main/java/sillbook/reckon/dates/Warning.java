// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.dates;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Something the grower should know of a schedule: its figures, not its sentence. */
public sealed interface Warning {
    /** A short, stable name. */
    String code();

    <T> T fold(Cases<T> cases);

    /** One answer for each sort of warning. */
    interface Cases<T> {
        T tooLittleCold(TooLittleCold warning);

        T tooMuchCold(TooMuchCold warning);

        T late(Late warning);

        T tooLate(TooLate warning);

        T notReachable(NotReachable warning);

        T noPottedCold(NoPottedCold warning);

        T dryCredit(DryCredit warning);

        T noCommonTime(NoCommonTime warning);

        T coldAndNoCold(ColdAndNoCold warning);
    }

    /**
     * Brought out before the shortest published cold: buds may abort, or the flowers come late, short or not at all.
     *
     * @param pottedDays days in the cold since potting
     * @param creditedDays days of dry cold that count
     * @param need the whole need
     * @param leastPotted what had to follow potting, after any dry cold
     */
    record TooLittleCold(int pottedDays, int creditedDays, DayCount need, int leastPotted) implements Warning {
        @Override
        public String code() {
            return "too-little-cold";
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.tooLittleCold(this);
        }
    }

    /**
     * Longer cold than the longest published: the stems grow long and flop.
     *
     * @param days days of cold in all, dry ones included
     * @param limit the cold after which a longer wait is no longer advised
     * @param forWish whether it is not so yet, but would be if the pot were held back for its wish
     */
    record TooMuchCold(int days, DayCount need, Optional<Integer> limit, boolean forWish) implements Warning {
        @Override
        public String code() {
            return "too-much-cold";
        }

        public boolean isPastLimit() {
            return limit.filter(most -> days > most).isPresent();
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.tooMuchCold(this);
        }
    }

    /** Begun late for its wish: only with the shorter published lengths will it flower in time. */
    record Late(LocalDate wish, Window bloom) implements Warning {
        @Override
        public String code() {
            return "late";
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.late(this);
        }
    }

    /** Begun too late for its wish: it will not flower by then, even with the shortest published lengths. */
    record TooLate(LocalDate wish, Window bloom) implements Warning {
        @Override
        public String code() {
            return "too-late";
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.tooLate(this);
        }
    }

    /** No day of bringing it out would make this pot flower on the wished day. */
    record NotReachable(LocalDate wish, Window bloom, Judgement.Reason reason) implements Warning {
        @Override
        public String code() {
            return "not-reachable";
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.notReachable(this);
        }
    }

    /** A kind that needs cold gets none in its pot, where its roots would grow. */
    record NoPottedCold() implements Warning {
        @Override
        public String code() {
            return "no-potted-cold";
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.noPottedCold(this);
        }
    }

    /**
     * More dry cold than counts.
     *
     * @param dryDays days given
     * @param creditedDays days that are deducted
     */
    record DryCredit(int dryDays, int creditedDays) implements Warning {
        @Override
        public String code() {
            return "dry-credit";
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.dryCredit(this);
        }
    }

    /**
     * Bulbs in one pot of which one needs more cold than another bears.
     *
     * @param longestMinimum days the neediest must have
     * @param neediest where it stands among the needs given
     * @param shortestMaximum days the most easily over-chilled should have at most
     * @param mostEasilyOverChilled where that stands
     */
    record NoCommonTime(int longestMinimum, int neediest, int shortestMaximum, int mostEasilyOverChilled)
            implements Warning {
        @Override
        public String code() {
            return "no-common-time";
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.noCommonTime(this);
        }
    }

    /**
     * Bulbs in one pot of which some need cold and some none.
     *
     * @param withoutNeed where those that need none stand among the needs given
     */
    record ColdAndNoCold(List<Integer> withoutNeed) implements Warning {
        public ColdAndNoCold {
            withoutNeed = List.copyOf(withoutNeed);
        }

        @Override
        public String code() {
            return "cold-and-no-cold";
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.coldAndNoCold(this);
        }
    }
}
