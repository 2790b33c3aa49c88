// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.List;
import java.util.stream.Collectors;
import sillbook.handbook.Figure;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.Handbook;
import sillbook.handbook.Source;
import sillbook.handbook.Sureness;
import sillbook.model.Settings;

/** Where figures and rules come from, in words. */
public record SourceWords(Handbook handbook, Settings settings) {
    /** {@code ▫ handbook, tulip: weeks of cold 12, 15, 17 wk (good)}; {@code ▪ your own: days in bloom 10 days}. */
    public String figure(FigureInForce figure) {
        return OriginMarks.mark(figure.origin()) + " " + whose(figure) + ": "
                + FigureValues.named(figure.name(), figure.range(), settings) + sureness(figure);
    }

    /** {@code your own, for the variety}; {@code handbook, tulip Triumph}. */
    public String whose(FigureInForce figure) {
        return switch (figure.origin()) {
            case OWN_FOR_VARIETY -> "your own, for the variety";
            case OWN_FOR_KIND -> "your own, for the kind";
            case OWN_FOR_HARDY -> "your own, for all hardy kinds";
            case LEARNT_FOR_VARIETY -> pots(figure) + ", of the variety";
            case LEARNT_FOR_KIND -> pots(figure) + ", of the kind";
            case HANDBOOK_CLASS, HANDBOOK_KIND ->
                "handbook, "
                        + figure.figure()
                                .map(Figure::kind)
                                .map(Object::toString)
                                .orElse("");
            case HANDBOOK_GENERAL -> "handbook, bulbs at large";
            case ASSUMED -> "assumed, as for hardy bulbs";
        };
    }

    /** As much as there is room for in a column: {@code your figure}, {@code your 7 pots}, {@code handbook}. */
    public static String brief(FigureInForce figure) {
        return switch (figure.origin()) {
            case OWN_FOR_VARIETY, OWN_FOR_KIND, OWN_FOR_HARDY -> "your figure";
            case LEARNT_FOR_VARIETY, LEARNT_FOR_KIND -> pots(figure);
            case HANDBOOK_CLASS, HANDBOOK_KIND, HANDBOOK_GENERAL -> "handbook";
            case ASSUMED -> "assumed";
        };
    }

    private static String pots(FigureInForce figure) {
        return "your " + Counts.of(figure.pots(), "pot");
    }

    private static String sureness(FigureInForce figure) {
        return figure.figure()
                .map(published -> " (" + word(published.sureness()) + ")")
                .orElse("");
    }

    private static String word(Sureness sureness) {
        return switch (sureness) {
            case STRONG -> "all sources agree";
            case GOOD -> "well borne out";
            case FAIR -> "fairly sure";
            case WEAK -> "sources few or at odds";
        };
    }

    /** {@code ▫ rule: Missouri Botanical Garden; common practice}. */
    public String rule(List<String> keys) {
        return (Source.isAnyPublished(keys) ? "▫" : "?") + " rule: " + names(keys);
    }

    /** The institutions behind some keys, each once. */
    public String names(List<String> keys) {
        return keys.stream()
                .flatMap(key -> handbook.source(key).stream())
                .map(Source::institution)
                .distinct()
                .collect(Collectors.joining("; "));
    }
}
