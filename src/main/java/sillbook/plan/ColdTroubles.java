// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import sillbook.model.Band;
import sillbook.plan.Trouble.Cure;
import sillbook.plan.Trouble.Sort;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.GroundForetold;

/** Looks for what is wrong with the cold of one pot of a plan. */
record ColdTroubles(Planning planning, PlannedPot pot, int number) {
    /** A pot must be taken out of frost below this, in C; common practice, as the journal acts on it elsewhere. */
    private static final double BEARS = -2;

    /** A trench that freezes at the pots in more than one winter of five is no place for them: a judgement of ours. */
    private static final double OFTEN = 0.2;

    private static final int TENTHS = 10;

    List<Trouble> list() {
        List<Trouble> found = new ArrayList<>();
        pot.candidate().cold().flatMap(this::there).ifPresent(found::add);
        if (pot.candidate().cold().isEmpty() && pot.candidate().needsCold()) {
            berth().ifPresentOrElse(berth -> found.addAll(at(berth)), () -> found.add(nowhere()));
        }
        boolean isLate = pot.course().potting().isBefore(pot.candidate().readyFrom())
                && pot.candidate().cold().isEmpty();
        if (isLate) {
            found.add(trouble(Sort.POTTED_TOO_LATE, 0, 0, later()));
        }
        return found;
    }

    /** Of a pot that stands in the cold: whether it comes in before its weeks are had, or after it may wait. */
    private Optional<Trouble> there(Candidate.InCold cold) {
        int had = Dates.between(cold.potted(), pot.course().in());
        if (pot.course().in().isBefore(cold.in().start())) {
            List<Cure> later = List.of(new Trouble.BringIn(number, cold.in().start()));
            return Optional.of(
                    trouble(Sort.COLD_TOO_SHORT, had, pot.candidate().forcing().usualCold(), later));
        }
        return pot.course().in().isBefore(cold.in().endExclusive())
                ? Optional.empty()
                : Optional.of(trouble(
                        Sort.COLD_TOO_LONG,
                        had,
                        pot.candidate().forcing().mostCold(),
                        List.of(new Trouble.BringIn(number, cold.in().last()))));
    }

    private Optional<Berth> berth() {
        return pot.course().cold().flatMap(planning::cold);
    }

    private List<Trouble> at(Berth berth) {
        List<Trouble> found = new ArrayList<>();
        int had = ColdFit.cold(berth, pot.course().potting(), pot.course().in());
        if (had < pot.candidate().forcing().leastCold()) {
            found.add(
                    trouble(Sort.COLD_TOO_SHORT, had, pot.candidate().forcing().usualCold(), more(berth)));
        }
        if (had > pot.candidate().forcing().mostCold()) {
            found.add(trouble(Sort.COLD_TOO_LONG, had, pot.candidate().forcing().mostCold(), List.of()));
        }
        if (freezes(berth)) {
            found.add(trouble(
                    Sort.WOULD_FREEZE,
                    0,
                    (int) (BEARS * TENTHS),
                    elsewhere(other -> !other.id().equals(berth.id()) && !freezes(other))));
        }
        return found;
    }

    private boolean freezes(Berth berth) {
        boolean isTooCold = berth.place()
                .usual()
                .map(Band::low)
                .filter(low -> low.celsius() < BEARS)
                .isPresent();
        return isTooCold
                || planning.outlook()
                        .ground(berth.id())
                        .map(GroundForetold::chance)
                        .filter(chance -> chance > OFTEN)
                        .isPresent();
    }

    private Trouble nowhere() {
        return trouble(Sort.NO_COLD_PLACE, 0, pot.candidate().forcing().usualCold(), elsewhere(any -> true));
    }

    private Trouble trouble(Sort sort, int had, int needed, List<Cure> cures) {
        return new Trouble(sort, Set.of(number), pot.course().cold(), days(), had, needed, cures);
    }

    private Optional<DaySpan> days() {
        return pot.course().potting().isBefore(pot.course().in())
                ? Optional.of(DaySpan.of(pot.course().potting(), pot.course().in()))
                : Optional.empty();
    }

    /** It is potted earlier, as long as that can be; else it comes in later. */
    private List<Cure> more(Berth berth) {
        return pot.candidate()
                .fit()
                .potting(berth, pot.course().in())
                .<List<Cure>>map(day -> List.of(new Trouble.PotBy(number, day)))
                .orElseGet(this::later);
    }

    private List<Cure> later() {
        LocalDate in = pot.course().in();
        return pot.candidate()
                .in(planning.days())
                .map(days -> days.start())
                .filter(in::isBefore)
                .<List<Cure>>map(day -> List.of(new Trouble.BringIn(number, day)))
                .orElse(List.of());
    }

    /** The first place from which it could come in on its day, of those that will do. */
    private List<Cure> elsewhere(Predicate<Berth> does) {
        return pot.candidate().fit().fitting(planning.colds(), pot.course().in()).stream()
                .filter(does)
                .<Cure>map(berth -> new Trouble.StandAt(number, berth.id()))
                .limit(1)
                .toList();
    }
}
