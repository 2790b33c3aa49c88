// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.Optional;
import java.util.Set;
import sillbook.handbook.FigureName;
import sillbook.reckon.stages.ThreePoints;

/**
 * What the plant does in its own time, once it was brought in, or potted where it needs no cold. How long it was left in
 * the cold or in the cool room is the grower's choice, and no such span.
 */
public enum PlantSpan {
    /** To the first buds seen. */
    TO_BUDS(FigureName.AFTER_COLD),
    /** To the first colour seen on them. */
    TO_COLOUR(FigureName.AFTER_COLD),
    TO_FIRST_FLOWER(FigureName.AFTER_COLD),
    TO_FULL_BLOOM(FigureName.AFTER_COLD),
    /** From the first flower to past bloom. */
    IN_BLOOM(FigureName.IN_BLOOM);

    /** Those that come before the first flower or soon after it, and of which nobody published a length. */
    static final Set<PlantSpan> SIGNS = Set.of(TO_BUDS, TO_COLOUR, TO_FULL_BLOOM);

    private final FigureName grewFrom;

    PlantSpan(FigureName grewFrom) {
        this.grewFrom = grewFrom;
    }

    /** The figure whose published length is believed at the outset, or is the measure of what is. */
    FigureName grewFrom() {
        return grewFrom;
    }

    /** The figure it is; empty of a sign, which has none. */
    public Optional<FigureName> figure() {
        return SIGNS.contains(this) ? Optional.empty() : Optional.of(grewFrom);
    }

    static Optional<PlantSpan> of(FigureName name) {
        return switch (name) {
            case AFTER_COLD -> Optional.of(TO_FIRST_FLOWER);
            case IN_BLOOM -> Optional.of(IN_BLOOM);
            default -> Optional.empty();
        };
    }

    /**
     * What is believed at the outset, in days. Of signs nobody published any: buds about halfway to the flower, colour at
     * four fifths, both loosely, are judgements of ours; full bloom three days after the flower is common practice.
     */
    ThreePoints believed(ThreePoints published) {
        return switch (this) {
            case TO_BUDS -> parts(published, 0.2, 0.5, 0.8);
            case TO_COLOUR -> parts(published, 0.5, 0.8, 1);
            case TO_FULL_BLOOM ->
                new ThreePoints(
                        published.low() + 1, published.typical() + Bloom.FULL_BLOOM_AFTER, published.high() + 5);
            case TO_FIRST_FLOWER, IN_BLOOM -> published;
        };
    }

    private static ThreePoints parts(ThreePoints whole, double low, double likely, double high) {
        return new ThreePoints(low * whole.low(), likely * whole.typical(), high * whole.high());
    }
}
