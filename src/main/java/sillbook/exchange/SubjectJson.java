// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Subject;
import sillbook.model.Variety;

/** What something is about, as JSON: its sort, its name, and the season where that tells it apart. */
record SubjectJson(Named named) implements Subject.Cases<Fields> {
    private static Fields of(String sort, String name) {
        return new Fields().text("about", sort).text("name", name);
    }

    @Override
    public Fields pot(Id<Pot> pot) {
        return of("pot", named.label(pot))
                .text("season", named.season(named.journal().pots().get(pot)));
    }

    @Override
    public Fields place(Id<Place> place) {
        return of("place", named.place(place));
    }

    @Override
    public Fields variety(Id<Variety> variety) {
        return of("variety", named.variety(variety));
    }

    @Override
    public Fields purchase(Id<Purchase> purchase) {
        return of(
                "purchase",
                named.variety(named.journal().purchases().get(purchase).variety()));
    }

    @Override
    public Fields season(Season season) {
        return of("season", named.season(season));
    }
}
