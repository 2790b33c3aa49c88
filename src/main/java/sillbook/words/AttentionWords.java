// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.ArrayList;
import java.util.List;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.season.Today.Attention;
import sillbook.season.WaitingBulbs;

/** What a day says of a place that wants attention. */
public record AttentionWords(Journal journal) implements Attention.Cases<String> {

    public String say(Attention attention) {
        return attention.fold(this);
    }

    /** {@code cellar: 22 pots, room for 20}. */
    @Override
    public String overRoom(Attention.OverRoom attention) {
        return name(attention.place()) + ": " + Counts.of(attention.pots(), "pot") + ", room for " + attention.room();
    }

    /** {@code garage fridge: 6 pots beside fruit}. */
    @Override
    public String hazard(Attention.BesideHazard attention) {
        List<String> beside = new ArrayList<>();
        if (attention.pots() > 0) {
            beside.add(Counts.of(attention.pots(), "pot"));
        }
        if (attention.bulbs() > 0) {
            beside.add(Counts.of(attention.bulbs(), "dry bulb"));
        }
        return name(attention.place()) + ": " + String.join(" and ", beside) + " beside "
                + Terms.HAZARDS.say(attention.hazard());
    }

    /** {@code trench: no round since 2 Jan}. */
    @Override
    public String unchecked(Attention.Unchecked attention) {
        return name(attention.place()) + ": no round since " + Days.date(attention.last());
    }

    /** {@code porch: not cold now, 3 pots}. */
    @Override
    public String notCold(Attention.NotCold attention) {
        return name(attention.place()) + ": not cold now, " + Counts.of(attention.pots(), "pot");
    }

    /** {@code garage fridge: 'Marrow Lane' 9 weeks dry, pot by 5 Dec}. */
    @Override
    public String dryLong(Attention.DryLong attention) {
        WaitingBulbs bulbs = attention.bulbs();
        String variety = new PotNames(journal).variety(bulbs.purchase().variety());
        return name(attention.place()) + ": " + variety + " "
                + Weeks.sayDays(bulbs.dry().days()) + " dry, pot by " + Days.date(attention.potBy());
    }

    private String name(Id<Place> place) {
        return journal.places().get(place).name();
    }
}
