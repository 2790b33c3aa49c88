// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.round;

import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import sillbook.model.Findings;
import sillbook.model.Findings.Firmness;
import sillbook.model.Findings.Growth;
import sillbook.model.Findings.Moisture;
import sillbook.model.Findings.Roots;
import sillbook.model.Findings.Trouble;
import sillbook.model.Findings.Water;
import sillbook.model.Pot.Way;
import sillbook.ui.screen.Action;
import sillbook.words.Terms;

/** What one key says of a pot. The order is that of the line a round can be written as. */
enum Mark {
    DRY(
            Action.MARK_DRY,
            Terms.MOISTURES.say(Moisture.DRY),
            Terms.WATERS.say(Water.LOW),
            found -> found.withMoisture(Moisture.DRY).withWatered(true)),
    WET(
            Action.MARK_WET,
            Terms.MOISTURES.say(Moisture.WET),
            Terms.WATERS.say(Water.HIGH),
            found -> found.withMoisture(Moisture.WET)),
    ROOTS(Action.MARK_ROOTS, Terms.ROOTS.say(Roots.SHOWING), found -> found.withRoots(Roots.SHOWING)),
    NO_ROOTS(Action.MARK_NO_ROOTS, "no roots", found -> found.withRoots(Roots.NONE)),
    BUDS(Action.MARK_BUDS, Terms.GROWTHS.say(Growth.BUDS), found -> found.with(Growth.BUDS)),
    COLOUR(Action.MARK_COLOUR, Terms.GROWTHS.say(Growth.COLOUR), found -> found.with(Growth.COLOUR)),
    MOULD(Action.MARK_MOULD, Terms.TROUBLES.say(Trouble.MOULD), found -> found.with(Trouble.MOULD)),
    MICE(Action.MARK_MICE, Terms.TROUBLES.say(Trouble.MICE), found -> found.with(Trouble.MICE)),
    FROST(Action.MARK_FROST, Terms.TROUBLES.say(Trouble.FROST), found -> found.with(Trouble.FROST)),
    CLOUDY(
            Action.MARK_CLOUDY,
            Terms.TROUBLES.say(Trouble.CLOUDY),
            found -> found.with(Trouble.CLOUDY).withWatered(true)),
    SOFT(Action.MARK_SOFT, Terms.FIRMNESSES.say(Firmness.SOFT), found -> found.withFirmness(Firmness.SOFT));

    private static final Set<Mark> MOISTURES = Set.of(DRY, WET);
    private static final Set<Mark> ROOT_MARKS = Set.of(ROOTS, NO_ROOTS);

    private final Action action;
    private final String words;
    private final String overWater;

    /** Without state. */
    @SuppressWarnings("ImmutableEnumChecker") // a function has no type that says it keeps nothing
    private final UnaryOperator<Findings> seen;

    Mark(Action action, String words, UnaryOperator<Findings> seen) {
        this(action, words, words, seen);
    }

    Mark(Action action, String words, String overWater, UnaryOperator<Findings> seen) {
        this.action = action;
        this.words = words;
        this.overWater = overWater;
        this.seen = seen;
    }

    Action action() {
        return action;
    }

    /** As the line has it of a pot grown that way. */
    String words(Way way) {
        return way.isOverWater() ? overWater : words;
    }

    /** As the page shows it: what is to be done about it is done on the spot. */
    String shown(Way way) {
        return words(way) + done(way);
    }

    private String done(Way way) {
        return switch (this) {
            case DRY -> way.isOverWater() ? ", topped up" : way == Way.BOWL ? ", watered, tipped" : ", watered";
            case CLOUDY -> ", changed";
            default -> "";
        };
    }

    /** Whether it can be said of a pot grown that way. */
    boolean isOf(Way way) {
        return this == CLOUDY ? way.isOverWater() : !ROOT_MARKS.contains(this) || way.showsRoots();
    }

    Findings addTo(Findings found) {
        return seen.apply(found);
    }

    /** Whether it can be said of bulbs that are not potted. */
    boolean isOfDryBulbs() {
        return this == SOFT || this == MOULD || this == MICE || this == FROST;
    }

    /** Whether a pot cannot be both. */
    boolean excludes(Mark other) {
        return other != this
                && Stream.of(MOISTURES, ROOT_MARKS).anyMatch(group -> group.contains(this) && group.contains(other));
    }

    static Optional<Mark> of(Action action) {
        return Stream.of(values()).filter(mark -> mark.action == action).findFirst();
    }
}
