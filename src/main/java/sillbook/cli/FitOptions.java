// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import sillbook.model.Kind;
import sillbook.model.PottingMix.Part;
import sillbook.model.Purchase.Grade;
import sillbook.reckon.fit.Bed;
import sillbook.reckon.fit.Spacing;
import sillbook.reckon.packing.Scatter;
import sillbook.words.Groups;
import sillbook.words.Kinds;

/** What {@code reckon fit} is told of bulbs and potting mix. */
final class FitOptions {
    private static final Pattern SIZE = Pattern.compile("(.*?)(?: ?[x×] ?(\\d{1,4}))?");
    private static final Pattern PRINTED = Pattern.compile("[\\d.]+ ?(?:\\+|[/–-] ?[\\d.]+)");
    private static final String SIZE_OF_BULB = "size of a bulb";
    private static final Pattern PART = Pattern.compile("(\\d{1,3}(?:[.,]\\d{1,2})?) +([^\\d].*)");

    @Option(
            names = "--bulb",
            paramLabel = "D[xN],...",
            description = "How wide a bulb is; several sizes with how many of each: 5.7x3,2.9x8.")
    private Optional<String> bulb = Optional.empty();

    @Option(
            names = "--grade",
            paramLabel = "C[xN],...",
            description = {
                "The same by grade, which is the girth in cm: 12, or 18x3,9x8.",
                "Of 12/14 the middle is taken, of 12+ the least."
            })
    private Optional<String> grade = Optional.empty();

    @Option(
            names = "--below",
            paramLabel = "D|C",
            description = "A second layer under the first, of bulbs measured as those.")
    private Optional<String> below = Optional.empty();

    @Option(names = "--count", paramLabel = "N", description = "How many you mean to set.")
    private Optional<String> count = Optional.empty();

    @Option(names = "--kind", paramLabel = "K", description = "The kind of bulb, for counts that are published.")
    private Optional<String> kind = Optional.empty();

    @Option(names = "--gap", paramLabel = "G", description = "Between two bulbs; 0.5 if not said.")
    private Optional<String> gap = Optional.empty();

    @Option(names = "--wall", paramLabel = "W", description = "Between a bulb and the wall; 0.5 if not said.")
    private Optional<String> wall = Optional.empty();

    @Option(
            names = "--mix",
            paramLabel = "PARTS",
            description = "The potting mix by its parts: '3 loam, 2 peat, 1 sand'.")
    private Optional<String> mix = Optional.empty();

    /** The diameter of each bulb; only one where no number is said. */
    List<Double> bulbs() {
        if (bulb.isPresent() == grade.isPresent()) {
            throw new Misused(
                    "The bulbs want their grade or their width, one of them. Write --grade 12, or --bulb 3.8.");
        }
        List<Double> bulbs = new ArrayList<>();
        for (String size : bulb.or(() -> grade).orElse("").split(",", -1)) {
            Groups said = Groups.of(SIZE, size.strip()).orElseThrow();
            int many = said.has(2) ? said.number(2) : 1;
            if (many < 1 || bulbs.size() + many > Scatter.MOST) {
                throw new Misused("Of several sizes 1 to " + Scatter.MOST + " bulbs are set. Write --grade 18x3,9x8.");
            }
            bulbs.addAll(Collections.nCopies(many, diameter(said.text(1))));
        }
        return bulbs;
    }

    private double diameter(String text) {
        return grade.isPresent() ? Bed.ofGrade(girth(text)) : Sizes.above(text, SIZE_OF_BULB);
    }

    /** As a packet prints it, or any length. */
    private static double girth(String text) {
        return Optional.of(text.strip())
                .filter(printed -> PRINTED.matcher(printed).matches())
                .flatMap(printed -> new Grade(printed, Optional.empty()).girth())
                .filter(girth -> girth > 0)
                .orElseGet(() -> Sizes.above(text, SIZE_OF_BULB));
    }

    Optional<Double> below() {
        return below.map(this::diameter);
    }

    /** Whether numbers of bulbs stand with their sizes. */
    boolean isMixture() {
        return Stream.of(bulb, grade).flatMap(Optional::stream).anyMatch(said -> said.matches(".*[x×,].*"));
    }

    Optional<Integer> count() {
        return count.map(text -> {
            if (!text.matches("\\d{1,6}") || Integer.parseInt(text) == 0) {
                throw new Misused("'" + text + "' is no number of bulbs. Write a whole number above 0.");
            }
            return Integer.parseInt(text);
        });
    }

    Optional<Kind> kind(Kinds kinds) {
        return kind.map(text -> Given.read(kinds.parse(text)));
    }

    /** What is not said is taken for granted. */
    Spacing spacing(List<String> assumed) {
        if (gap.isEmpty()) {
            assumed.add("0.5 cm between two bulbs");
        }
        if (wall.isEmpty()) {
            assumed.add("0.5 cm between a bulb and the wall");
        }
        return new Spacing(
                gap.map(Sizes::length).orElse(Spacing.USUAL.gap()),
                wall.map(Sizes::length).orElse(Spacing.USUAL.wall()));
    }

    List<Part> mix() {
        return mix.map(text ->
                        Stream.of(text.split(", *", -1)).map(FitOptions::part).toList())
                .orElse(List.of());
    }

    private static Part part(String text) {
        return Groups.of(PART, text.strip().toLowerCase(Locale.ROOT))
                .map(said -> new Part(Given.number(said.text(1)), said.text(2)))
                .filter(part -> part.parts() > 0)
                .orElseThrow(
                        () -> new Misused("'" + text + "' is no part of a mix. Write --mix '3 loam, 2 peat, 1 sand'."));
    }
}
