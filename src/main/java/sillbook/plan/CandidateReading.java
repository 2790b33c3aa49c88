// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.model.Choice;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot.Planting;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Stock;
import sillbook.model.Variety;
import sillbook.season.Outlook;

/**
 * Reads which pots there could be: those that are there, those that the bulbs of purchases fill, and those that bulbs which are chosen and
 * not bought yet would.
 */
final class CandidateReading {
    /** Across the rim of the usual pot, in cm, where no container says otherwise. */
    static final double USUAL_RIM = 16;

    private final Journal journal;
    private final Season season;
    private final PotHabit habit;
    private final Making making;

    CandidateReading(Journal journal, Outlook outlook, Season season, Making making) {
        this.journal = journal;
        this.season = season;
        this.making = making;
        this.habit = new PotHabit(journal, outlook.figures());
    }

    List<Candidate> list(PotsThere there) {
        List<Candidate> found = new ArrayList<>(there.growing());
        journal.purchases().all().stream()
                .filter(purchase -> purchase.season().equals(season))
                .forEach(purchase -> found.addAll(of(purchase)));
        journal.choices().all().stream()
                .filter(choice -> choice.season().equals(season))
                .forEach(choice -> found.addAll(of(choice)));
        return found;
    }

    private List<Candidate> of(Purchase purchase) {
        return pots(
                journal.varieties().get(purchase.variety()),
                Stock.unplanted(purchase, journal),
                Optional.of(purchase.id()));
    }

    private List<Candidate> of(Choice choice) {
        int left = Math.max(0, choice.toOrder(journal) - awaited(choice.variety()));
        return pots(journal.varieties().get(choice.variety()), left, Optional.empty());
    }

    /** Bulbs that pots of the season wait for, and that are of no purchase yet. */
    private int awaited(Id<Variety> variety) {
        return journal.potsOf(season).stream()
                .flatMap(pot -> pot.plantings().stream())
                .filter(planting -> planting.variety().equals(variety)
                        && planting.purchase().isEmpty())
                .mapToInt(Planting::count)
                .sum();
    }

    /** As many pots as bulbs fill; a last one that would be less than half full is none. */
    private List<Candidate> pots(Variety variety, int bulbs, Optional<Id<Purchase>> purchase) {
        int each = Math.max(1, habit.bulbs(variety));
        int pots = (bulbs + each / 2) / each;
        List<Candidate> found = new ArrayList<>();
        for (int pot = 0; pot < pots; pot++) {
            found.add(making.pot(variety, Math.min(each, bulbs - pot * each), purchase, habit.container(variety)));
        }
        return found;
    }
}
