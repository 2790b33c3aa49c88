// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.round;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import sillbook.model.Findings;
import sillbook.model.Findings.Moisture;
import sillbook.model.Findings.Trouble;
import sillbook.model.Findings.Water;
import sillbook.model.Length;
import sillbook.model.Pot.Way;
import sillbook.model.Settings.LengthUnit;
import sillbook.text.Width;
import sillbook.words.Lengths;
import sillbook.words.RoundWords;
import sillbook.words.Terms;

/**
 * What is marked of one pot; what is not marked is well.
 *
 * @param shoot its height as typed, in the grower's unit; empty when none was
 * @param roots their length as typed, in the same unit; empty when none was
 * @param trouble what else is wrong, in the grower's words, which may be none
 */
record Found(Set<Mark> marks, String shoot, String roots, Optional<String> trouble) {
    static final Found NOTHING = new Found(Set.of(), "", "", Optional.empty());

    private static final int MOST_DIGITS = 2;
    private static final Pattern DOUBLE_QUOTES = Pattern.compile("[\"“”„]");
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    Found {
        EnumSet<Mark> ordered = EnumSet.noneOf(Mark.class);
        ordered.addAll(marks);
        marks = Collections.unmodifiableSet(ordered);
    }

    boolean isNothing() {
        return equals(NOTHING);
    }

    boolean has(Mark mark) {
        return marks.contains(mark);
    }

    /** With a mark; one it cannot bear goes. */
    Found with(Mark mark) {
        EnumSet<Mark> more = EnumSet.of(mark);
        marks.stream().filter(other -> !mark.excludes(other)).forEach(more::add);
        return new Found(more, shoot, roots, trouble);
    }

    Found without(Mark mark) {
        Set<Mark> fewer = EnumSet.copyOf(List.of(Mark.values()));
        fewer.retainAll(marks);
        fewer.remove(mark);
        return new Found(fewer, shoot, mark == Mark.ROOTS ? "" : roots, trouble);
    }

    /** What of it can be said of bulbs that are not potted. */
    Found ofDryBulbs() {
        EnumSet<Mark> fewer = EnumSet.noneOf(Mark.class);
        marks.stream().filter(Mark::isOfDryBulbs).forEach(fewer::add);
        return new Found(fewer, "", "", trouble);
    }

    /** One more digit of the shoot's height; after the last there is room for, the first of another height. */
    Found withDigit(String digit, boolean goesOn) {
        return new Found(marks, typed(shoot, digit, goesOn), roots, trouble);
    }

    /** The same of the length of the roots, which then show. */
    Found withRootDigit(String digit, boolean goesOn) {
        Found rooted = with(Mark.ROOTS);
        return new Found(rooted.marks, shoot, typed(roots, digit, goesOn), trouble);
    }

    private static String typed(String so, String digit, boolean goesOn) {
        return goesOn && Width.of(so) < MOST_DIGITS ? so + digit : digit;
    }

    Found withoutShoot() {
        return new Found(marks, "", roots, trouble);
    }

    /** With words that a line can hold: one blank between them, single quotes only. */
    Found withTrouble(String words) {
        String single = DOUBLE_QUOTES.matcher(words).replaceAll("'");
        String plain = BLANKS.matcher(single).replaceAll(" ").strip();
        return new Found(marks, shoot, roots, Optional.of(plain));
    }

    Found withoutTrouble() {
        return new Found(marks, shoot, roots, Optional.empty());
    }

    /**
     * As it is written down.
     *
     * @param well what holds where nothing is marked
     */
    Findings findings(Findings well, LengthUnit unit) {
        Findings found = well;
        for (Mark mark : marks) {
            found = mark.addTo(found);
        }
        if (!shoot.isEmpty()) {
            found = found.withShoot(length(shoot, unit));
        }
        if (!roots.isEmpty()) {
            found = found.withRootLength(length(roots, unit));
        }
        return trouble.isPresent() ? found.with(Trouble.OTHER).withNote(trouble.get()) : found;
    }

    private static Length length(String typed, LengthUnit unit) {
        return Lengths.parse(said(typed, unit)).value().orElseThrow();
    }

    private static String said(String typed, LengthUnit unit) {
        return typed + " " + Lengths.unit(unit);
    }

    /** As the page shows it of a pot grown that way. */
    String shown(Way way, LengthUnit unit) {
        List<String> said = said(mark -> mark.shown(way), "shoot ", unit);
        trouble.ifPresent(words -> said.add(words.isEmpty() ? Terms.TROUBLES.say(Trouble.OTHER) : words));
        return String.join(", ", said);
    }

    /**
     * As a line has it, after the pot's label.
     *
     * @param saysWell whether the line has not yet said that all is well
     */
    String line(Way way, boolean saysWell, LengthUnit unit) {
        List<String> said = said(mark -> mark.words(way), "", unit);
        boolean isMoist = !has(Mark.DRY) && !has(Mark.WET);
        if (saysWell && isMoist) {
            said.add(0, way.isOverWater() ? Terms.WATERS.say(Water.RIGHT) : Terms.MOISTURES.say(Moisture.MOIST));
        }
        trouble.ifPresent(
                words -> said.add((Terms.TROUBLES.say(Trouble.OTHER) + " " + RoundWords.quoted(words)).strip()));
        return String.join(", ", said);
    }

    private List<String> said(Function<Mark, String> words, String beforeShoot, LengthUnit unit) {
        List<String> said = new ArrayList<>();
        for (Mark mark : marks) {
            String length = mark == Mark.ROOTS && !roots.isEmpty() ? " " + said(roots, unit) : "";
            said.add(words.apply(mark) + length);
        }
        if (!shoot.isEmpty()) {
            said.add(beforeShoot + said(shoot, unit));
        }
        return said;
    }
}
