// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.reckon.fit.Mixture;
import sillbook.reckon.packing.Point;

/**
 * Whether bulbs of several sizes fit a pot and where they sit, in plain lines.
 *
 * @param places one of each bulb; empty where none were found
 */
public record MixtureFigures(Mixture mixture, Optional<List<Point>> places, Optional<Inside> inside) {
    public MixtureFigures {
        places = places.map(List::copyOf);
    }

    public static MixtureFigures of(Mixture mixture, Optional<Inside> inside) {
        return new MixtureFigures(mixture, mixture.places(), inside);
    }

    /** Whether it is certain, one way or the other. */
    public boolean isProven() {
        return places.isPresent() || mixture.isTooMuch();
    }

    /** What they take of the pot's volume, in cm3. */
    public double bulbs() {
        return mixture.bulbs().stream()
                .mapToDouble(bulb -> Inside.balls(1, bulb))
                .sum();
    }

    public List<Warned> warnings() {
        List<Warned> warnings = new ArrayList<>();
        if (places.isEmpty()) {
            warnings.add(
                    mixture.isTooMuch()
                            ? new Warned("too-many", "They cannot all fit. Set fewer, or closer, or take a wider pot.")
                            : new Warned(
                                    "none-found",
                                    "No places were found for all of them, which proves nothing. Set fewer, or closer,"
                                            + " or take a wider pot."));
        }
        inside.flatMap(Inside::shallow).ifPresent(warnings::add);
        return warnings;
    }

    /** A fact a line. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(mixture.bulbs().size() + " bulbs of several sizes: " + verdict());
        inside.ifPresent(pot -> lines.addAll(pot.lines(bulbs())));
        places.ifPresent(found -> {
            List<String> said = FitFigures.placesSaid(found);
            lines.add(said.get(0));
            for (int i = 0; i < found.size(); i++) {
                lines.add(said.get(i + 1) + "  " + FitFigures.cm(mixture.bulbs().get(i)));
            }
        });
        return lines;
    }

    private String verdict() {
        if (places.isPresent()) {
            return "they fit, " + FitFigures.cm(mixture.spacing().gap()) + " apart and "
                    + FitFigures.cm(mixture.spacing().wall()) + " from the wall";
        }
        return mixture.isTooMuch() ? "they cannot fit" : "no places found";
    }
}
