// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Findings;
import sillbook.model.Findings.Trouble;
import sillbook.model.Happening;
import sillbook.model.Happening.Care;
import sillbook.model.Journal;
import sillbook.model.Settings.LengthUnit;

/**
 * Entries of the diary as they read: what happened, without its day and without its pot.
 *
 * @param journal whose names and units they are
 */
public record Entries(Journal journal) implements Happening.Cases<String> {

    private static final Set<Findings> ALL_WELL = Set.of(Findings.ALL_WELL, Findings.WATER_WELL, Findings.DRY_WELL);

    /** {@code checked: moist, roots, shoot 6 cm}. */
    public String say(Happening what) {
        return what.fold(this);
    }

    @Override
    public String potted(Happening.Potted happening) {
        return "potted";
    }

    @Override
    public String moved(Happening.Moved happening) {
        String place = journal.places().get(happening.place()).name();
        return StageWords.into(happening.stage()) + ", " + place;
    }

    @Override
    public String checked(Happening.Checked happening) {
        Findings found = happening.findings();
        boolean onlyTrouble = !found.troubles().isEmpty()
                && found.moisture().isEmpty()
                && found.water().isEmpty()
                && found.roots().isEmpty()
                && found.shoot().isEmpty();
        return (onlyTrouble ? "trouble seen: " : "checked: ")
                + findings(found, journal.settings().lengths());
    }

    @Override
    public String flowered(Happening.Flowered happening) {
        String which = happening
                .variety()
                .map(variety -> " of '" + journal.varieties().get(variety).name() + "'")
                .orElse("");
        return Terms.BLOOM_POINTS.say(happening.point()) + which;
    }

    @Override
    public String cared(Happening.Cared happening) {
        return Terms.CARES.say(happening.care());
    }

    @Override
    public String closed(Happening.Closed happening) {
        return Terms.ENDS.say(happening.end()) + after(": ", happening.note());
    }

    @Override
    public String putOff(Happening.PutOff happening) {
        return Terms.JOBS.say(happening.job()) + ": put off to " + Days.day(happening.until())
                + after(", because ", happening.reason());
    }

    @Override
    public String leftOut(Happening.LeftOut happening) {
        return Terms.JOBS.say(happening.job()) + ": not at all" + after(", because ", happening.reason());
    }

    @Override
    public String jotted(Happening.Jotted happening) {
        return "jotted: " + happening.text();
    }

    @Override
    public String displayed(Happening.Displayed happening) {
        return happening.display().map(name -> "into display " + name).orElse("out of the display");
    }

    private static String after(String before, String text) {
        return text.isEmpty() ? "" : before + text;
    }

    /** {@code moist, roots, shoot 6 cm}; {@code nothing noted} when nothing was looked at. */
    public static String findings(Findings found, LengthUnit unit) {
        List<String> said = new ArrayList<>();
        found.moisture().ifPresent(moisture -> said.add(Terms.MOISTURES.say(moisture)));
        found.water().ifPresent(water -> said.add(Terms.WATERS.say(water)));
        given(found).ifPresent(said::add);
        roots(found, unit).ifPresent(said::add);
        found.shoot().ifPresent(shoot -> said.add("shoot " + Lengths.say(shoot, unit)));
        found.firmness().ifPresent(firmness -> said.add(Terms.FIRMNESSES.say(firmness)));
        found.growth().stream().sorted().forEach(sign -> said.add(Terms.GROWTHS.say(sign)));
        said.addAll(troubles(found));
        if (!found.note().isEmpty()) {
            said.add(found.note());
        }
        return said.isEmpty() ? "nothing noted" : String.join(", ", said);
    }

    /** What was done about the water, by what was seen of it: {@code watered}, {@code topped up}, {@code changed}. */
    public static Optional<String> given(Findings found) {
        if (!found.watered()) {
            return Optional.empty();
        }
        if (found.troubles().contains(Trouble.CLOUDY)) {
            return Optional.of(Terms.CARES.say(Care.WATER_CHANGED));
        }
        return Optional.of(Terms.CARES.say(found.water().isPresent() ? Care.TOPPED_UP : Care.WATERED));
    }

    /** {@code roots 6 cm}, else {@code roots} or {@code no roots yet}; empty when nobody looked. */
    public static Optional<String> roots(Findings found, LengthUnit unit) {
        return found.rootLength()
                .filter(length -> length.tenths() > 0)
                .map(length -> "roots " + Lengths.say(length, unit))
                .or(() -> found.roots().map(Terms.ROOTS::say));
    }

    private static List<String> troubles(Findings found) {
        boolean told = !found.note().isEmpty();
        return found.troubles().stream()
                .sorted()
                .filter(trouble -> trouble != Trouble.OTHER || !told)
                .map(Terms.TROUBLES::say)
                .toList();
    }

    /** Whether a check found all well, so that a short history can leave it out. */
    public static boolean isAllWell(Findings found) {
        return ALL_WELL.contains(found);
    }
}
