// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import sillbook.season.Today.Attention;

/** How grave what is said of places is (our judgement): what harms pots now, then what may, then what is only not known. */
enum Gravity {
    FREEZES,
    OUT_OF_THE_COLD,
    CHANGES,
    UNREAD,
    STANDS_BADLY,
    UNCHECKED,
    BESIDE_HAZARD,
    ON_TRIAL;

    static Gravity of(Attention attention) {
        return attention.fold(OfEach.CASES);
    }

    private enum OfEach implements Attention.Cases<Gravity> {
        CASES;

        @Override
        public Gravity frost(Attention.FrostThere attention) {
            return attention.lookOn().isPresent() ? FREEZES : CHANGES;
        }

        @Override
        public Gravity outOfBand(Attention.OutOfBand attention) {
            return OUT_OF_THE_COLD;
        }

        @Override
        public Gravity notCold(Attention.NotCold attention) {
            return OUT_OF_THE_COLD;
        }

        @Override
        public Gravity leavingBand(Attention.LeavingBand attention) {
            return CHANGES;
        }

        @Override
        public Gravity unread(Attention.Unread attention) {
            return UNREAD;
        }

        @Override
        public Gravity overRoom(Attention.OverRoom attention) {
            return STANDS_BADLY;
        }

        @Override
        public Gravity dryLong(Attention.DryLong attention) {
            return STANDS_BADLY;
        }

        @Override
        public Gravity hazard(Attention.BesideHazard attention) {
            return BESIDE_HAZARD;
        }

        @Override
        public Gravity unchecked(Attention.Unchecked attention) {
            return UNCHECKED;
        }

        @Override
        public Gravity trial(Attention.OnTrial attention) {
            return ON_TRIAL;
        }
    }
}
