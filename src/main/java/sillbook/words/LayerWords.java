// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import sillbook.reckon.fit.Layers;

/** Two layers of bulbs in a pot, in plain lines. */
final class LayerWords {
    private LayerWords() {}

    static List<String> lines(Layers layers) {
        List<String> lines = new ArrayList<>();
        Layers.Layer lower = layers.lower();
        lines.add("second layer: " + Counts.of(lower.places().size(), "bulb") + " of "
                + FitFigures.cm(lower.bed().bulb()) + ", their middles " + FitFigures.cm(lower.below())
                + " below the rim, where the pot is "
                + FitFigures.cm(lower.bed().across()) + " across");
        lines.add("turned so that each of its shoots comes up at least " + FitFigures.cm(layers.aside())
                + " beside the middle of an upper bulb");
        return lines;
    }
}
