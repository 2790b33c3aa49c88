// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * A way the grower fills pots, by name. A pot keeps a copy of what it says, so that one filled earlier stays as it was
 * when the way changes.
 *
 * @param across inside width of its pots, where no container is named
 */
public record UsualWay(
        Id<UsualWay> id,
        String name,
        Optional<Id<Container>> container,
        Optional<Length> across,
        Optional<Id<PottingMix>> pottingMix,
        Potting.Holes holes,
        Potting.Depth depth,
        String topping,
        String note)
        implements Entity<UsualWay> {

    public UsualWay {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a usual way has a name");
        }
    }

    /** What a pot filled by it keeps. */
    public Potting potting() {
        return new Potting(name, holes, depth, topping);
    }

    @Override
    public Stream<Id<?>> refersTo() {
        return Stream.concat(container.stream(), pottingMix.stream());
    }
}
