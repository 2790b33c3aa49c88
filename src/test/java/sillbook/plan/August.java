// SPDX-License-Identifier: Apache-2.0
package sillbook.plan;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.handbook.Handbook;
import sillbook.model.Container;
import sillbook.model.Day;
import sillbook.model.Entity;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.Proposal;
import sillbook.model.Purchase;
import sillbook.model.Purchase.Money;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.model.SeasonPlan.Rule;
import sillbook.model.Settings;
import sillbook.model.Variety;
import sillbook.model.Wish;
import sillbook.model.WishedFor;
import sillbook.season.Outlook;

/** A journal in August, with bulbs ordered, places and wishes, put together for tests. All names are invented. */
final class August {
    static final LocalDate TODAY = LocalDate.of(2027, 8, 20);
    static final Season SEASON = new Season(2027);

    private final List<Entity<?>> entities = new ArrayList<>(List.of(Settings.initial(ZoneOffset.UTC)));
    private long last = 100;

    <T> Id<T> id() {
        return new Id<>(7, last++);
    }

    long idNumber() {
        return last++;
    }

    August put(Entity<?> entity) {
        entities.removeIf(other -> other.id().equals(entity.id()));
        entities.add(entity);
        return this;
    }

    August bought(String name, String kind, int bulbs, Purchase.State state) {
        Variety variety = new Variety(
                id(),
                name,
                "",
                Kind.of(kind),
                Optional.of(Length.ofCentimetres(30)),
                Variety.BloomSeason.NOT_SAID,
                "white",
                kind.contains("hyacinth") ? Variety.Scent.STRONG : Variety.Scent.NONE,
                Variety.PacketForcing.YES,
                Variety.ForPots.NOT_MARKED,
                "");
        put(variety);
        return put(new Purchase(
                id(),
                variety.id(),
                SEASON,
                Day.on(TODAY.minusDays(5)),
                bulbs,
                new Purchase.Grade("12+", Optional.empty()),
                Optional.of(new Money(bulbs * 40L, "")),
                "the seed shop",
                "",
                sillbook.model.Arrival.NOT_SAID,
                Optional.empty(),
                Purchase.Cooled.UNKNOWN,
                state,
                ""));
    }

    August place(String name, Place.Sort sort, int room) {
        Place usual = Place.of(id(), name, sort);
        return put(with(usual, Place.ColdDays.ALL_YEAR, Optional.of(room)));
    }

    August trench(String name, int room, MonthDay from, MonthDay until) {
        return put(with(Place.of(id(), name, Place.Sort.TRENCH), new Place.ColdDays(from, until), Optional.of(room)));
    }

    static Place with(Place usual, Place.ColdDays cold, Optional<Integer> room) {
        return new Place(
                usual.id(),
                usual.name(),
                usual.sort(),
                usual.serves(),
                usual.usual(),
                cold,
                "",
                room,
                usual.checkEveryDays(),
                usual.bridges(),
                Set.of(),
                "");
    }

    August pan(int stock, int unwashed) {
        return put(new Container(
                id(),
                "pan 15 cm",
                Container.Shape.PAN,
                Optional.of(Length.ofCentimetres(15)),
                Optional.empty(),
                stock,
                unwashed,
                ""));
    }

    August wishEveryDay(LocalDate from, LocalDate to) {
        return wish(from, to, WishedFor.Manner.EVERY_DAY, 1, false);
    }

    August wishOn(LocalDate day, int pots, boolean scented) {
        return wish(day, day, WishedFor.Manner.SOME_DAY, pots, scented);
    }

    private August wish(LocalDate from, LocalDate to, WishedFor.Manner manner, int pots, boolean scented) {
        return put(new Wish(
                id(),
                SEASON,
                from,
                to,
                "",
                new WishedFor(
                        manner,
                        pots,
                        Optional.empty(),
                        Optional.empty(),
                        "",
                        scented,
                        Optional.empty(),
                        Optional.empty()),
                Set.of(),
                ""));
    }

    Journal journal() {
        return Journal.of(entities);
    }

    Planning planning() {
        return planningOn(TODAY);
    }

    Planning planningOn(LocalDate day) {
        Journal journal = journal();
        return Planning.of(journal, Outlook.of(journal, Handbook.standard(), day), SEASON);
    }

    SeasonPlan plan(Rule rule, List<Proposal> pots) {
        return new SeasonPlan(id(), SEASON, "A", rule, pots, Optional.empty(), Optional.empty(), "");
    }

    static Id<Place> placeId(Planning planning, String name) {
        return planning.journal().places().all().stream()
                .filter(place -> place.name().equals(name))
                .findFirst()
                .orElseThrow()
                .id();
    }

    /** Six sorts of bulbs, two cold places and two sills. */
    static August usual() {
        return new August()
                .bought("Marrow Lane", "tulip", 20, Purchase.State.ORDERED)
                .bought("Lantern Row", "daffodil", 15, Purchase.State.ORDERED)
                .bought("Inkwell", "hyacinth", 9, Purchase.State.IN_HAND)
                .bought("Penny Gloaming", "crocus", 24, Purchase.State.TO_ORDER)
                .bought("Night Marbles", "grape hyacinth", 24, Purchase.State.ORDERED)
                .bought("Linen Parade", "paperwhite", 14, Purchase.State.ORDERED)
                .place("garage fridge", Place.Sort.FRIDGE, 9)
                .place("cellar", Place.Sort.CELLAR, 20)
                .place("kitchen sill", Place.Sort.WARM_SILL, 4)
                .place("parlour sill", Place.Sort.WARM_SILL, 2)
                .pan(10, 3);
    }
}
