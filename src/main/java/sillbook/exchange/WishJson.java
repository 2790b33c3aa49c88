// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.LocalDate;
import java.util.Optional;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Wish;
import sillbook.model.WishedFor;
import sillbook.plan.LatestDays;
import sillbook.plan.WishMet;
import sillbook.words.WishTerms;
import sillbook.words.plan.PlanNames;
import sillbook.words.plan.WishCheck;
import sillbook.words.plan.WishChecks;

/** How a plan stands to wishes, as JSON. */
record WishJson(Journal journal, LocalDate today, PlanNames names) {

    Fields wish(WishMet met) {
        Wish wish = met.wish();
        WishedFor asks = wish.asks();
        Optional<LatestDays> latest = met.latest();
        return new Fields()
                .day("from", wish.from())
                .day("to", wish.to())
                .written("feast", wish.feast())
                .flag("everyDay", asks.isEveryDay())
                .number("pots", asks.pots())
                .text("stage", asks.stage().map(WishTerms.STAGES::say))
                .text("kind", asks.kind().map(Kind::toString))
                .written("colour", asks.colour())
                .flag("scented", asks.scented())
                .decimal("tallest", asks.tallest().map(most -> most.centimetres()))
                .text("place", new Named(journal).place(asks.room()))
                .flag("met", met.isMet())
                .number("lacks", met.lacks())
                .texts("by", met.pots().stream().map(names::mark).toList())
                .list("gaps", met.gaps(), BloomJson::span)
                .number("chance", met.chance())
                .whole("spares", met.spares())
                .text("ofVariety", latest.map(LatestDays::variety).map(new Named(journal)::variety))
                .day("orderBy", latest.flatMap(LatestDays::orderBy))
                .day("potBy", latest.map(LatestDays::potBy))
                .day("bringInBy", latest.map(LatestDays::bringInBy))
                .list("looks", new WishChecks(Handbook.standard(), journal.settings()).of(wish, today), WishJson::look);
    }

    private static Fields look(WishCheck check) {
        return new Fields()
                .day("day", check.day())
                .text("look", check.look())
                .text("behind", check.behind())
                .text("ahead", check.ahead())
                .text("source", check.source());
    }
}
