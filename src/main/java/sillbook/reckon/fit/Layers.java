// SPDX-License-Identifier: Apache-2.0
package sillbook.reckon.fit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import sillbook.reckon.packing.Point;

/**
 * Two layers of bulbs over each other, potting mix between them, the upper turned so that the shoots of the lower come up beside its bulbs and not under them.
 *
 * @param aside how far the shoot of a lower bulb comes up from the middle of the nearest upper one, at least, in cm
 * @param under the potting mix under the lower bulbs, in cm, not below 0
 */
public record Layers(Layer upper, Layer lower, double aside, double under) {
    /** Potting mix between the layers, in cm; a judgement of ours. */
    public static final double BETWEEN = 2.5;

    private static final int TURNS = 360;

    /**
     * One of them.
     *
     * @param below how far below the rim the middles of its bulbs lie, in cm
     */
    public record Layer(Bed bed, double below, List<Point> places) {
        public Layer {
            places = List.copyOf(places);
        }

        /** How much potting mix is under its bulbs in a pot of that height, in cm. */
        double under(double height) {
            return height - below - bed.bulb() / 2;
        }
    }

    /**
     * How wide the room is in which bulbs lie at a level, in cm; 0 where the pot is too shallow for one.
     *
     * @param tips how far below the rim their tips lie, in cm
     */
    public static double across(Frustum pot, double bulb, double tips) {
        return tips + bulb <= pot.height() ? pot.room(bulb, tips + bulb / 2) : 0;
    }

    /** As many as fit at a level; empty where the pot is too shallow or too narrow for one. */
    public static Optional<Layer> layer(Frustum pot, double bulb, Spacing spacing, double tips) {
        double across = across(pot, bulb, tips);
        if (!(across >= bulb)) {
            return Optional.empty();
        }
        Bed bed = new Bed(across, bulb, spacing);
        return Optional.of(new Layer(bed, tips + bulb / 2, bed.most().places()))
                .filter(layer -> !layer.places().isEmpty());
    }

    /** How far below the rim the tips of a second layer lie, in cm. */
    public static double under(double upper, double tips) {
        return tips + upper + BETWEEN;
    }

    /**
     * As many as fit in each layer; empty where one does not fit at all.
     *
     * @param tips of the upper bulbs, below the rim, in cm
     */
    public static Optional<Layers> of(Frustum pot, double lower, double upper, Spacing spacing, double tips) {
        Optional<Layer> below = layer(pot, lower, spacing, under(upper, tips));
        return layer(pot, upper, spacing, tips)
                .flatMap(above -> below.map(deep -> turned(above, deep, deep.under(pot.height()))));
    }

    private static Layers turned(Layer upper, Layer lower, double under) {
        return IntStream.range(0, TURNS)
                .mapToObj(turn -> turned(upper, 2 * Math.PI * turn / TURNS))
                .map(turned -> new Layers(turned, lower, aside(turned, lower), under))
                .max(Comparator.comparingDouble(Layers::aside))
                .orElseThrow();
    }

    private static Layer turned(Layer layer, double angle) {
        return new Layer(
                layer.bed(),
                layer.below(),
                layer.places().stream().map(place -> place.turned(angle)).toList());
    }

    private static double aside(Layer upper, Layer lower) {
        return upper.places().stream()
                .flatMap(one -> lower.places().stream().map(one::distance))
                .min(Double::compare)
                .orElseThrow();
    }
}
