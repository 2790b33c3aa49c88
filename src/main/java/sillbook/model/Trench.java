// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How pots stand buried at a place, a trench or a frame with a bed of soil: what foretelling how cold it gets there goes by.
 *
 * @param depth of the pots below the surface of the ground, to the middle of the bulbs; what covers the ground not counted
 * @param soil they are buried in
 * @param cover what lies on the ground in winter
 * @param air how warm the air over it is
 * @param spells how far the mean of ten days lies about the year's wave in that air, in C, as a standard deviation
 */
public record Trench(
        Id<Trench> id,
        Id<Place> place,
        Length depth,
        Soil soil,
        Optional<Cover> cover,
        Air air,
        Optional<Double> spells)
        implements Entity<Trench> {
    public Trench {
        if (depth.tenths() == 0) {
            throw new IllegalArgumentException("pots that are not buried");
        }
        if (spells.filter(sd -> !(sd > 0)).isPresent()) {
            throw new IllegalArgumentException("spells of " + spells + " C");
        }
    }

    @Override
    public Stream<Id<?>> refersTo() {
        return Stream.concat(Stream.of(place), outdoors().stream());
    }

    /** The place whose thermometer says how warm the air is, where one does. */
    public Optional<Id<Place>> outdoors() {
        return air.fold(new ReadAt());
    }

    /** What soil it is; half wet where it is not said. */
    public enum Soil {
        /** Neither sand nor clay nor peat, or a mixture of them. */
        GARDEN_SOIL,
        DRY_SAND,
        SAND,
        WET_SAND,
        DRY_CLAY,
        CLAY,
        WET_CLAY,
        DRY_PEAT,
        PEAT,
        WET_PEAT
    }

    /**
     * A layer on the ground.
     *
     * @param conductivity of its heat in W/m/K, above 0, where the grower knows better than what is usual for it
     */
    public record Cover(Material material, Length thickness, Optional<Double> conductivity) {
        public Cover {
            if (conductivity.filter(given -> !(given > 0)).isPresent()) {
                throw new IllegalArgumentException("a cover of " + conductivity + " W/m/K");
            }
        }

        /** What it is made of. */
        public enum Material {
            STRAW,
            LEAVES,
            BARK,
            SNOW
        }
    }

    /** How warm the air is over the year. */
    public sealed interface Air {
        /** One answer for each sort. */
        interface Cases<R> {
            R means(Means air);

            R read(Read air);
        }

        <R> R fold(Cases<R> cases);
    }

    /** Twelve mean temperatures, from January on. */
    public record Means(List<Temperature> months) implements Air {
        private static final int MONTHS = 12;

        public Means {
            months = List.copyOf(months);
            if (months.size() != MONTHS) {
                throw new IllegalArgumentException(months.size() + " months are no year");
            }
        }

        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.means(this);
        }
    }

    /** As a thermometer outdoors has it. */
    public record Read(Id<Place> outdoors) implements Air {
        @Override
        public <R> R fold(Cases<R> cases) {
            return cases.read(this);
        }
    }

    private static final class ReadAt implements Air.Cases<Optional<Id<Place>>> {
        @Override
        public Optional<Id<Place>> means(Means air) {
            return Optional.empty();
        }

        @Override
        public Optional<Id<Place>> read(Read air) {
            return Optional.of(air.outdoors());
        }
    }
}
