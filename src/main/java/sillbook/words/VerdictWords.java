// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Findings.Roots;
import sillbook.model.Settings.LengthUnit;
import sillbook.season.Noted;
import sillbook.season.Readiness;
import sillbook.season.Verdict;

/** Whether a pot may come in, in the words of the rule, and which of weeks, roots and shoot say so. */
public final class VerdictWords {
    private VerdictWords() {}

    /** As a sentence: {@code May come in: roots at the holes, a shoot of 6 cm.} */
    public static String say(Readiness ready, LengthUnit lengths) {
        String clause = clause(ready, lengths);
        return Character.toUpperCase(clause.charAt(0)) + clause.substring(1) + ".";
    }

    /** The same as part of a line: {@code check first: nobody has looked for roots}. */
    public static String clause(Readiness ready, LengthUnit lengths) {
        Optional<String> shoot = ready.shoot().map(seen -> "a shoot of " + Lengths.say(seen.value(), lengths));
        return switch (ready.verdict()) {
            case MAY_COME_IN -> "may come in: " + forIt(ready, shoot);
            case CHECK_FIRST ->
                "check first: " + shoot.map(low -> "only " + low + ", and ").orElse("") + "nobody has looked for roots";
            case NO_ROOTS ->
                "not ready: no roots yet"
                        + ready.lookAgainOn()
                                .map(day -> "; look again about " + Days.day(day))
                                .orElse("");
            case WEEKS_SHORT -> already(ready, shoot) + "cold enough about " + Days.day(ready.coldEnoughOn());
            case TOO_WARM ->
                shoot.orElse("a tall shoot")
                        + ", but its weeks are not had: it is too warm here; move it colder, do not bring it in";
        };
    }

    /** What speaks for coming in; of two that disagree both are said. */
    private static String forIt(Readiness ready, Optional<String> shoot) {
        Optional<Roots> roots = ready.roots().map(Noted::value);
        if (roots.equals(Optional.of(Roots.SHOWING))) {
            return "roots at the holes" + shoot.map(tall -> ", " + tall).orElse("");
        }
        return shoot.orElse("its signs are right") + (roots.isPresent() ? ", though no roots were seen" : "");
    }

    /** What is there before its weeks are had: it does not make up for them. */
    private static String already(Readiness ready, Optional<String> shoot) {
        Optional<String> roots =
                ready.roots().filter(seen -> seen.value() == Roots.SHOWING).map(seen -> "roots");
        String signs = Stream.of(roots, shoot).flatMap(Optional::stream).collect(Collectors.joining(" and "));
        return signs.isEmpty() ? "not yet: " : "not yet, with " + signs + ": ";
    }

    /** In a few words, as part of a line. */
    public static String brief(Verdict verdict) {
        return switch (verdict) {
            case MAY_COME_IN -> "may come in";
            case CHECK_FIRST -> "check first";
            case NO_ROOTS -> "not ready: no roots yet";
            case WEEKS_SHORT -> "not cold enough yet";
            case TOO_WARM -> "too warm here";
        };
    }
}
