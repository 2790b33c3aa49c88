// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sillbook.model.Cause;
import sillbook.model.Day;
import sillbook.model.Failure;
import sillbook.model.Failure.Sign;
import sillbook.model.Id;
import sillbook.model.Outcome;
import sillbook.model.Pot;
import sillbook.model.Variety;
import sillbook.reckon.dates.DaySpan;
import sillbook.text.Fold;
import sillbook.words.Complaint;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.Groups;
import sillbook.words.Heard;
import sillbook.words.Lengths;
import sillbook.words.Looking;
import sillbook.words.Terms;

/** What a line says of how a pot did. */
record OutcomeFacts(Filled filled) {
    private static final Slot<Integer> SCORE = Slot.one(
            "score",
            Senses.matching(
                    "(?:outcome|score) (\\d{1,2})(?: of 5)?|(\\d{1,2}) of 5",
                    said -> score(said.number(said.has(1) ? 1 : 2))));
    private static final Slot<Integer> FLOWERS = Slot.one(
            "number of flowers",
            Senses.number("(\\d{1,3})(?: (?:of|out of) \\d{1,3})? (?:flowers?|flowered|in flower)"));
    private static final Slot<DaySpan> GOOD = Slot.one("", Senses.longest(OutcomeFacts::good));
    private static final Slot<Sign> SIGN = Slot.many("", Senses.oneOf(Terms.SIGNS));
    private static final Slot<Failure.Roots> ROOTS = Slot.one("", Senses.oneOf("roots", Terms.FAILED_ROOTS));
    private static final Slot<String> CUT_BUD = Slot.one("", Senses.phraseAfter("cut bud", "cut bulb"));
    private static final Slot<Cause> CAUSE = Slot.one("cause", Senses.oneOf("cause", Terms.CAUSES));
    private static final Slot<Boolean> CAUSE_OPEN = Slot.one("cause", Senses.flag("cause (?:left )?open"));
    private static final Pattern GOOD_DAYS = Pattern.compile("good (?:from )?(.+?)(?: to | until |-)(.+)");

    /** The word alone: what follows is of how the pot did, be it only a note. */
    private static final Slot<Boolean> NAMED = Slot.one("outcome", Senses.flag("outcome"));

    /** What only an outcome says. */
    private static final List<Slot<?>> OWN = Stream.concat(
                    Stream.of(SCORE, FLOWERS, GOOD, SIGN, ROOTS, CUT_BUD, CAUSE, CAUSE_OPEN),
                    ImpressionFacts.SLOTS.stream())
            .toList();

    static final List<Slot<?>> SLOTS = Stream.concat(
                    OWN.stream(), Stream.of(NAMED, Slots.LENGTH, Slots.DAY, Slots.NOTE))
            .toList();

    private static Heard<Integer> score(int score) {
        return score >= 1 && score <= 5
                ? Heard.as(score)
                : Heard.not("1 to 5", "A score is 1 to 5, not " + score + ".");
    }

    private static Optional<Heard<DaySpan>> good(String words, Bench bench) {
        return Groups.of(GOOD_DAYS, Fold.of(words))
                .flatMap(said -> bench.days(Looking.BACK)
                        .tryParse(said.text(1))
                        .flatMap(from ->
                                bench.days(Looking.BACK).tryParse(said.text(2)).map(to -> span(from, to))));
    }

    private static Heard<DaySpan> span(Heard<Day> from, Heard<Day> to) {
        return from.map(Day::likely)
                .then(first -> to.map(Day::likely)
                        .then(last -> first.isAfter(last)
                                ? Heard.not(
                                        "not in order",
                                        Days.full(first) + " is after " + Days.full(last)
                                                + ". Write the first good day first.")
                                : Heard.as(DaySpan.ofInclusive(first, last))));
    }

    /** Whether anything is said of how a pot did. */
    boolean isAny() {
        return OWN.stream().anyMatch(filled::has)
                || (filled.has(NAMED) && (filled.has(Slots.LENGTH) || filled.has(Slots.NOTE)));
    }

    /** The outcome with what is written put over what it was. */
    Outcome over(Outcome before) {
        return new Outcome(
                before.id(),
                before.pot(),
                before.variety(),
                filled.get(Slots.DAY).orElse(before.day()),
                filled.get(SCORE).or(before::score),
                filled.get(FLOWERS).or(before::flowers),
                filled.get(Slots.LENGTH).or(before::height),
                filled.get(GOOD).map(DaySpan::start).or(before::firstGood),
                filled.get(GOOD).map(DaySpan::last).or(before::lastGood),
                over(before.failure()),
                impression().over(before.impression()),
                filled.get(Slots.NOTE).orElse(before.note()));
    }

    private Failure over(Failure before) {
        Set<Sign> signs = new HashSet<>(before.signs());
        signs.addAll(filled.all(SIGN));
        return new Failure(
                signs,
                filled.get(ROOTS).or(before::roots),
                filled.get(CUT_BUD).orElse(before.cutBud()),
                filled.has(CAUSE_OPEN) ? Optional.empty() : filled.get(CAUSE).or(before::cause));
    }

    private ImpressionFacts impression() {
        return new ImpressionFacts(filled);
    }

    void say(Draft draft) {
        filled.get(SCORE).ifPresent(score -> draft.means("score " + score + " of 5"));
        filled.get(FLOWERS).ifPresent(flowers -> draft.means(Counts.of(flowers, "flower")));
        filled.get(Slots.LENGTH)
                .ifPresent(height -> draft.means(
                        Lengths.say(height, draft.bench().journal().settings().lengths()) + " tall"));
        filled.get(GOOD)
                .ifPresent(days -> draft.means(
                        "good " + Days.fromTo(days.start(), days.last()) + ", " + Counts.of(days.days(), "day")));
        filled.all(SIGN).forEach(sign -> draft.means("sign: " + Terms.SIGNS.say(sign)));
        filled.get(ROOTS).ifPresent(roots -> draft.means("roots " + Terms.FAILED_ROOTS.say(roots)));
        filled.get(CUT_BUD).ifPresent(words -> draft.means("cut bud: " + words));
        filled.get(CAUSE).ifPresent(cause -> draft.means("cause: " + Terms.CAUSES.say(cause)));
        filled.get(CAUSE_OPEN).ifPresent(open -> draft.means("cause left open"));
        impression().say(draft);
        Lines.noted(filled.get(Slots.NOTE).orElse(""), draft);
    }

    /** More bulbs in flower than there are, in a pot or of the variety that is meant. */
    Optional<Complaint> tooMany(List<Pot> pots, Optional<Id<Variety>> variety) {
        return filled.get(FLOWERS)
                .flatMap(flowers -> pots.stream()
                        .filter(pot -> bulbs(pot, variety) < flowers)
                        .findFirst()
                        .map(pot -> tooMany(pot, bulbs(pot, variety), flowers)));
    }

    private static int bulbs(Pot pot, Optional<Id<Variety>> variety) {
        return variety.map(pot::bulbsOf).orElseGet(pot::bulbs);
    }

    private static Complaint tooMany(Pot pot, int bulbs, int flowers) {
        String holds = pot.label() + " holds " + Counts.of(bulbs, "bulb") + (bulbs < pot.bulbs() ? " of it" : "");
        return new Complaint(
                bulbs + " bulbs in it",
                holds + "; " + flowers + " cannot have flowered. Write how many of the bulbs did.");
    }
}
