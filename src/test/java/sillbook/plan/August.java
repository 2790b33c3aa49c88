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
import sillbook.model.Band;
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
import sillbook.model.Space;
import sillbook.model.Variety;
import sillbook.model.Wish;
import sillbook.model.WishedFor;
import sillbook.model.WishedFor.Manner;
import sillbook.season.Outlook;

/** A journal in August, with bulbs ordered, places and wishes, put together for tests. All names are invented. */
final class August {
    static final LocalDate TODAY = LocalDate.of(2027, 8, 20);
    static final Season SEASON = new Season(2027);

    private final List<Entity<?>> entities = new ArrayList<>(List.of(Settings.initial(ZoneOffset.UTC)));
    private long last = 100;

    /** Of the season that begins. */
    static LocalDate day(int month, int day) {
        return LocalDate.of(month > 6 ? 2027 : 2028, month, day);
    }

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

    /** Cold all year, with room for five pots. */
    Id<Place> garage(String name, double low, double high) {
        Place usual = Place.of(id(), name, Place.Sort.GARAGE);
        put(with(usual, Optional.of(Band.ofCelsius(low, high)), usual.coldDays(), Optional.of(5)));
        return usual.id();
    }

    /** A place that is only there on some days of the year. */
    August there(Id<Place> place, MonthDay from, MonthDay until) {
        return put(new Space(id(), place, Optional.empty(), Optional.empty(), new Place.ColdDays(from, until)));
    }

    private static Place with(Place usual, Place.ColdDays cold, Optional<Integer> room) {
        return with(usual, usual.usual(), cold, room);
    }

    private static Place with(Place usual, Optional<Band> band, Place.ColdDays cold, Optional<Integer> room) {
        return new Place(
                usual.id(),
                usual.name(),
                usual.sort(),
                usual.serves(),
                band,
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
        return wish(from, to, asks(Manner.EVERY_DAY, 1, false, Optional.empty()));
    }

    August wishOn(LocalDate day, int pots, boolean scented) {
        return wish(day, day, asks(Manner.SOME_DAY, pots, scented, Optional.empty()));
    }

    August wishIn(Id<Place> room, LocalDate day, int pots) {
        return wish(day, day, asks(Manner.SOME_DAY, pots, false, Optional.of(room)));
    }

    August wish(LocalDate from, LocalDate to, WishedFor asks) {
        return put(new Wish(id(), SEASON, from, to, "", asks, Set.of(), ""));
    }

    /** Pots of any bulbs, or of any that smell. */
    static WishedFor asks(Manner manner, int pots, boolean scented, Optional<Id<Place>> room) {
        return new WishedFor(manner, pots, Optional.empty(), Optional.empty(), "", scented, Optional.empty(), room);
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

    Variety variety(String name) {
        return journal().varieties().all().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    Purchase purchase(String name) {
        Variety variety = variety(name);
        return journal().purchases().all().stream()
                .filter(one -> one.variety().equals(variety.id()))
                .findFirst()
                .orElseThrow();
    }

    /** What a search comes to that nobody stops. */
    static Seeking.Found found(Planning planning, Rule rule, long effort) {
        return ((Seeking.Best) Seeking.seek(planning, rule, effort, new Undisturbed())).found();
    }

    private static final class Undisturbed implements Seeking.Progress {
        @Override
        public boolean wantsStop() {
            return false;
        }

        @Override
        public void found(Seeking.Found best) {
            // Nobody looks.
        }
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
