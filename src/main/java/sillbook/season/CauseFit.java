// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static sillbook.model.Cause.COLD_SHORT;
import static sillbook.model.Cause.FROZEN;
import static sillbook.model.Cause.FRUIT_NEAR;
import static sillbook.model.Cause.RUSHED;
import static sillbook.model.Cause.TOO_WET_OR_DRY;
import static sillbook.model.Cause.WARM_SPELL;

import java.util.List;
import java.util.Optional;
import sillbook.handbook.Source;
import sillbook.model.Cause;
import sillbook.model.Failure;
import sillbook.model.Failure.Roots;
import sillbook.model.Failure.Sign;

/**
 * A sign, or what the roots were like, that fits a cause or speaks against it. It says what a cause can look like, not how likely it
 * is.
 *
 * @param sign the sign, where it is one
 * @param roots what the roots were like, where it is they
 * @param speaksFor whether it fits the cause; else it speaks against it
 * @param sources keys of the handbook's sources
 */
public record CauseFit(
        Optional<Sign> sign, Optional<Roots> roots, Cause cause, boolean speaksFor, List<String> sources) {
    /** Every pair once. */
    public static final List<CauseFit> TABLE = List.of(
            fits(Sign.LEAVES_ONLY, COLD_SHORT, "nmsu-2005", "cornell-review"),
            fits(Sign.LEAVES_ONLY, RUSHED, "rutgers-2014"),
            fits(Sign.LEAVES_ONLY, FRUIT_NEAR, "nmsu-2005", "wisconsin-dane"),
            fits(Sign.LEAVES_ONLY, WARM_SPELL, Source.COMMON_PRACTICE),
            fits(Sign.BROWN_BUD, FRUIT_NEAR, "nmsu-2005", "wisconsin-dane", "horticulture-blasting"),
            fits(Sign.BROWN_BUD, WARM_SPELL, "horticulture-blasting"),
            fits(Sign.BROWN_BUD, TOO_WET_OR_DRY, "horticulture-blasting"),
            fits(Sign.BROWN_BUD, RUSHED, "horticulture-blasting"),
            fits(Sign.BROWN_BUD, COLD_SHORT, "lublin"),
            fits(Sign.SHORT_AND_STUCK, COLD_SHORT, "cornell-review"),
            fits(Sign.SHORT_AND_STUCK, RUSHED, Source.COMMON_PRACTICE),
            fits(Sign.FLOPPY, RUSHED, Source.COMMON_PRACTICE),
            fits(Sign.FLOPPY, WARM_SPELL, Source.COMMON_PRACTICE),
            fits(Sign.ROT, TOO_WET_OR_DRY, Source.COMMON_PRACTICE),
            fits(Sign.ROT, FROZEN, "nmsu-2005"),
            fits(Sign.NOTHING_CAME, FROZEN, "nmsu-2005"),
            fits(Sign.NOTHING_CAME, TOO_WET_OR_DRY, Source.COMMON_PRACTICE),
            fits(Sign.NOTHING_CAME, COLD_SHORT, "cornell-review"),
            fits(Roots.NONE, TOO_WET_OR_DRY, "horticulture-blasting"),
            fits(Roots.NONE, FROZEN, "nmsu-2005"),
            fits(Roots.BROWN, TOO_WET_OR_DRY, Source.COMMON_PRACTICE),
            fits(Roots.BROWN, FROZEN, Source.COMMON_PRACTICE),
            against(Roots.WHITE, FROZEN),
            against(Roots.WHITE, TOO_WET_OR_DRY),
            against(Roots.THROUGH, FROZEN),
            against(Roots.THROUGH, TOO_WET_OR_DRY));

    public CauseFit {
        sources = List.copyOf(sources);
    }

    private static CauseFit fits(Sign sign, Cause cause, String... sources) {
        return new CauseFit(Optional.of(sign), Optional.empty(), cause, true, List.of(sources));
    }

    private static CauseFit fits(Roots roots, Cause cause, String... sources) {
        return new CauseFit(Optional.empty(), Optional.of(roots), cause, true, List.of(sources));
    }

    private static CauseFit against(Roots roots, Cause cause) {
        return new CauseFit(Optional.empty(), Optional.of(roots), cause, false, List.of(Source.COMMON_PRACTICE));
    }

    /** Those that hold for a cause and what was found. */
    static List<CauseFit> of(Cause cause, Failure found) {
        return TABLE.stream()
                .filter(fit -> fit.cause == cause && fit.isFoundIn(found))
                .toList();
    }

    private boolean isFoundIn(Failure found) {
        return sign.filter(found.signs()::contains).isPresent() || (roots.isPresent() && roots.equals(found.roots()));
    }
}
