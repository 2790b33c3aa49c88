// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import sillbook.model.Day;
import sillbook.model.Happening;
import sillbook.model.Happening.Care;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Place.Sort;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.Stage;
import sillbook.model.Subject;
import sillbook.reckon.dates.Window;

/** Asks for looks at pots and dry bulbs: place by place at the place's own interval, and once a day for all out of the cold. */
final class Rounds {
    private final Journal journal;
    private final LocalDate today;
    /** Dry bulbs are felt once a week (common practice). */
    private static final int DRY_BULBS_EVERY_DAYS = 7;

    private final Standings standings;
    private final DryBulbs dryBulbs;

    /** Worked out when first asked for. */
    private final Map<Id<Place>, Optional<Job.Round>> known = new ConcurrentHashMap<>();

    Rounds(Journal journal, LocalDate today, Standings standings, DryBulbs dryBulbs) {
        this.journal = journal;
        this.today = today;
        this.standings = standings;
        this.dryBulbs = dryBulbs;
    }

    /** The next round of every place that is asked for, the longest due and then the fullest first. */
    List<Job.Round> list() {
        return journal.places().all().stream()
                .flatMap(place -> of(place).stream())
                .sorted(Comparator.comparing(Job.Round::on)
                        .thenComparing(round -> -round.pots().size()))
                .toList();
    }

    /** What a round looks at: pots, but where they belong to the daily care, and dry bulbs. */
    private record There(List<PotLife> pots, List<WaitingBulbs> bulbs) {
        boolean isNothing() {
            return pots.isEmpty() && bulbs.isEmpty();
        }
    }

    private There at(Place place) {
        return new There(isDaily(place) ? List.of() : wateredAt(place), dryBulbs.lookedAfterAt(place.id()));
    }

    /** What stands there but for what rests: that is left dry, and asked for when its rest is over. */
    private List<PotLife> wateredAt(Place place) {
        return standings.at(place.id()).stream()
                .filter(life -> life.restingSince().isEmpty())
                .toList();
    }

    /** The next round of a place; empty where it is never asked for, belongs to the daily care, or nothing stands. */
    Optional<Job.Round> of(Place place) {
        return known.computeIfAbsent(place.id(), id -> read(place));
    }

    private Optional<Job.Round> read(Place place) {
        There there = at(place);
        if (there.isNothing() || everyDays(place, there) == 0) {
            return Optional.empty();
        }
        Answers answers = answers(place);
        RoundDue due = why(place, there, answers);
        LocalDate next = due.result();
        Window window = new Window(next, next, next.plusDays(due.everyDays()));
        Optional<Job.Delay> delay =
                answers.delay(JobKind.CHECK).filter(put -> put.until().isAfter(next));
        LocalDate on = delay.map(Job.Delay::until).orElse(next);
        return Optional.of(new Job.Round(
                place.id(),
                ids(there.pots()),
                there.bulbs().stream().map(bulbs -> bulbs.purchase().id()).toList(),
                due.everyDays(),
                due.last(),
                window,
                on,
                Due.on(on, today),
                delay,
                List.of(),
                due.afterFrost().filter(day -> !day.isAfter(next)).isPresent()));
    }

    /**
     * The place's own interval. A trench that is never asked for while it is buried is asked for like any other cold place once a
     * pot was lifted there: now there is something to see, and what was seen speaks for the others (common practice). Dry bulbs are
     * asked for weekly wherever they wait.
     */
    private static int everyDays(Place place, There there) {
        boolean isOpened = place.sort() == Sort.TRENCH && there.pots().stream().anyMatch(Rounds::isLifted);
        int own = place.checkEveryDays() == 0 && isOpened ? Sort.OTHER.usualCheckDays() : place.checkEveryDays();
        if (there.bulbs().isEmpty()) {
            return own;
        }
        return own == 0 || isDaily(place) ? DRY_BULBS_EVERY_DAYS : Math.min(own, DRY_BULBS_EVERY_DAYS);
    }

    /** Whether a pot was lifted since it came to where it stands now. */
    private static boolean isLifted(PotLife life) {
        LocalDate came = life.stands().orElseThrow().since().likely();
        return life.cares().stream()
                .anyMatch(care ->
                        care.value() == Care.LIFTED && !care.day().likely().isBefore(came));
    }

    /** A place out of the cold that is looked at every day. */
    private static boolean isDaily(Place place) {
        return place.serves() != Stage.COLD && place.checkEveryDays() == 1;
    }

    private Answers answers(Place place) {
        return Answers.of(journal.history(new Subject.OfPlace(place.id())), today);
    }

    /** Why the round of a place falls on its day; empty where there is none. */
    Optional<RoundDue> why(Place place) {
        return of(place).map(round -> why(place, at(place), answers(place)));
    }

    /** A round that was left out counts as if it had been made. */
    private RoundDue why(Place place, There there, Answers answers) {
        Map<Id<Pot>, LocalDate> looks = new LinkedHashMap<>();
        there.pots().forEach(life -> looks.put(life.pot().id(), lastLook(life)));
        Map<Id<Purchase>, LocalDate> felt = new LinkedHashMap<>();
        there.bulbs().forEach(bulbs -> felt.put(bulbs.purchase().id(), bulbs.lastLook()));
        Optional<LocalDate> leftOut =
                Optional.ofNullable(answers.leftOut().get(JobKind.CHECK)).map(Day::likely);
        return RoundDue.of(looks, felt, leftOut, afterFrost(there, leftOut), everyDays(place, there));
    }

    /** The first day on which one there is to be looked at for softness; a round that was left out since counts as made. */
    private Optional<LocalDate> afterFrost(There there, Optional<LocalDate> leftOut) {
        return there.pots().stream()
                .filter(life -> life.stage().isBefore(Stage.IN_BLOOM))
                .flatMap(life -> Frost.of(journal, life, today).flatMap(Frost::lookOn).stream())
                .filter(day -> leftOut.filter(left -> !left.isBefore(day)).isEmpty())
                .min(Comparator.naturalOrder());
    }

    private static LocalDate lastLook(PotLife life) {
        LocalDate came = life.stands().orElseThrow().since().likely();
        return life.seen().lastLook().map(Day::likely).filter(came::isBefore).orElse(came);
    }

    private static List<Id<Pot>> ids(List<PotLife> lives) {
        return lives.stream().map(life -> life.pot().id()).toList();
    }

    /** The daily care that is left for today; empty when all is done, none is wanted, or nothing stands out. */
    Optional<Job.DailyCare> dailyCare() {
        if (!journal.settings().dailyCare()) {
            return Optional.empty();
        }
        List<Place> daily = journal.places().all().stream()
                .filter(place -> isDaily(place) && !isExcused(answers(place)))
                .toList();
        List<PotLife> all = daily.stream()
                .flatMap(place -> wateredAt(place).stream())
                .sorted(ByLabel.OF_LIVES)
                .toList();
        List<PotLife> left = all.stream().filter(life -> !wasTouchedToday(life)).toList();
        List<Id<Place>> places = daily.stream()
                .map(Place::id)
                .filter(place -> left.stream()
                        .anyMatch(life -> life.stands()
                                .filter(stay -> stay.place().equals(place))
                                .isPresent()))
                .toList();
        return left.isEmpty() ? Optional.empty() : Optional.of(new Job.DailyCare(ids(left), all.size(), places, today));
    }

    private boolean isExcused(Answers answers) {
        boolean isPutOff = answers.delay(JobKind.DAILY_CARE)
                .filter(put -> put.until().isAfter(today))
                .isPresent();
        boolean isLeftOut = Optional.ofNullable(answers.leftOut().get(JobKind.DAILY_CARE))
                .filter(day -> day.likely().equals(today))
                .isPresent();
        return isPutOff || isLeftOut;
    }

    private boolean wasTouchedToday(PotLife life) {
        return journal.history(life.pot().id()).stream()
                .anyMatch(event -> event.day().likely().equals(today) && isTouch(event.what()));
    }

    private static boolean isTouch(Happening what) {
        return what instanceof Happening.Checked
                || what instanceof Happening.Cared
                || what instanceof Happening.Moved
                || what instanceof Happening.Flowered
                || what instanceof Happening.Potted;
    }
}
