// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Subject;
import sillbook.model.Variety;

/** The names of what a journal's ids stand for. */
record Named(Journal journal) {
    String label(Id<Pot> pot) {
        return journal.pots().get(pot).label();
    }

    List<String> labels(List<Id<Pot>> pots) {
        return pots.stream().map(this::label).toList();
    }

    String place(Id<Place> place) {
        return journal.places().get(place).name();
    }

    Optional<String> place(Optional<Id<Place>> place) {
        return place.map(this::place);
    }

    String variety(Id<Variety> variety) {
        return journal.varieties().get(variety).name();
    }

    /** Bulbs bought, by the name of their variety. */
    String bulbs(Id<Purchase> purchase) {
        return variety(journal.purchases().get(purchase).variety());
    }

    String season(Pot pot) {
        return season(pot.season());
    }

    String season(Season season) {
        return journal.nameOf(season);
    }

    /** What some pots have in them; pots of one row are alike. */
    Fields pots(List<Id<Pot>> pots) {
        Pot first = journal.pots().get(pots.get(0));
        Variety variety = journal.varieties().get(first.first().variety());
        return new Fields()
                .texts("pots", labels(pots))
                .text("season", season(first))
                .text("variety", variety.name())
                .text("kind", variety.kind().toString())
                .number("bulbs", first.bulbs());
    }

    /** A subject as an object with one name: of a pot, place, variety, purchase or season. */
    Fields subject(Subject subject) {
        return subject.fold(new SubjectJson(this));
    }
}
