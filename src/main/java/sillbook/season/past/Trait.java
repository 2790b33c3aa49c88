// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import sillbook.model.Journal;

/** In what pots differ that may tell why they did well. */
public enum Trait {
    KIND {
        @Override
        Influence of(Grown grown, Journal journal) {
            return new Influence.OfKind(
                    journal.varieties().get(grown.planting().variety()).kind());
        }
    },
    VARIETY {
        @Override
        Influence of(Grown grown, Journal journal) {
            return new Influence.OfVariety(grown.planting().variety());
        }
    },
    MIX {
        @Override
        Influence of(Grown grown, Journal journal) {
            return new Influence.OfMix(grown.pot().pottingMix());
        }
    },
    PLACE {
        @Override
        Influence of(Grown grown, Journal journal) {
            return new Influence.OfPlace(grown.coldAt());
        }
    },
    WINTER {
        @Override
        Influence of(Grown grown, Journal journal) {
            return new Influence.OfWinter(grown.winter());
        }
    };

    abstract Influence of(Grown grown, Journal journal);
}
