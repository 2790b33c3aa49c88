// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sillbook.model.Length;
import sillbook.words.Lengths;

/** Lengths given to a command, in cm; what is none is {@link Misused}. */
final class Sizes {
    private static final Pattern UNIT = Pattern.compile("(?:cm|mm|m|in|inch|inches|\"|'')$", Pattern.CASE_INSENSITIVE);

    private Sizes() {}

    /** Above nothing. */
    static double above(String text, String what) {
        double size = length(text);
        if (!(size > 0)) {
            throw new Misused("'" + text + "' is no " + what + ". Write a length above 0.");
        }
        return size;
    }

    /** Nothing, or more. */
    static double length(String text) {
        Length length = Given.read(Lengths.parse(text));
        return length.centimetres();
    }

    /** Several with an x between; a unit after the last is that of all. */
    static List<Double> by(String text, int many, String what) {
        String[] parts = text.split("[xX×]", -1);
        if (parts.length != many) {
            throw new Misused("'" + text + "' is no " + what);
        }
        Matcher unit = UNIT.matcher(parts[many - 1].strip());
        String shared = unit.find() ? unit.group() : "";
        return Stream.of(parts)
                .map(String::strip)
                .map(part -> UNIT.matcher(part).find() ? part : part + shared)
                .map(part -> above(part, "size"))
                .toList();
    }
}
