// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sillbook.model.PottingMix.Part;
import sillbook.reckon.fit.Filling;
import sillbook.reckon.fit.Parts;

/**
 * What a pot holds beside its bulbs, in plain lines.
 *
 * @param under potting mix under the lowest bulbs, in cm; empty where the height is not known
 * @param mix the parts it is put together of; none where that is not asked
 */
public record Inside(Filling filling, Optional<Double> under, List<Part> mix) {
    /** A pot of which nothing is known. */
    public static final Inside UNKNOWN = new Inside(new Filling(0, 0), Optional.empty(), List.of());

    /** Under the bulbs are 2.5 to 5 cm (Cornell Cooperative Extension), in cm. */
    private static final double LEAST_UNDER = 2.5;

    private static final double LITRE = 1000;

    public Inside {
        mix = List.copyOf(mix);
    }

    static double balls(int count, double bulb) {
        return count * Filling.ball(bulb);
    }

    /** In litres, to the brim. */
    public double brim() {
        return filling.brim() / LITRE;
    }

    /**
     * Potting mix as it lies in the pot, in litres.
     *
     * @param bulbs what they take, in cm3
     */
    public double litres(double bulbs) {
        return filling.mix(bulbs) / LITRE;
    }

    /** Litres of each part, loose. */
    public List<Double> parts(double bulbs) {
        return mix.isEmpty()
                ? List.of()
                : new Parts(mix.stream().map(Part::parts).toList()).of(litres(bulbs));
    }

    Optional<Warned> shallow() {
        return under.filter(left -> left < LEAST_UNDER)
                .map(left -> new Warned(
                        "shallow",
                        left < 0
                                ? "The pot is not as high as its bulbs."
                                : "Only " + FitFigures.cm(left)
                                        + " of potting mix are left under the bulbs, where 2.5 to 5 are advised."));
    }

    List<String> lines(double bulbs) {
        List<String> lines = new ArrayList<>();
        lines.add("volume: " + litresSaid(brim()) + " to the brim; potting mix beside the bulbs: "
                + litresSaid(litres(bulbs)) + ", " + litresSaid(Parts.loose(litres(bulbs))) + " before it settles");
        under.filter(left -> left >= 0)
                .ifPresent(left -> lines.add("potting mix under the bulbs: " + FitFigures.cm(left)));
        List<Double> parts = parts(bulbs);
        if (!mix.isEmpty()) {
            lines.add("to put together, loose: "
                    + Counts.and(IntStream.range(0, mix.size())
                            .mapToObj(i ->
                                    litresSaid(parts.get(i)) + " " + mix.get(i).material())
                            .toList()));
        }
        return lines;
    }

    /** {@code 4.9 L}: to as much as is measured out at the bench. */
    public static String litresAbout(double litres) {
        return Decimal.say(litres, 1) + " L";
    }

    static String litresSaid(double litres) {
        return Decimal.say(litres, 2) + " L";
    }
}
