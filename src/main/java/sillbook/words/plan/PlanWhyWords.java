// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.plan.PlanNow;
import sillbook.plan.Planning;
import sillbook.plan.Trouble;
import sillbook.plan.WishMet;

/** Why a plan is as it is, in sections of sentences. */
public record PlanWhyWords(Planning planning, PlanNow now, Handbook handbook) {
    private static final int CURES = 3;

    /** Sentences under a title. */
    public record Section(String title, List<String> lines) {
        public Section {
            lines = List.copyOf(lines);
        }
    }

    /** What it cannot do, how it stands to each wish, what each sort of pot takes, and what the chances rest on. */
    public List<Section> sections() {
        List<Section> sections = new ArrayList<>();
        sections.add(new Section("What it cannot do", troubles()));
        if (!now.wishes().isEmpty()) {
            sections.add(new Section("Wishes", wishes()));
        }
        if (!now.pots().isEmpty()) {
            sections.add(new Section("What it rests on", takes()));
        }
        sections.add(new Section("Chances", CHANCES));
        return sections;
    }

    private static final List<String> CHANCES = List.of(
            "Each pot opens its first flower after a length of which the least, the usual and the most are known; so it is with its days in"
                    + " bloom. Between them the usual is likeliest.",
            "Pots are taken not to depend on each other, though they share a room's weather: a chance is a little too sure of itself.");

    private Journal journal() {
        return planning.journal();
    }

    private List<String> troubles() {
        TroubleWords words = new TroubleWords(now, journal());
        List<String> lines = new ArrayList<>();
        for (Trouble trouble : now.troubles()) {
            lines.add(words.says(trouble));
            words.cures(trouble).stream().limit(CURES).forEach(cure -> lines.add("  cure: " + cure + "."));
        }
        return lines.isEmpty() ? List.of("Nothing: each pot has its cold, its days and its room.") : lines;
    }

    private List<String> wishes() {
        WishWords words = new WishWords(journal());
        WishChecks checks = new WishChecks(handbook, journal().settings());
        List<String> lines = new ArrayList<>();
        for (WishMet met : now.wishes()) {
            lines.addAll(words.lines(met));
            checks.of(met.wish(), planning.today()).forEach(check -> lines.addAll(check.lines()));
        }
        return lines;
    }

    /** Each sort once. */
    private List<String> takes() {
        PlannedPotWords words = new PlannedPotWords(planning, now);
        return IntStream.range(0, now.pots().size())
                .mapToObj(words::takes)
                .distinct()
                .toList();
    }
}
