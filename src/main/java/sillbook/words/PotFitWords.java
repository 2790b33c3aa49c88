// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Length;
import sillbook.model.Potting.Depth;
import sillbook.model.Settings.LengthUnit;
import sillbook.season.PotFit;

/** How many bulbs a pot holds, as it is said beside its picture. */
public record PotFitWords(PotFit fit, LengthUnit unit) {

    /** Short lines: how many there are, how many would fit, how deep they sit. */
    public List<String> lines(Depth depth) {
        List<String> lines = new ArrayList<>();
        lines.add(fit.count() + " in " + length(fit.bed().across()) + ", to scale");
        lines.add("bulbs " + length(fit.bed().bulb()) + " across");
        lines.add(room());
        lines.add(fit.touching() + " touching");
        lines.add(depth == Depth.NOT_SAID ? "depth not said: drawn level" : Terms.DEPTHS.say(depth));
        return lines;
    }

    /** {@code room for 5 airy, 8 packed}. */
    public String room() {
        return "room for " + fit.airy() + " airy, " + fit.packed() + " packed";
    }

    /** {@code 9 bulbs, 8 fit packed}; empty where there is room for them. */
    public Optional<String> tooMany() {
        return fit.count() > fit.packed()
                ? Optional.of(Counts.of(fit.count(), "bulb") + ", " + fit.packed()
                        + (fit.packed() == 1 ? " fits" : " fit") + " packed")
                : Optional.empty();
    }

    private String length(double centimetres) {
        return Lengths.say(Length.ofCentimetres(Math.round(centimetres * 10) / 10.0), unit);
    }
}
