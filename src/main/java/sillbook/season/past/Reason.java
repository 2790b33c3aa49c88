// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Purchase.Money;
import sillbook.model.Variety.Scent;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Suiting;

/** What speaks for a variety or against it when bulbs are chosen. Each is worked out anew from the journal. */
public sealed interface Reason {

    /** One answer for each sort of reason. */
    interface Cases<R> {
        R fillsGap(FillsGap reason);

        R didWell(DidWell reason);

        R failedOnlyAt(FailedOnlyAt reason);

        R floppy(Floppy reason);

        R neverTried(NeverTried reason);

        R onePotOnly(OnePotOnly reason);

        R onlyAt(OnlyAt reason);

        R scented(HasScent reason);

        R needsNoCold(NeedsNoCold reason);

        R suitsPots(SuitsPots reason);

        R cheap(Cheap reason);
    }

    <R> R fold(Cases<R> cases);

    /**
     * It was in flower in an earlier winter when in the last one nothing was.
     *
     * @param days of the last winter
     */
    record FillsGap(DaySpan days) implements Reason {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.fillsGap(this);
        }
    }

    /** Each of the last winters in which it was judged, two or more running, had a mean of 4 or better. */
    record DidWell(int winters) implements Reason {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.didWell(this);
        }
    }

    /** It failed there more than once, nowhere else, and did not fail elsewhere though it was tried. */
    record FailedOnlyAt(Id<Place> place, int times) implements Reason {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.failedOnlyAt(this);
        }
    }

    /** It was floppy in that many winters, two or more. */
    record Floppy(int winters) implements Reason {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.floppy(this);
        }
    }

    /** No pot of it was ever judged, nor does one grow. */
    record NeverTried() implements Reason {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.neverTried(this);
        }
    }

    /** One pot was judged: too little to go by. */
    record OnePotOnly() implements Reason {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.onePotOnly(this);
        }
    }

    /** All pots that were judged, two or more, had their cold there: the place may have done it. */
    record OnlyAt(Id<Place> place) implements Reason {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.onlyAt(this);
        }
    }

    record HasScent(Scent scent) implements Reason {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.scented(this);
        }
    }

    /** It takes no room in the cold. */
    record NeedsNoCold() implements Reason {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.needsNoCold(this);
        }
    }

    record SuitsPots(Suiting suiting) implements Reason {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.suitsPots(this);
        }
    }

    /** A bulb of it costs no more than the lowest third of those that have a price. */
    record Cheap(Money each) implements Reason {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.cheap(this);
        }
    }
}
