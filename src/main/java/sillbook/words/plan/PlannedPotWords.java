// SPDX-License-Identifier: Apache-2.0
package sillbook.words.plan;

import java.util.List;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.model.Variety;
import sillbook.plan.PlanNow;
import sillbook.plan.PlannedPot;
import sillbook.plan.Planning;
import sillbook.season.Forcing;
import sillbook.words.Counts;
import sillbook.words.Days;
import sillbook.words.OriginMarks;
import sillbook.words.PotNames;
import sillbook.words.Weeks;

/** A pot of a plan as it is said, in two sentences: what it takes, and what is to be done by when. */
public record PlannedPotWords(Planning planning, PlanNow now) {

    /** {@code 'Pewter Choir' x3: ▫10 weeks cold, ▪17 days to flower, ▪11 in bloom.} */
    public String takes(int number) {
        PlannedPot pot = now.pots().get(number);
        if (pot.candidate().settled().isPresent()) {
            return names().whole(number) + ": in flower about "
                    + Days.fromTo(pot.inFlower().start(), pot.inFlower().last()) + ".";
        }
        Variety variety = pot.candidate().variety();
        Forcing forcing = pot.candidate().forcing();
        String cold = forcing.cold()
                .map(need -> mark(variety, FigureName.COLD) + Weeks.sayDays(need.typical()) + " cold, ")
                .orElse("no cold, ");
        return names().content(number) + ": " + cold + mark(variety, FigureName.AFTER_COLD)
                + Counts.of(forcing.toFlower().typical(), "day") + " to flower, " + mark(variety, FigureName.IN_BLOOM)
                + forcing.daysInBloom() + " in bloom.";
    }

    private PlanNames names() {
        return new PlanNames(planning.journal(), now.plan());
    }

    private String mark(Variety variety, FigureName name) {
        return planning.outlook()
                .figures()
                .find(variety, name)
                .map(FigureInForce::origin)
                .map(OriginMarks::mark)
                .orElse("");
    }

    /** {@code To be cold by Mon 11 Oct: potted, watered and standing where it is cold.} */
    public String doing(int number) {
        PlannedPot pot = now.pots().get(number);
        if (pot.candidate().settled().isPresent()) {
            return "It is out of the cold; its days are no longer to be chosen.";
        }
        if (pot.candidate().cold().isPresent()) {
            return "In the cold since " + Days.day(pot.course().potting(), planning.days()) + where(pot)
                    + "; to come in on " + Days.day(pot.course().in(), planning.days()) + ".";
        }
        String day = Days.day(pot.course().potting(), planning.days());
        return pot.candidate().needsCold()
                ? "To be cold by " + day + ": potted, watered and standing where it is cold."
                : "To be potted and watered on " + day + "; it needs no cold.";
    }

    private String where(PlannedPot pot) {
        return pot.course()
                .cold()
                .map(place -> ", " + new PotNames(planning.journal()).place(place))
                .orElse("");
    }

    /** Both. */
    public List<String> lines(int number) {
        return List.of(takes(number), doing(number));
    }
}
