// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Optional;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.model.Day;
import sillbook.model.Findings.Roots;
import sillbook.model.Length;
import sillbook.model.OwnFigure.Range;
import sillbook.model.Stage;

/** Judges whether a pot in the cold may come in, by the table of {@link ComingIn}. */
record ReadinessReading(PotLife life, PotFigures figures, LocalDate today) {
    /** A look that found no roots speaks for so many days; after that nobody has looked (common practice). */
    static final int NO_ROOTS_SPEAKS_DAYS = 14;

    /** A shoot above this is tall, in cm, whatever a kind's own figure is (common practice). */
    static final double TALL = 8;

    /**
     * The judgement.
     *
     * @param coldEnoughOn the day its weeks are had; empty of a pot that needs none
     */
    Optional<Readiness> judge(Optional<LocalDate> coldEnoughOn) {
        if (life.stage() != Stage.COLD) {
            return Optional.empty();
        }
        return coldEnoughOn.map(this::judge);
    }

    private Readiness judge(LocalDate coldEnoughOn) {
        ComingIn.Weeks weeks = coldEnoughOn.isAfter(today) ? ComingIn.Weeks.SHORT : ComingIn.Weeks.ENOUGH;
        Verdict verdict = ComingIn.judge(weeks, roots(), shoot());
        Optional<LocalDate> since =
                verdict == Verdict.MAY_COME_IN ? Optional.of(later(coldEnoughOn, firstSign())) : Optional.empty();
        return new Readiness(verdict, coldEnoughOn, speaking(), life.seen().shoot(), since);
    }

    /** What was seen of the roots, while it says anything of today. */
    private Optional<Noted<Roots>> speaking() {
        return life.seen()
                .roots()
                .filter(seen -> seen.value() == Roots.SHOWING
                        || today.isBefore(seen.day().likely().plusDays(NO_ROOTS_SPEAKS_DAYS)));
    }

    private ComingIn.Roots roots() {
        return speaking()
                .map(seen -> seen.value() == Roots.SHOWING ? ComingIn.Roots.SHOWING : ComingIn.Roots.NONE)
                .orElse(ComingIn.Roots.NOBODY_LOOKED);
    }

    private ComingIn.Shoot shoot() {
        return life.seen().shoot().map(this::shoot).orElse(ComingIn.Shoot.NOBODY_LOOKED);
    }

    /** A tall shoot says nothing against a place the pot has come to since. */
    private ComingIn.Shoot shoot(Noted<Length> seen) {
        double height = seen.value().centimetres();
        if (height < range().low()) {
            return ComingIn.Shoot.LOW;
        }
        boolean isTall = height > Math.max(range().high(), TALL);
        boolean grewHere = life.stands()
                .map(stay -> !seen.day().likely().isBefore(stay.since().likely()))
                .orElse(true);
        return isTall && grewHere ? ComingIn.Shoot.TALL : ComingIn.Shoot.RIGHT;
    }

    private Range range() {
        return figures.find(FigureName.READY_SHOOT).map(FigureInForce::range).orElseThrow();
    }

    private LocalDate firstSign() {
        Optional<LocalDate> rooted = life.seen()
                .roots()
                .filter(seen -> seen.value() == Roots.SHOWING)
                .map(Noted::day)
                .map(Day::likely);
        Optional<LocalDate> shot = life.seen()
                .shoot()
                .filter(seen -> seen.value().centimetres() >= range().low())
                .map(Noted::day)
                .map(Day::likely);
        return rooted.filter(day -> shot.filter(day::isAfter).isEmpty())
                .or(() -> shot)
                .orElse(today);
    }

    private static LocalDate later(LocalDate one, LocalDate other) {
        return other.isAfter(one) ? other : one;
    }
}
