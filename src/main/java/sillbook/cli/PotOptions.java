// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import sillbook.reckon.fit.Filling;
import sillbook.reckon.fit.Frustum;
import sillbook.reckon.fit.PotShape;

/** What {@code reckon fit} is told of the pot. */
final class PotOptions {
    private static final double LITRE = 1000;
    private static final String HOW = ". Write how wide it is, --pot 15, or rim, base and height, --pot 15x11x14.";

    @Option(
            names = "--pot",
            paramLabel = "D|TxBxH",
            description = "Inside, always wanted: how wide it is where the bulbs sit, or rim, base and height.")
    private Optional<String> pot = Optional.empty();

    @Option(
            names = "--shape",
            paramLabel = "SHAPE",
            description = "standard, azalea or pan; the width is then that of the rim.")
    private Optional<String> shape = Optional.empty();

    @Option(names = "--litres", paramLabel = "V", description = "What it holds to the brim, measured.")
    private Optional<String> litres = Optional.empty();

    private String said() {
        return pot.orElseThrow(() -> new Misused("It is not said how wide the pot is. Write --pot 15."));
    }

    /** How wide it is; of a pot of which more is known, at its rim. */
    double across() {
        return frustum().map(Frustum::top).orElseGet(() -> Sizes.above(said(), "width of a pot"));
    }

    /** What is known of its inside, where that is more than its width. */
    Optional<Frustum> frustum() {
        if (said().matches(".*[xX×].*")) {
            if (shape.isPresent()) {
                throw new Misused("A pot of three sizes has its shape. Leave out --shape, or write one width.");
            }
            List<Double> sizes = Sizes.by(said(), 3, "pot" + HOW);
            return Optional.of(new Frustum(sizes.get(0), sizes.get(1), sizes.get(2)));
        }
        return shape.map(name -> shape(name).of(Sizes.above(said(), "width of a pot")));
    }

    private static PotShape shape(String name) {
        return Stream.of(PotShape.values())
                .filter(known -> known.name().toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new Misused("'" + name + "' is no shape. Write standard, azalea or pan."));
    }

    Optional<Filling> filling(List<String> assumed) {
        Optional<Filling> measured = litres.map(this::measured);
        Optional<Filling> filling = measured.or(() -> frustum().map(known -> Filling.of(known, Filling.BELOW_RIM)));
        if (filling.isPresent()) {
            assumed.add("potting mix to 1.3 cm below the rim");
        }
        if (shape.isPresent()) {
            assumed.add("a base of 0.7 of the rim, and a height by the shape");
        }
        return filling;
    }

    private Filling measured(String text) {
        double volume = Given.number(text) * LITRE;
        if (!(volume > 0)) {
            throw new Misused("'" + text + "' litres are no pot. Write a number above 0.");
        }
        return Filling.measured(volume, across(), Filling.BELOW_RIM);
    }
}
