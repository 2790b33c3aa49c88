// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.model.Day;
import sillbook.model.Intention;
import sillbook.model.JobKind;
import sillbook.model.Journal;
import sillbook.model.OwnFigure.Range;
import sillbook.model.Pot;
import sillbook.model.Pot.Planting;
import sillbook.model.Proposal.Course;
import sillbook.model.Stage;
import sillbook.model.Wish;
import sillbook.reckon.dates.Facts;
import sillbook.reckon.dates.Milestone;
import sillbook.reckon.dates.Window;

/** Works out for one pot what is to come. */
record PotReading(Journal journal, Figures figures, LocalDate today) {

    Foretold foretell(PotLife life) {
        PotFigures needs = figures.of(life);
        ColdReading cold = new ColdReading(journal, today);
        List<Prospect.Share> shares = shares(life, needs, cold);
        Pins pins = new Pins(life, needs, ColdNeed.of(shares), cold, meant(life.pot()));
        Optional<Wish> wish = nearestWish(life.pot());
        Optional<WishReading> wished = wish.map(given -> new WishReading(given, shareOf(given, needs, shares)));
        Prospect prospect = prospect(pins, shares, wished);
        Map<Milestone, Window> windows = prospect.windows();
        return new Foretold(
                life,
                needs,
                pins,
                prospect,
                windows,
                prospect.coldEnoughOn()
                        .filter(day -> life.stage() == Stage.COLD)
                        .map(day -> signs(life, needs).judge(day, today)),
                wished.map(reading -> reading.stand(prospect, windows)));
    }

    private Optional<Course> meant(Pot pot) {
        return Intention.of(pot.id(), journal).map(Intention::course);
    }

    static Signs signs(PotLife life, PotFigures figures) {
        Range goodShoot =
                figures.find(FigureName.READY_SHOOT).map(FigureInForce::range).orElse(Signs.USUAL_SHOOT);
        Optional<LocalDate> cameHere = life.stands().map(stay -> stay.since().likely());
        return new Signs(life.seen().rootsIn(life.pot().way()), life.seen().shoot(), cameHere, goodShoot);
    }

    private Prospect prospect(Pins pins, List<Prospect.Share> shares, Optional<WishReading> wish) {
        Facts facts = pins.facts();
        Optional<Milestone> next = pins.next();
        return new Prospect(
                shares,
                pins.coldNeed(),
                pins.coldAhead(),
                facts,
                next,
                next.flatMap(milestone -> begins(pins, milestone, wish)),
                next.flatMap(milestone -> pins.meant()
                        .flatMap(course -> begins(course, pins))
                        .or(() -> wish.flatMap(reading -> reading.on(milestone)))),
                pins.meant().map(Course::in),
                pins.slack(),
                today);
    }

    /** The day a plan would have a stage begin; it says nothing of those after the coming in. */
    private static Optional<LocalDate> begins(Course course, Pins pins) {
        if (pins.life().standing() instanceof Standing.Waiting) {
            return Optional.of(course.potting());
        }
        return pins.life().stage() == Stage.COLD ? Optional.of(course.in()) : Optional.empty();
    }

    /** When a stage begins that follows from no other: potting, and the cold of a pot that stands outside it. */
    private Optional<Window> begins(Pins pins, Milestone next, Optional<WishReading> wish) {
        PotLife life = pins.life();
        if (life.standing() instanceof Standing.Waiting) {
            return Optional.of(potting(pins, next, wish));
        }
        if (next == Milestone.COLD) {
            LocalDate potted = life.potted().map(Day::likely).orElse(today);
            return Optional.of(new Window(potted, today, today));
        }
        return Optional.empty();
    }

    /** By the wish, else by the day that was said, else at the usual time; a day that was said after a plan was adopted goes before it. */
    private Window potting(Pins pins, Milestone next, Optional<WishReading> wish) {
        Optional<Window> said = pottingPutOff(pins.life());
        Optional<Window> wished = wish.flatMap(reading -> reading.window(next));
        return pins.meant().isPresent()
                ? said.orElseGet(() -> usualPotting(pins))
                : wished.or(() -> said).orElseGet(() -> usualPotting(pins));
    }

    /** The day the grower said it will be potted. */
    private static Optional<Window> pottingPutOff(PotLife life) {
        return life.answers().delay(JobKind.POT_UP).map(delay -> Window.on(delay.until()));
    }

    private Window usualPotting(Pins pins) {
        PottingTime time = pins.figures().needsCold() ? PottingTime.WITH_COLD : PottingTime.WITHOUT_COLD;
        return time.in(pins.life().pot().season(), journal.settings().seasonStart());
    }

    private static List<Prospect.Share> shares(PotLife life, PotFigures figures, ColdReading cold) {
        List<Planting> plantings = life.pot().plantings();
        List<Prospect.Share> shares = new ArrayList<>();
        for (int i = 0; i < plantings.size(); i++) {
            DryCold dry = cold.dry(plantings.get(i), life.potted());
            shares.add(new Prospect.Share(figures.varieties().get(i).need(), dry));
        }
        return shares;
    }

    private Optional<Wish> nearestWish(Pot pot) {
        return journal.wishes().all().stream()
                .filter(wish -> wish.pots().contains(pot.id()) && !wish.to().isBefore(today))
                .min(Comparator.comparing(Wish::from).thenComparing(Wish::id));
    }

    /** The bulbs that a wish is for: those of its kind, where it names one. */
    private static Prospect.Share shareOf(Wish wish, PotFigures figures, List<Prospect.Share> shares) {
        for (int i = 0; i < shares.size(); i++) {
            String kind = figures.varieties().get(i).kind().name();
            if (wish.kind().filter(wished -> wished.name().equals(kind)).isPresent()) {
                return shares.get(i);
            }
        }
        return shares.get(0);
    }
}
