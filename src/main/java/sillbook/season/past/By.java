// SPDX-License-Identifier: Apache-2.0
package sillbook.season.past;

import java.util.Optional;
import java.util.function.Function;

/** What pots can be counted by. */
public enum By {
    VARIETY(grown -> Optional.of(new Shared.OfVariety(grown.planting().variety()))),
    PURCHASE(grown -> grown.planting().purchase().map(Shared.OfPurchase::new)),
    POTTING_MIX(grown -> grown.pot().pottingMix().map(Shared.OfPottingMix::new)),
    /** Where they had their cold. */
    PLACE(grown -> grown.coldAt().map(Shared.OfPlace::new));

    @SuppressWarnings("ImmutableEnumChecker") // the functions above hold nothing
    private final Function<Grown, Optional<? extends Shared>> shared;

    By(Function<Grown, Optional<? extends Shared>> shared) {
        this.shared = shared;
    }

    /** Which one it is of a pot; empty where nobody wrote it. */
    Optional<Shared> of(Grown grown) {
        return shared.apply(grown).map(Function.identity());
    }
}
