// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import sillbook.model.Journal;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.season.Outlook;

/** Where it is looked up what seasons are planned with and what plans come to; whoever asks often remembers both. */
public interface PlanLookup {
    /** What a season is planned with. */
    Planning of(Season season);

    /** A plan, worked out. */
    PlanNow now(SeasonPlan plan);

    /** Works out whatever is asked for, each time anew. */
    static PlanLookup of(Journal journal, Outlook outlook) {
        return new PlanLookup() {
            @Override
            public Planning of(Season season) {
                return Planning.of(journal, outlook, season);
            }

            @Override
            public PlanNow now(SeasonPlan plan) {
                return PlanReading.of(of(plan.season()), plan);
            }
        };
    }
}
