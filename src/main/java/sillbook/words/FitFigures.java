// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.reckon.fit.Bed;
import sillbook.reckon.fit.Layers;
import sillbook.reckon.fit.Packings;
import sillbook.reckon.fit.Spacing;
import sillbook.reckon.fit.Suggestion;
import sillbook.reckon.packing.Point;

/**
 * How many like bulbs fit a pot and where they sit, in plain lines.
 *
 * @param asked how many are to be set; empty where that is the question
 * @param published counts for the kind in a pot of six inches; none where no kind is said
 * @param inside what is known of the pot beside its width
 * @param layers with a second layer under the bulbs
 */
public record FitFigures(
        Bed bed, Optional<Integer> asked, PerPot published, Optional<Inside> inside, Optional<Layers> layers) {

    public Bed.Laid most() {
        return bed.most();
    }

    public Suggestion suggested() {
        return Suggestion.of(asked, published.usual(), bed);
    }

    /** With another spacing. */
    public int count(Spacing spacing) {
        return bed.with(spacing).most().count();
    }

    /** Where those asked for sit, or as many as fit. */
    public List<Point> places() {
        return asked.flatMap(bed::places).orElseGet(() -> most().places());
    }

    /** How far apart those stand that were asked for, in cm; empty for one, and where it is not known. */
    public Optional<Double> apart() {
        return asked.filter(count -> count > 1 && count <= Packings.MOST)
                .map(bed::apart)
                .filter(gap -> gap >= 0);
    }

    /** What the bulbs of both layers take of the pot's volume, in cm3. */
    public double bulbs() {
        double lower = layers.map(Layers::lower)
                .map(layer -> Inside.balls(layer.places().size(), layer.bed().bulb()))
                .orElse(0.0);
        return Inside.balls(places().size(), bed.bulb()) + lower;
    }

    /** What is to be warned of. */
    public List<Warned> warnings() {
        List<Warned> warnings = new ArrayList<>();
        int most = most().count();
        if (most == 0) {
            warnings.add(new Warned(
                    "too-narrow",
                    "A bulb of " + cm(bed.bulb()) + " does not fit a pot that is " + cm(bed.across())
                            + " across where it sits, " + cm(bed.spacing().wall()) + " from the wall."));
        } else {
            asked.filter(count -> bed.places(count).isEmpty())
                    .ifPresent(count -> warnings.add(new Warned(
                            "too-many",
                            Counts.grouped(count) + " are not known to fit "
                                    + cm(bed.spacing().gap()) + " apart: " + most
                                    + " are. Set fewer, or closer, or take a wider pot.")));
        }
        inside.flatMap(Inside::shallow).ifPresent(warnings::add);
        return warnings;
    }

    /** A fact a line. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("suggested: " + suggestion());
        lines.addAll(published.lines());
        lines.add("at most: " + atMost());
        lines.add("airy " + count(Spacing.AIRY) + ", packed " + count(Spacing.PACKED) + ", touching "
                + count(Spacing.TOUCHING));
        lines.add("in a single ring along the wall: " + bed.ring());
        apart().ifPresent(gap -> lines.add(asked.orElse(0) + " stand " + cm(gap) + " apart, spread to the wall"));
        inside.ifPresent(pot -> lines.addAll(pot.lines(bulbs())));
        layers.ifPresent(both -> lines.addAll(LayerWords.lines(both)));
        lines.addAll(placesSaid(places()));
        return lines;
    }

    private String suggestion() {
        Suggestion suggestion = suggested();
        if (suggestion.count() == 0) {
            return "none, for not one fits";
        }
        return suggestion.count() + (suggestion.isCut() ? cut(suggestion) : whole(suggestion.basis()));
    }

    private static String whole(Suggestion.Basis basis) {
        return switch (basis) {
            case OWN -> ", as you mean to";
            case PUBLISHED -> ", as published for a pot of this width";
            case HALF_SURFACE -> ", which cover half the surface (Nebraska Extension)";
        };
    }

    private static String cut(Suggestion suggestion) {
        String meant = ", of the " + Counts.grouped(suggestion.meant());
        String of = switch (suggestion.basis()) {
            case OWN -> meant + " you mean to set";
            case PUBLISHED -> meant + " published for a pot of this width";
            case HALF_SURFACE -> meant + " that would cover half the surface (Nebraska Extension)";
        };
        return of + ": no more are known to fit";
    }

    private String atMost() {
        Bed.Laid laid = most();
        String doubt = laid.isProven()
                ? "no more can fit"
                : "known to fit; more than " + Counts.grouped(laid.atMost()) + " cannot";
        return Counts.of(laid.count(), "bulb") + " of " + cm(bed.bulb()) + ", "
                + cm(bed.spacing().gap()) + " apart and " + cm(bed.spacing().wall()) + " from the wall; " + doubt;
    }

    /** Numbered, each with how far to the right of the middle and how far to the back. */
    static List<String> placesSaid(List<Point> places) {
        List<String> lines = new ArrayList<>();
        lines.add("where they sit, in cm from the middle, to the right and to the back:");
        for (int i = 0; i < places.size(); i++) {
            lines.add(" " + padded(Integer.toString(i + 1), 3)
                    + padded(tenths(places.get(i).x()), 7)
                    + padded(tenths(places.get(i).y()), 7));
        }
        return places.isEmpty() ? List.of() : lines;
    }

    static String padded(String text, int width) {
        return " ".repeat(Math.max(0, width - text.length())) + text;
    }

    private static String tenths(double cm) {
        String said = Decimal.sayFixed(cm, 1);
        return said.equals("-0.0") ? "0.0" : said;
    }

    static String cm(double cm) {
        return Decimal.say(cm, 1) + " cm";
    }
}
