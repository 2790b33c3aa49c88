// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.handbook.KindEntry;
import sillbook.handbook.Source;
import sillbook.handbook.Topic;
import sillbook.model.Kind;
import sillbook.model.Pot.Way;

/** The steps at the bench, fitted to a kind and to how it is grown, each with its sources; where those differ, it says so. */
public record PottingSteps(Handbook handbook, Kind kind, Way way) {
    private static final List<String> COMMON_PRACTICE = List.of(Source.COMMON_PRACTICE);

    /**
     * One step.
     *
     * @param sources keys of the list of sources
     */
    public record Step(String says, List<String> sources) {
        public Step {
            sources = List.copyOf(sources);
        }

        /** With the mark of what is published. */
        public String marked() {
            return Source.isAnyPublished(sources) ? says + OriginMarks.after(sources) : says;
        }
    }

    public List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        if (way.isOverWater()) {
            overWater(steps);
        } else {
            inMix(steps);
        }
        steps.add(new Step("Label it: label, variety, day.", COMMON_PRACTICE));
        steps.add(new Step(
                needsCold() ? "Into the cold, and dark." : "To its place: it needs no cold.", COMMON_PRACTICE));
        return steps;
    }

    private boolean needsCold() {
        return handbook.entry(kind).map(KindEntry::needsCold).orElse(true);
    }

    private void overWater(List<Step> steps) {
        steps.add(new Step(
                way == Way.GLASS
                        ? "Set the bulb in the neck of the glass."
                        : "Set the bulbs on the pebbles, not touching.",
                COMMON_PRACTICE));
        steps.addAll(waterLevel());
    }

    /** How high the water stands: the sources differ. */
    static List<Step> waterLevel() {
        return List.of(
                new Step("Fill up with water to just below the bulb.", List.of("rhs-christmas")),
                new Step("Others let the water just touch the bulb,", List.of("hyacinth-glass")),
                new Step("or let only its base stand in water.", List.of("ncstate-paperwhite")));
    }

    private void inMix(List<Step> steps) {
        if (way == Way.DRAINED) {
            steps.add(new Step("Holes clear, and covered with paper, mesh or a crock.", COMMON_PRACTICE));
        }
        steps.add(new Step("Fill to about three quarters, loosely.", COMMON_PRACTICE));
        steps.add(new Step("2.5 to 5 cm of potting mix are under the bulbs.", List.of("cornell-oneida-2018")));
        steps.add(new Step("Set the bulbs down; do not press them in.", List.of("delaware-2017")));
        steps.add(new Step("They do not touch: a pencil or two apart.", List.of("nebraska-2020")));
        handbook.remarks(kind, Topic.DEPTH).forEach(remark -> steps.add(new Step(remark.says(), remark.sources())));
        if (needsCold()) {
            steps.add(new Step(
                    "Sources differ: one leaves a good centimetre of the bulb in the open,", List.of("nebraska-2020")));
            steps.add(new Step("one the tips of large bulbs, and covers small ones wholly.", List.of("illinois-2007")));
        }
        steps.add(new Step("Leave at least 0.6 cm under the rim for water.", List.of("delaware-2017")));
        steps.add(
                way == Way.DRAINED
                        ? new Step("Water until it runs through, then empty the saucer.", COMMON_PRACTICE)
                        : new Step("Water, then tip the bowl until what is too much has run out.", COMMON_PRACTICE));
    }

    /** How many bulbs each source puts into a pot of 15 cm: {@code 5 to 7 bulbs}. A glass takes one. */
    public List<Step> perPot() {
        if (way == Way.GLASS) {
            return List.of();
        }
        return handbook.published(kind, FigureName.PER_POT).stream()
                .map(figure -> new Step(range(figure.low(), figure.high()), figure.sources()))
                .toList();
    }

    private static String range(double low, double high) {
        String least = Decimal.say(low, 0);
        return low == high ? least + " bulbs" : least + " to " + Decimal.say(high, 0) + " bulbs";
    }
}
