// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.List;
import java.util.Optional;
import sillbook.model.Proposal;
import sillbook.model.SeasonPlan.Rule;
import sillbook.model.SeasonPlan.Search;
import sillbook.reckon.cover.Plan;
import sillbook.reckon.cover.Planner;
import sillbook.reckon.cover.Tally;
import sillbook.reckon.cover.Unreckonable;
import sillbook.reckon.cover.Watch;

/** Looks for the best plan of a season, as far as the search goes. */
public final class Seeking {
    /** About five to ten seconds' work. */
    public static final long USUAL_EFFORT = Planner.USUAL_EFFORT;

    private Seeking() {}

    /**
     * A plan that was found.
     *
     * @param search what no plan can go below
     * @param isProven whether none is better, on the usual lengths
     */
    public record Found(List<Proposal> pots, Search comesTo, Search search, boolean isProven) {
        public Found {
            pots = List.copyOf(pots);
        }
    }

    /** What comes of it: a plan, or a sentence's worth of why there is none. */
    public sealed interface Outcome {}

    /** A plan was found. */
    public record Best(Found found) implements Outcome {}

    /** There is nothing to plan with. */
    public record Nothing(Missing missing) implements Outcome {}

    /** The search takes no season of that size. */
    public record TooMuch(String why) implements Outcome {}

    /** What is missing. */
    public enum Missing {
        BULBS,
        ROOM
    }

    /** Looks on; called on the thread that seeks. */
    public interface Progress {
        boolean wantsStop();

        /** How much of the effort is spent, 0 to 1. */
        default void spent(double part) {}

        void found(Found best);
    }

    /** Seeks with so much effort at most. */
    public static Outcome seek(Planning planning, Rule rule, long effort, Progress progress) {
        if (planning.rooms().isEmpty()) {
            return new Nothing(Missing.ROOM);
        }
        CoverTask cover = new CoverTask(planning, rule);
        try {
            return cover.task()
                    .<Outcome>map(task ->
                            new Best(found(cover, Planner.plan(task, cover.fixed(), effort, watch(cover, progress)))))
                    .orElseGet(() -> new Nothing(Missing.BULBS));
        } catch (Unreckonable tooMuch) {
            return new TooMuch(Optional.ofNullable(tooMuch.getMessage()).orElse(""));
        }
    }

    /** With the usual effort, and nobody looking on. */
    public static Outcome seek(Planning planning, Rule rule) {
        return seek(planning, rule, USUAL_EFFORT, new Progress() {
            @Override
            public boolean wantsStop() {
                return false;
            }

            @Override
            public void found(Found best) {
                // Nobody looks.
            }
        });
    }

    private static Watch watch(CoverTask cover, Progress progress) {
        return new Watch() {
            @Override
            public boolean wantsStop() {
                return progress.wantsStop();
            }

            @Override
            public void spent(double part) {
                progress.spent(part);
            }

            @Override
            public void found(Plan best) {
                progress.found(Seeking.found(cover, best));
            }
        };
    }

    private static Found found(CoverTask cover, Plan plan) {
        int lacking = cover.lacking(plan);
        boolean serveBest = plan.tally().unmet() == plan.bound().unmet();
        return new Found(
                cover.proposals(plan.pulls()),
                search(lacking, plan.tally(), cover),
                search(serveBest ? lacking : cover.unsuited(), plan.bound(), cover),
                plan.isProven() && cover.asksAll());
    }

    private static Search search(int lacking, Tally tally, CoverTask cover) {
        return new Search(lacking, tally.gapDays(), Math.max(0, tally.used() - cover.fillers()));
    }
}
