// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import sillbook.model.Proposal;
import sillbook.plan.PlanNow;
import sillbook.plan.PlannedPot;
import sillbook.words.plan.PlanNames;

/** The pots of a plan as JSON. */
record PlannedPotJson(Named named, PlanNow now, PlanNames names) {

    /** By its number in the plan, from 0. */
    Fields pot(int number) {
        PlannedPot pot = now.pots().get(number);
        Proposal proposal = pot.proposal();
        return new Fields()
                .text("mark", names.mark(number))
                .text("pot", proposal.pot().map(named::label))
                .text("variety", named.variety(proposal.variety()))
                .text("kind", pot.candidate().variety().kind().toString())
                .number("bulbs", proposal.bulbs())
                .text(
                        "container",
                        proposal.container()
                                .map(id -> named.journal().containers().get(id).name()))
                .day("potting", pot.course().potting())
                .flag("needsCold", pot.candidate().needsCold())
                .text("coldAt", named.place(pot.course().cold()))
                .day("in", pot.course().in())
                .text("flowersAt", named.place(pot.course().room()))
                .object("flowers", new Fields().window(pot.flowers()))
                .object("inFlower", BloomJson.span(pot.inFlower()));
    }
}
