// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.model.Container;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Pot.Planting;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.Forcing;
import sillbook.season.Outlook;

/** Works out what a pot takes that is still to be made; once for all pots of the same bulbs. */
final class Making {
    private final Journal journal;
    private final Outlook outlook;
    private final Season season;
    private final Fits fits;
    private final Map<Planting, Forcing> forcings = new HashMap<>();

    Making(Journal journal, Outlook outlook, Season season, List<Berth> colds, DaySpan days) {
        this.journal = journal;
        this.outlook = outlook;
        this.season = season;
        this.fits = new Fits(colds, days);
    }

    Candidate pot(Variety variety, int bulbs, Optional<Id<Purchase>> purchase, Optional<Id<Container>> container) {
        Forcing forcing = forcing(new Planting(variety.id(), 1, purchase));
        LocalDate from = Dates.later(here(purchase), forcing.potting().earliest());
        return Candidate.made(variety, bulbs, purchase, container, forcing, from, fit(forcing, from));
    }

    /** How many bulbs there are makes no difference. */
    Forcing forcing(Planting planting) {
        return forcings.computeIfAbsent(
                new Planting(planting.variety(), 1, planting.purchase()), one -> outlook.forcing(one, season));
    }

    ColdFit fit(Forcing forcing, LocalDate readyFrom) {
        return fits.of(forcing, readyFrom);
    }

    private LocalDate here(Optional<Id<Purchase>> purchase) {
        boolean isHere = purchase.flatMap(journal.purchases()::find)
                .filter(one -> one.state() == Purchase.State.IN_HAND)
                .isPresent();
        return isHere ? outlook.day() : outlook.day().plusDays(Supplies.DELIVERY_DAYS);
    }
}
