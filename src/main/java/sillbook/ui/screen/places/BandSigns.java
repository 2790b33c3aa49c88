// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.places;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import sillbook.chart.Curve;
import sillbook.chart.TimeAxis;
import sillbook.chart.WarmDay;
import sillbook.chart.Warmth;
import sillbook.ui.draw.Sign;
import sillbook.ui.draw.WarmthChart.Edges;

/** The signs over a chart: frost or under the band, over the band. */
record BandSigns(Optional<Edges> band, double freezing) {

    /**
     * A sign for each part of an axis in which any day was so. A day is out of the band by its mean; one of which only the lowest and
     * highest are known, when all of it was.
     */
    List<Optional<Sign>> of(TimeAxis axis, Collection<WarmDay> days, Collection<WarmDay> spans) {
        List<Optional<Sign>> signs = new ArrayList<>(Collections.nCopies(axis.count(), Optional.empty()));
        days.forEach(day -> put(day, sign(day.warmth()), axis, signs));
        spans.forEach(day -> put(day, signOfSpan(day.warmth()), axis, signs));
        return signs;
    }

    /** A sign for each part that was so itself, by its mean. */
    List<Optional<Sign>> of(Curve curve) {
        return curve.parts().stream().map(part -> part.flatMap(this::sign)).toList();
    }

    /** Frost is the graver: it stands where a part had both. */
    private static void put(WarmDay day, Optional<Sign> sign, TimeAxis axis, List<Optional<Sign>> signs) {
        sign.ifPresent(it -> axis.parts(day.day())
                .filter(part -> signs.get(part).filter(Sign.BELOW_BAND::equals).isEmpty())
                .forEach(part -> signs.set(part, sign)));
    }

    private Optional<Sign> sign(Warmth warmth) {
        return sign(warmth, warmth.mean(), warmth.mean());
    }

    private Optional<Sign> signOfSpan(Warmth warmth) {
        return sign(warmth, warmth.highest(), warmth.lowest());
    }

    private Optional<Sign> sign(Warmth warmth, double warmest, double coldest) {
        boolean isUnder = band.filter(edges -> warmest < edges.low()).isPresent();
        if (warmth.lowest() < freezing || isUnder) {
            return Optional.of(Sign.BELOW_BAND);
        }
        return band.filter(edges -> coldest > edges.high()).map(edges -> Sign.ABOVE_BAND);
    }
}
