// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Proposal;
import sillbook.model.SeasonPlan;
import sillbook.model.Variety;
import sillbook.words.PotNames;

/** What the pots of a plan are called: by their label where they are there, else by a letter. */
public record PlanNames(Journal journal, SeasonPlan plan) {
    /** {@code e}, the 27th {@code aa}; of a pot that is there {@code T4}. */
    public String mark(int number) {
        return plan.pots().get(number).pot().map(new PotNames(journal)::label).orElseGet(() -> PlanLetters.of(number));
    }

    /** {@code 'Lantern Row' x5}. */
    public String content(int number) {
        Proposal pot = plan.pots().get(number);
        return bulbs(pot.variety(), pot.bulbs());
    }

    /** {@code e 'Lantern Row'}. */
    public String whole(int number) {
        return mark(number) + " "
                + new PotNames(journal).variety(plan.pots().get(number).variety());
    }

    String bulbs(Id<Variety> variety, int bulbs) {
        return new PotNames(journal).variety(variety) + " x" + bulbs;
    }
}
