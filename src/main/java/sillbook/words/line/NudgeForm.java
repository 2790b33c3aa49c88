// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.util.List;
import java.util.Optional;
import sillbook.change.WriteDown;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Proposal;
import sillbook.model.Proposal.Course;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.model.Stage;
import sillbook.plan.Nudge;
import sillbook.plan.Planning;
import sillbook.words.Days;
import sillbook.words.Groups;
import sillbook.words.Heard;
import sillbook.words.PotNames;
import sillbook.words.plan.PlanLetters;
import sillbook.words.plan.PlanNames;

/** {@code nudge e of plan A 3 days later}: a plan with one of its pots on another day, at another place or left out, beside the plan it is made from. */
final class NudgeForm implements Form {
    private static final Slot<Integer> DAYS = Slot.one(
            "",
            Senses.matching("(?:by )?(\\d{1,3}) (day|week)s? (later|earlier|sooner)", said -> Heard.as(days(said))));
    private static final Slot<Place> PLACE =
            Slot.one("place", new LedSense<>(List.of("to the", "to", "at the", "at"), Slots.PLACE.sense()));
    private static final Slot<Boolean> OUT = Slot.one("", Senses.flag("(?:left )?out"));
    private static final int DAYS_IN_WEEK = 7;

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "nudge",
                "A pot of a plan, by its letter or label, and the plan; then so many days later or earlier, to a place, or out. It becomes a "
                        + "plan of its own beside the other. For and a season, if not the one planned now.",
                "nudge e of plan A 3 days later",
                "nudge e of plan A to cellar",
                "nudge e of plan A out");
    }

    @Override
    public List<String> keywords() {
        return List.of("nudge");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(PlanPotNamed.POT, DAYS, PLACE, OUT, Marking.SEASON);
    }

    @Override
    public int wanting(Filled filled) {
        return (filled.has(PlanPotNamed.POT) ? 0 : 1)
                + (filled.has(DAYS) || filled.has(PLACE) || filled.has(OUT) ? 0 : 1);
    }

    private static int days(Groups said) {
        int days = said.number(1) * (said.text(2).equals("week") ? DAYS_IN_WEEK : 1);
        return said.text(3).equals("later") ? days : -days;
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        Bench bench = draft.bench();
        Season season = Marking.planned(filled, bench);
        Heard<PlanPotNamed> pot = PlanPotNamed.find(filled, season, bench);
        pot.complaint().ifPresent(draft::ask);
        pot.value().ifPresent(found -> nudge(found.plan(), found.number(), filled, draft));
    }

    private static void nudge(SeasonPlan plan, int number, Filled filled, Draft draft) {
        Bench bench = draft.bench();
        draft.means("plan " + plan.name() + " with " + new PlanNames(bench.journal(), plan).whole(number));
        SeasonPlan changed = filled.has(OUT) ? Nudge.without(plan, number) : moved(plan, number, filled, bench);
        if (changed.pots().equals(plan.pots())) {
            draft.ask("no other plan", whyTheSame(plan.pots().get(number), filled, bench.journal()));
            return;
        }
        say(changed, number, filled, draft);
        String name = PlanLetters.nextFree(plan.season(), bench.journal());
        draft.means("kept as plan " + name);
        draft.change(new WriteDown(changed.unadopted(bench.ids().next(), name)));
    }

    private static String whyTheSame(Proposal pot, Filled filled, Journal journal) {
        Optional<String> label = pot.pot().map(new PotNames(journal)::label);
        if (pot.pot().filter(journal::isPotted).isPresent()) {
            return label.orElseThrow() + " is potted already, and goes on as it does. Nudge one that is not.";
        }
        if (label.isPresent() && filled.has(OUT)) {
            return label.get()
                    + " is there already and waits to be potted, so no plan leaves it out. Remove the pot instead.";
        }
        boolean isColdForNone = pot.course().cold().isEmpty()
                && filled.get(PLACE)
                        .filter(place -> place.serves() == Stage.COLD)
                        .isPresent();
        return "That leaves the plan as it is" + (isColdForNone ? ": a pot without cold takes no cold place" : "")
                + ". Write another day or place, as: 3 days later.";
    }

    private static SeasonPlan moved(SeasonPlan plan, int number, Filled filled, Bench bench) {
        Planning planning = bench.plans().of(plan.season());
        Course course = plan.pots().get(number).course();
        SeasonPlan there = filled.get(PLACE)
                .map(place -> Nudge.at(plan, number, at(course, place)))
                .orElse(plan);
        return Nudge.by(planning, there, number, filled.get(DAYS).orElse(0));
    }

    private static Course at(Course course, Place place) {
        return place.serves() == Stage.COLD
                ? new Course(course.potting(), Optional.of(place.id()), course.in(), course.room())
                : new Course(course.potting(), course.cold(), course.in(), Optional.of(place.id()));
    }

    private static void say(SeasonPlan changed, int number, Filled filled, Draft draft) {
        if (filled.has(OUT)) {
            draft.means("left out");
            return;
        }
        Proposal pot = changed.pots().get(number);
        filled.get(PLACE).ifPresent(place -> draft.means("to the " + place.name()));
        draft.means("to be potted " + Days.full(pot.course().potting()) + ", in on "
                + Days.full(pot.course().in()));
    }
}
