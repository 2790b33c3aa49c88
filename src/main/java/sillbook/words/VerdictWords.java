// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Findings.Roots;
import sillbook.model.Pot.Way;
import sillbook.model.Settings.LengthUnit;
import sillbook.season.Noted;
import sillbook.season.PotLife;
import sillbook.season.Readiness;
import sillbook.season.Verdict;
import sillbook.text.Initial;

/** Whether a pot may come in, in the words of the rule, and which of weeks, roots and shoot say so. */
public final class VerdictWords {
    private VerdictWords() {}

    /** As a sentence: {@code May come in: roots at the holes, a shoot of 6 cm.} */
    public static String say(Readiness ready, PotLife life, LengthUnit lengths) {
        return Initial.large(clause(ready, life, lengths)) + ".";
    }

    /** The same as part of a line: {@code check first: nobody has looked for roots}. */
    public static String clause(Readiness ready, PotLife life, LengthUnit lengths) {
        Optional<String> shoot = ready.shoot().map(seen -> "a shoot of " + Lengths.say(seen.value(), lengths));
        return switch (ready.verdict()) {
            case MAY_COME_IN -> "may come in: " + forIt(ready, life.pot().way(), shoot);
            case CHECK_FIRST ->
                "check first: " + shoot.map(low -> "only " + low + ", and ").orElse("") + "nobody has looked for roots";
            case NO_ROOTS ->
                "not ready: " + shortRoots(life, lengths)
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
    private static String forIt(Readiness ready, Way way, Optional<String> shoot) {
        Optional<Roots> roots = ready.roots().map(Noted::value);
        if (roots.equals(Optional.of(Roots.SHOWING))) {
            return (way == Way.GLASS ? "roots long enough" : "roots at the holes")
                    + shoot.map(tall -> ", " + tall).orElse("");
        }
        return shoot.orElse("its signs are right") + (roots.isPresent() ? ", though no roots were seen" : "");
    }

    /** In a glass roots show from the first, and count once they are long. */
    private static String shortRoots(PotLife life, LengthUnit lengths) {
        return life.seen()
                .rootLength()
                .map(Noted::value)
                .filter(length -> length.tenths() > 0)
                .map(length -> "roots only " + Lengths.say(length, lengths))
                .orElse("no roots yet");
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
