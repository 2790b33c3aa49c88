// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Findings.Roots;
import sillbook.model.Length;
import sillbook.model.OwnFigure.Range;
import sillbook.reckon.dates.Dates;

/**
 * What a pot in the cold is judged by, beside its weeks.
 *
 * @param roots as last seen
 * @param shoot as last seen
 * @param cameHere the day it came to the place where it stands
 * @param goodShoot the shoot of a pot that may come in, in cm
 */
public record Signs(
        Optional<Noted<Roots>> roots, Optional<Noted<Length>> shoot, Optional<LocalDate> cameHere, Range goodShoot) {
    /** A look that found no roots speaks for so many days; after that nobody has looked (common practice). */
    static final int NO_ROOTS_SPEAKS_DAYS = 14;

    /** A shoot above this is tall, in cm, whatever a kind's own figure is (common practice). */
    static final double TALL = 8;

    /** For a kind of which no figure says how tall its shoot should be. */
    static final Range USUAL_SHOOT = new Range(4, 5, TALL);

    /** The judgement by the table of {@link ComingIn}. */
    Readiness judge(LocalDate coldEnoughOn, LocalDate today) {
        ComingIn.Weeks weeks = coldEnoughOn.isAfter(today) ? ComingIn.Weeks.SHORT : ComingIn.Weeks.ENOUGH;
        Verdict verdict = ComingIn.judge(weeks, rootsSeen(today), shootSeen());
        Optional<LocalDate> since =
                firstSign().filter(day -> verdict == Verdict.MAY_COME_IN).map(day -> Dates.later(day, coldEnoughOn));
        return new Readiness(verdict, coldEnoughOn, speaking(today), shoot, since);
    }

    /** What was seen of the roots, while it says anything of today. */
    private Optional<Noted<Roots>> speaking(LocalDate today) {
        return roots.filter(seen -> seen.value() == Roots.SHOWING
                || today.isBefore(seen.day().likely().plusDays(NO_ROOTS_SPEAKS_DAYS)));
    }

    private ComingIn.Roots rootsSeen(LocalDate today) {
        return speaking(today)
                .map(seen -> seen.value() == Roots.SHOWING ? ComingIn.Roots.SHOWING : ComingIn.Roots.NONE)
                .orElse(ComingIn.Roots.NOBODY_LOOKED);
    }

    private ComingIn.Shoot shootSeen() {
        return shoot.map(this::shootSeen).orElse(ComingIn.Shoot.NOBODY_LOOKED);
    }

    /** A tall shoot says nothing against a place the pot has come to since. */
    private ComingIn.Shoot shootSeen(Noted<Length> seen) {
        double height = seen.value().centimetres();
        if (height < goodShoot.low()) {
            return ComingIn.Shoot.LOW;
        }
        boolean grewHere = cameHere.filter(seen.day().likely()::isBefore).isEmpty();
        return height > Math.max(goodShoot.high(), TALL) && grewHere ? ComingIn.Shoot.TALL : ComingIn.Shoot.RIGHT;
    }

    private Optional<LocalDate> firstSign() {
        Optional<Day> rooted =
                roots.filter(seen -> seen.value() == Roots.SHOWING).map(Noted::day);
        Optional<Day> shot = shoot.filter(seen -> seen.value().centimetres() >= goodShoot.low())
                .map(Noted::day);
        return Stream.of(rooted, shot)
                .flatMap(Optional::stream)
                .map(Day::likely)
                .min(LocalDate::compareTo);
    }
}
