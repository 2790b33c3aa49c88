// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Proposal;
import sillbook.model.SeasonPlan;
import sillbook.model.SeasonPlan.Rule;
import sillbook.reckon.dates.DaySpan;

/**
 * Fills a rule, so many pots every so many days, with pots: on each day those that cannot wait for the next, of kinds that differ where
 * there are others.
 */
public final class HandRule {
    private final Rule rule;
    private final Placing placing;
    private final List<Open> open = new ArrayList<>();
    private final List<Proposal> proposals = new ArrayList<>();

    /** A candidate whose day is to be chosen, and the days there are for it. */
    private record Open(Candidate candidate, DaySpan in) {
        String kind() {
            return candidate.variety().kind().name();
        }
    }

    private HandRule(Planning planning, Rule rule) {
        this.rule = rule;
        this.placing = new Placing(planning, rule);
        for (Candidate candidate : planning.candidates()) {
            if (candidate.isOpen()) {
                candidate.in(planning.days()).ifPresent(days -> open.add(new Open(candidate, days)));
            } else {
                proposals.add(placing.settled(candidate));
            }
        }
    }

    /**
     * The pots by the day they come in; those that are out of the cold already are among them, and those that stand in it and find no day of
     * the rule, on the first on which they may.
     */
    public static List<Proposal> pots(Planning planning, Rule rule) {
        return new HandRule(planning, rule).fill();
    }

    /** A plan of these pots, which is not kept yet. */
    public static SeasonPlan plan(Id<SeasonPlan> id, String name, Planning planning, Rule rule, String note) {
        return new SeasonPlan(
                id, planning.season(), name, rule, pots(planning, rule), Optional.empty(), Optional.empty(), note);
    }

    private List<Proposal> fill() {
        for (LocalDate day = rule.from(); !day.isAfter(rule.to()); day = day.plusDays(rule.everyDays())) {
            fill(day);
        }
        open.stream()
                .filter(one -> one.candidate().cold().isPresent())
                .forEach(one ->
                        proposals.add(placing.place(one.candidate(), one.in().start())));
        return Placing.inOrder(proposals);
    }

    private void fill(LocalDate day) {
        List<String> kinds = new ArrayList<>();
        for (int pot = 0; pot < rule.pots(); pot++) {
            next(day, kinds).ifPresent(one -> {
                kinds.add(one.kind());
                open.remove(one);
                proposals.add(placing.place(one.candidate(), day));
            });
        }
    }

    private Optional<Open> next(LocalDate day, List<String> kinds) {
        return open.stream()
                .filter(one -> one.in().contains(day))
                .min(Comparator.comparing((Open one) -> kinds.contains(one.kind()))
                        .thenComparing(one -> one.in().endExclusive())
                        .thenComparing(one -> one.in().start()));
    }
}
