// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.sql.SQLException;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Subject;
import sillbook.model.Variety;

/** What an event is about: five columns, one of them used. */
final class SubjectColumns {
    private SubjectColumns() {}

    /** Writes the one column that says it. */
    record Writing(Values row) implements Subject.Cases<Values> {
        @Override
        public Values pot(Id<Pot> pot) {
            return row.at("subject_pot").id(pot);
        }

        @Override
        public Values place(Id<Place> place) {
            return row.at("subject_place").id(place);
        }

        @Override
        public Values variety(Id<Variety> variety) {
            return row.at("subject_variety").id(variety);
        }

        @Override
        public Values purchase(Id<Purchase> purchase) {
            return row.at("subject_purchase").id(purchase);
        }

        @Override
        public Values season(Season season) {
            return row.at("subject_season").season(season);
        }
    }

    /** Most events are about a pot, so that column comes first. */
    static Subject read(Row row) throws SQLException {
        Optional<Id<Pot>> pot = row.optionalId();
        if (pot.isPresent()) {
            return new Subject.OfPot(pot.get());
        }
        Optional<Id<Place>> place = row.optionalId();
        if (place.isPresent()) {
            return new Subject.OfPlace(place.get());
        }
        Optional<Id<Variety>> variety = row.optionalId();
        if (variety.isPresent()) {
            return new Subject.OfVariety(variety.get());
        }
        Optional<Id<Purchase>> purchase = row.optionalId();
        return purchase.isPresent() ? new Subject.OfPurchase(purchase.get()) : new Subject.OfSeason(row.season());
    }
}
