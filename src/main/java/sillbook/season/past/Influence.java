// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Kind;
import sillbook.model.Place;
import sillbook.model.PottingMix;
import sillbook.model.Season;
import sillbook.model.Variety;

/** One of the things that may have made a pot do well or badly. */
public sealed interface Influence {
    /** One answer for each sort. */
    interface Cases<R> {
        R kind(Kind kind);

        R variety(Id<Variety> variety);

        R mix(Optional<Id<PottingMix>> mix);

        R place(Optional<Id<Place>> place);

        R winter(Season winter);
    }

    <R> R fold(Cases<R> cases);

    /** The same as what pots are counted by; empty of kinds and winters, and of what nobody wrote. */
    default Optional<Shared> shared() {
        return Optional.empty();
    }

    /** Whether it was written what it was. What was not is taken out like the rest, and not listed. */
    default boolean isKnown() {
        return true;
    }

    /** The kind of bulb. */
    record OfKind(Kind kind) implements Influence {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.kind(kind);
        }
    }

    /** The variety. */
    record OfVariety(Id<Variety> variety) implements Influence {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.variety(variety);
        }

        @Override
        public Optional<Shared> shared() {
            return Optional.of(new Shared.OfVariety(variety));
        }
    }

    /** The potting mix; empty where none was written, or none was needed. */
    record OfMix(Optional<Id<PottingMix>> mix) implements Influence {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.mix(mix);
        }

        @Override
        public Optional<Shared> shared() {
            return mix.map(Shared.OfPottingMix::new);
        }

        @Override
        public boolean isKnown() {
            return mix.isPresent();
        }
    }

    /** Where it stood longest in the cold; empty where it had none, or nobody wrote the place. */
    record OfPlace(Optional<Id<Place>> place) implements Influence {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.place(place);
        }

        @Override
        public Optional<Shared> shared() {
            return place.map(Shared.OfPlace::new);
        }

        @Override
        public boolean isKnown() {
            return place.isPresent();
        }
    }

    /** The winter. */
    record OfWinter(Season winter) implements Influence {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.winter(winter);
        }
    }
}
