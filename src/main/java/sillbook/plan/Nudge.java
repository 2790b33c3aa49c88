// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Proposal;
import sillbook.model.SeasonPlan;
import sillbook.reckon.dates.Dates;

/** Changes a plan by hand. Everything else stays where it is; what no longer goes together is shown, not prevented. */
public final class Nudge {
    private Nudge() {}

    /**
     * A pot comes in so many days later, or earlier, but from today on and in the season; its potting day goes with it, so that its cold
     * stays as long as it needs.
     */
    public static SeasonPlan by(Planning planning, SeasonPlan plan, int number, int days) {
        Proposal pot = plan.pots().get(number);
        Optional<Candidate> candidate = new Matching(planning.candidates()).take(pot);
        if (candidate.filter(one -> !one.isOpen()).isPresent()) {
            return plan;
        }
        LocalDate in = Dates.earlier(
                Dates.later(planning.today(), pot.course().in().plusDays(days)),
                planning.days().last());
        Proposal moved = candidate
                .map(one -> new Placing(planning, plan.rule())
                        .place(one, in, pot.course().cold(), pot.course().room()))
                .orElseGet(() -> pot.on(new Proposal.Course(
                        Dates.earlier(pot.course().potting().plusDays(days), in),
                        pot.course().cold(),
                        in,
                        pot.course().room())));
        return replaced(plan, number, moved);
    }

    /** A pot stands elsewhere, in the cold or in flower. */
    public static SeasonPlan at(SeasonPlan plan, int number, Proposal.Course course) {
        return replaced(plan, number, plan.pots().get(number).on(course));
    }

    /** A pot is left out; not one that is there already. */
    public static SeasonPlan without(SeasonPlan plan, int number) {
        List<Proposal> pots = new ArrayList<>(plan.pots());
        if (pots.get(number).pot().isEmpty()) {
            pots.remove(number);
        }
        return plan.withPots(pots);
    }

    /** One pot more of what is not in the plan yet, to come in on a day; the same plan where there is none that could. */
    public static SeasonPlan with(Planning planning, SeasonPlan plan, LocalDate in) {
        Placing placing = new Placing(planning, plan.rule());
        return Matching.without(plan.pots(), planning).stream()
                .filter(Candidate::isOpen)
                .filter(one -> one.in(planning.days())
                        .filter(days -> days.contains(in))
                        .isPresent())
                .findFirst()
                .map(one -> {
                    List<Proposal> pots = new ArrayList<>(plan.pots());
                    pots.add(placing.place(one, in));
                    return plan.withPots(Placing.inOrder(pots));
                })
                .orElse(plan);
    }

    private static SeasonPlan replaced(SeasonPlan plan, int number, Proposal pot) {
        List<Proposal> pots = new ArrayList<>(plan.pots());
        pots.set(number, pot);
        return plan.withPots(pots);
    }
}
