// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import sillbook.model.Journal;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.plan.PlanNow;
import sillbook.words.Counts;
import sillbook.words.Heard;
import sillbook.words.plan.AdoptWords;
import sillbook.words.plan.Adopting;

/** {@code adopt plan A}: its pots wait to be potted. */
final class AdoptForm implements Form {
    @Override
    public FormHelp help() {
        return FormHelp.of(
                "adopt plan",
                "A plan by its letter: its pots are made and wait to be potted, with their bulbs and containers kept for them; what another "
                        + "plan of the season meant for pots no longer holds. For and a season, if not the one planned now.",
                "adopt plan A",
                "adopt plan B for 2027-28");
    }

    @Override
    public List<String> keywords() {
        return List.of("adopt plan", "adopt");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(PlanNamed.LETTER, Marking.SEASON);
    }

    @Override
    public int wanting(Filled filled) {
        return filled.has(PlanNamed.LETTER) ? 0 : 1;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        Bench bench = draft.bench();
        Season season = Marking.planned(filled, bench);
        Heard<SeasonPlan> plan = PlanNamed.find(filled, season, bench);
        plan.complaint().ifPresent(draft::ask);
        plan.value().ifPresent(found -> adopt(found, draft));
    }

    private static void adopt(SeasonPlan plan, Draft draft) {
        Bench bench = draft.bench();
        Journal journal = bench.journal();
        PlanNow now = bench.plans().now(plan);
        draft.means("plan " + plan.name() + " of season " + journal.nameOf(plan.season()) + ", "
                + Counts.of(plan.pots().size(), "pot"));
        AdoptWords words = new AdoptWords(journal, now);
        words.facts().forEach(draft::means);
        words.goes().forEach(says -> draft.remark("removes", says));
        draft.change(Adopting.of(now, bench.kinds()));
    }
}
