// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.util.Collection;
import java.util.List;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Labels;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Subject;
import sillbook.model.Variety;

/** What pots, varieties and places are called where they are spoken of. */
public record PotNames(Journal journal) {

    /** {@code T4}; of several {@code H5-H22}. */
    public String labels(Collection<Id<Pot>> pots) {
        return Labels.say(pots.stream().map(this::label).toList());
    }

    public String label(Id<Pot> pot) {
        return journal.pots().get(pot).label();
    }

    /** {@code 'Marrow Lane'}; of a mixed pot the first, and how many more: {@code 'Marrow Lane' +1}. */
    public String name(Id<Pot> pot) {
        List<Pot.Planting> plantings = journal.pots().get(pot).plantings();
        String first = variety(plantings.get(0).variety());
        return plantings.size() == 1 ? first : first + " +" + (plantings.size() - 1);
    }

    /** {@code 'Marrow Lane' x5}; the first speaks for all pots of a row, but a number only where all have it. */
    public String nameAndCount(List<Id<Pot>> pots) {
        int bulbs = journal.pots().get(pots.get(0)).bulbs();
        boolean isAlike = pots.stream().allMatch(pot -> journal.pots().get(pot).bulbs() == bulbs);
        return name(pots.get(0)) + (isAlike ? " x" + bulbs : "");
    }

    /** {@code T4 'Marrow Lane'}. */
    public String labelAndName(List<Id<Pot>> pots) {
        return labels(pots) + " " + name(pots.get(0));
    }

    public String variety(Id<Variety> variety) {
        return "'" + journal.varieties().get(variety).name() + "'";
    }

    public String place(Id<Place> place) {
        return journal.places().get(place).name();
    }

    /** Whom something is about: {@code T1-T3}, {@code cellar}, {@code 'Marrow Lane'}; empty for a whole season. */
    public String whose(List<Subject> subjects) {
        List<Id<Pot>> pots =
                subjects.stream().flatMap(subject -> subject.asPot().stream()).toList();
        return pots.isEmpty() ? subjects.get(0).fold(new Whose()) : labels(pots);
    }

    private final class Whose implements Subject.Cases<String> {
        @Override
        public String pot(Id<Pot> pot) {
            return label(pot);
        }

        @Override
        public String place(Id<Place> place) {
            return PotNames.this.place(place);
        }

        @Override
        public String variety(Id<Variety> variety) {
            return PotNames.this.variety(variety);
        }

        @Override
        public String purchase(Id<Purchase> purchase) {
            return "purchase of "
                    + PotNames.this.variety(journal.purchases().get(purchase).variety());
        }

        @Override
        public String season(Season season) {
            return "";
        }
    }
}
