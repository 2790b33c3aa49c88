// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.Optional;
import java.util.regex.Pattern;
import sillbook.model.Length;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Trench.Cover;
import sillbook.model.Trench.Cover.Material;
import sillbook.text.Fold;

/** What lies on the ground of a trench: {@code straw 10 cm}, {@code 10 cm of leaves}, {@code bark 8 cm at 0.12 W/m/K}. */
public final class Covers {
    private static final double MOST_CM = 200;
    private static final double LEAST_CONDUCTIVITY = 0.01;
    private static final double MOST_CONDUCTIVITY = 10;
    private static final String LENGTH =
            "((?:" + Decimal.PATTERN + "|\\d{1,3} \\d/\\d|\\d/\\d) ?(?:mm|cm|m|inch(?:es)?|in|\"))";
    private static final String CONDUCTIVITY = "(?: (?:at |of )?(" + Decimal.PATTERN + ") ?w/m/?k)?";
    private static final Pattern MATERIAL_FIRST = Pattern.compile("([a-z ]+?) " + LENGTH + CONDUCTIVITY);
    private static final Pattern THICKNESS_FIRST = Pattern.compile(LENGTH + " (?:of )?([a-z ]+?)" + CONDUCTIVITY);

    private Covers() {}

    /** Empty where it does not speak of a cover at all. */
    public static Optional<Heard<Cover>> parse(String text) {
        String said = Fold.of(text).strip();
        return Groups.of(MATERIAL_FIRST, said)
                .flatMap(groups -> cover(groups.text(1), groups.text(2), groups.text(3)))
                .or(() -> Groups.of(THICKNESS_FIRST, said)
                        .flatMap(groups -> cover(groups.text(2), groups.text(1), groups.text(3))));
    }

    private static Optional<Heard<Cover>> cover(String material, String thickness, String conductivity) {
        return GroundTerms.COVERS
                .findWhole(material)
                .map(of -> Lengths.parse(thickness).then(thick -> cover(of, thick, conductivity)));
    }

    private static Heard<Cover> cover(Material material, Length thick, String conductivity) {
        if (thick.centimetres() > MOST_CM) {
            return Heard.not("at most 2 m", "A cover is at most 2 m thick. Write a smaller thickness.");
        }
        if (conductivity.isEmpty()) {
            return Heard.as(new Cover(material, thick, Optional.empty()));
        }
        double given = Decimal.parse(conductivity).doubleValue();
        return given < LEAST_CONDUCTIVITY || given > MOST_CONDUCTIVITY
                ? Heard.not(
                        "0.01 to 10 W/m/K",
                        "Nothing lies on a trench that conducts " + conductivity + " W/m/K. Write 0.01 to 10.")
                : Heard.as(new Cover(material, thick, Optional.of(given)));
    }

    /** In the grower's unit of length; what it conducts only where that was given. */
    public static String say(Cover cover, LengthUnit unit) {
        String conducts = cover.conductivity()
                .map(given -> " at " + Decimal.say(given, 3) + " W/m/K")
                .orElse("");
        return GroundTerms.COVERS.say(cover.material()) + " " + Lengths.say(cover.thickness(), unit) + conducts;
    }
}
