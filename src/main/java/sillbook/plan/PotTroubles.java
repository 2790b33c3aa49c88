// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.SeasonPlan;
import sillbook.plan.Trouble.Cure;
import sillbook.plan.Trouble.Sort;
import sillbook.reckon.dates.DaySpan;

/** Looks for what single pots of a plan, and the places they stand at, cannot do. */
record PotTroubles(Planning planning, SeasonPlan plan, List<PlannedPot> pots, Loads loads, List<Berth> berths) {

    List<Trouble> list() {
        List<Trouble> found = new ArrayList<>();
        for (int number = 0; number < pots.size(); number++) {
            if (pots.get(number).candidate().isOpen()) {
                found.addAll(new ColdTroubles(planning, pots.get(number), number).list());
            }
        }
        found.addAll(new BulbTroubles(planning.journal(), plan, pots).list());
        found.addAll(onPottingDays());
        berths.forEach(berth -> found.addAll(at(berth)));
        return found;
    }

    private List<Trouble> at(Berth berth) {
        List<Trouble> found = new ArrayList<>();
        for (DaySpan days : loads.crowded(berth)) {
            int most = days.start()
                    .datesUntil(days.endExclusive())
                    .mapToInt(day -> loads.on(berth.id(), day))
                    .max()
                    .orElse(0);
            int room = berth.room().orElse(0);
            List<Cure> cures = List.of(new Trouble.MoreRoom(berth.id(), most - room));
            found.add(new Trouble(
                    Sort.NO_ROOM,
                    standing(berth.id(), days),
                    Optional.of(berth.id()),
                    Optional.of(days),
                    room,
                    most,
                    cures));
        }
        for (int number = 0; number < pots.size(); number++) {
            notThere(berth, number).ifPresent(found::add);
        }
        return found;
    }

    private Set<Integer> standing(Id<Place> place, DaySpan days) {
        Set<Integer> found = new HashSet<>();
        for (int number = 0; number < pots.size(); number++) {
            if (days(pots.get(number), place)
                    .flatMap(there -> there.intersection(days))
                    .isPresent()) {
                found.add(number);
            }
        }
        return found;
    }

    /** The days on which a pot stands at a place. */
    private static Optional<DaySpan> days(PlannedPot pot, Id<Place> place) {
        if (pot.course().room().equals(Optional.of(place))) {
            return Optional.of(DaySpan.of(pot.course().in(), pot.gone()));
        }
        return pot.course().cold().equals(Optional.of(place))
                ? Optional.of(DaySpan.of(pot.course().potting(), pot.course().in()))
                : Optional.empty();
    }

    private Optional<Trouble> notThere(Berth berth, int number) {
        return days(pots.get(number), berth.id())
                .filter(days -> days.start().datesUntil(days.endExclusive()).anyMatch(day -> !berth.isThere(day)))
                .map(days -> new Trouble(
                        Sort.NOT_THERE, Set.of(number), Optional.of(berth.id()), Optional.of(days), 0, 0, List.of()));
    }

    private List<Trouble> onPottingDays() {
        Map<LocalDate, Set<Integer>> byDay = new TreeMap<>();
        for (int number = 0; number < pots.size(); number++) {
            PlannedPot pot = pots.get(number);
            if (pot.candidate().isOpen() && pot.candidate().cold().isEmpty()) {
                byDay.computeIfAbsent(pot.course().potting(), day -> new HashSet<>())
                        .add(number);
            }
        }
        List<Trouble> found = new ArrayList<>();
        byDay.forEach((day, potted) -> {
            int most = plan.rule().isPottingDay(day) ? plan.rule().pottedADay() : 0;
            if (potted.size() > most) {
                found.add(new Trouble(
                        Sort.POTTING_DAY,
                        potted,
                        Optional.empty(),
                        Optional.of(DaySpan.ofInclusive(day, day)),
                        most,
                        potted.size(),
                        List.of()));
            }
        });
        return found;
    }
}
