// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import java.util.stream.Collectors;
import sillbook.model.PottingMix.Part;

/** Potting mixes as they are said. */
public final class Mixes {
    private Mixes() {}

    /** {@code 2 parts loam, 1 part peat}. */
    public static String say(List<Part> parts) {
        return parts.stream().map(Mixes::say).collect(Collectors.joining(", "));
    }

    private static String say(Part part) {
        String number = Decimal.say(part.parts(), 1);
        return number + (number.equals("1") ? " part " : " parts ") + part.material();
    }
}
