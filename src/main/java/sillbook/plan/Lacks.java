// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.model.SeasonPlan.Rule;
import sillbook.model.Wish;
import sillbook.plan.Trouble.Cure;
import sillbook.plan.Trouble.Sort;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DaySpan;

/**
 * Looks for what would fill the gaps of a plan, and meet its wishes: bulbs that are in none of its pots, with room for them; else room; else
 * one pot more of what is in it.
 *
 * @param left pots that could be made and are not in the plan
 */
record Lacks(Planning planning, Rule rule, List<Candidate> left, Loads loads, List<PlannedPot> pots) {

    List<Trouble> list(Ribbon ribbon, List<WishMet> wishes) {
        List<Trouble> found = new ArrayList<>();
        for (DaySpan gap : ribbon.gaps()) {
            found.add(new Trouble(
                    Sort.GAP,
                    Set.of(),
                    Optional.empty(),
                    Optional.of(gap),
                    0,
                    (int) gap.days(),
                    cures(gap, Optional.empty())));
        }
        wishes.stream()
                .filter(wish -> !wish.isMet())
                .filter(wish ->
                        !wish.wish().asks().isEveryDay() || !wish.wish().asks().isForAnyPot())
                .forEach(wish -> found.add(wish(wish)));
        return found;
    }

    private Trouble wish(WishMet met) {
        LocalDate day =
                met.gaps().stream().map(DaySpan::start).findFirst().orElseGet(() -> WishedDays.inFlowerOn(met.wish()));
        return new Trouble(
                Sort.WISH,
                Set.copyOf(met.pots()),
                met.wish().asks().room(),
                Optional.of(DaySpan.ofInclusive(met.wish().from(), met.wish().to())),
                met.pots().size(),
                met.wish().asks().pots(),
                cures(DaySpan.ofInclusive(day, day), Optional.of(met.wish())));
    }

    /** For flowers from the first day of some. */
    private List<Cure> cures(DaySpan days, Optional<Wish> wish) {
        List<Cure> found = new ArrayList<>();
        sooner(days, wish, left).ifPresent(candidate -> cure(candidate, days).ifPresent(found::add));
        if (found.isEmpty()) {
            sooner(days, wish, planned()).map(candidate -> buy(candidate, days)).ifPresent(found::add);
        }
        return found.isEmpty() ? List.of(new Trouble.Choose()) : found;
    }

    private List<Candidate> planned() {
        return pots.stream().map(PlannedPot::candidate).toList();
    }

    /** Of some that could be in flower by then, the one that may wait longest. */
    private Optional<Candidate> sooner(DaySpan days, Optional<Wish> wish, List<Candidate> of) {
        return of.stream()
                .filter(Candidate::isOpen)
                .filter(candidate -> wish.filter(asked -> !asked.asks().suits(candidate.variety()))
                        .isEmpty())
                .filter(candidate -> in(candidate, days).isPresent())
                .max(Comparator.comparing(
                        (Candidate candidate) -> in(candidate, days).orElseThrow()));
    }

    /** The day it would come in so that it flowers from the first day of some; a later day, so long as it flowers on one of them. */
    private Optional<LocalDate> in(Candidate candidate, DaySpan days) {
        LocalDate best = days.start().minusDays(candidate.forcing().toFlower().typical());
        return candidate
                .in(planning.days())
                .map(may -> Dates.earlier(Dates.later(best, may.start()), may.last()))
                .filter(day -> DaySpan.of(
                                candidate.forcing().firstFlower(day),
                                candidate.forcing().pastBloom(day))
                        .intersection(days)
                        .isPresent());
    }

    private Optional<Cure> cure(Candidate candidate, DaySpan days) {
        LocalDate in = in(candidate, days).orElseThrow();
        DaySpan stands = DaySpan.of(in, candidate.forcing().pastBloom(in));
        boolean hasSill = planning.rooms().stream().anyMatch(berth -> loads.hasRoom(berth, stands));
        if (!hasSill) {
            return planning.rooms().stream().findFirst().map(berth -> new Trouble.MoreRoom(berth.id(), 1));
        }
        if (!candidate.needsCold() || candidate.cold().isPresent()) {
            return Optional.of(new Trouble.OneMore(candidate.variety().id(), candidate.bulbs(), in));
        }
        List<Berth> fitting = candidate.fit().fitting(planning.colds(), in);
        boolean hasCold = fitting.stream()
                .anyMatch(berth -> loads.hasRoom(
                        berth, DaySpan.of(candidate.fit().potting(berth, in).orElseThrow(), in)));
        return hasCold
                ? Optional.of(new Trouble.OneMore(candidate.variety().id(), candidate.bulbs(), in))
                : fitting.stream().findFirst().map(berth -> new Trouble.MoreRoom(berth.id(), 1));
    }

    private Cure buy(Candidate candidate, DaySpan days) {
        LocalDate in = in(candidate, days).orElseThrow();
        LocalDate potted =
                PottingDays.onOrBefore(in.minusDays(candidate.forcing().usualCold()), rule);
        return new Trouble.Buy(
                candidate.variety().id(), candidate.bulbs(), potted, candidate.needsCold() ? in : potted);
    }
}
