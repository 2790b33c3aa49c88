// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.plan;

import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Arrival;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Place.Sort;
import sillbook.model.Purchase;
import sillbook.model.Purchase.Money;
import sillbook.model.Purchase.State;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.model.Wish;
import sillbook.model.WishedFor;
import sillbook.model.WishedFor.Manner;

/** An invented winter to come, as it is planned in the January before: bulbs on order, places, and what is wished for. */
final class ComingWinter {
    static final Season SEASON = new Season(2027);
    private static final LocalDate ORDERED = LocalDate.of(2027, 1, 5);

    private final List<Edit> edits = new ArrayList<>();
    private int number;

    /** Places and bulbs, and nothing wished for. */
    static Journal bulbs() {
        return new ComingWinter().bought().over(places());
    }

    /** The same with something every day from 10 January to 25 March, and three scented pots for 14 February. */
    static Journal wished() {
        return new ComingWinter().bought().wishes().over(places());
    }

    /** Places only. */
    static Journal places() {
        return winter().place("garage fridge", Sort.FRIDGE)
                .room(9)
                .place("cellar", Sort.CELLAR)
                .room(20)
                .place("stair window", Sort.COOL_ROOM)
                .room(4)
                .place("kitchen sill", Sort.WARM_SILL)
                .room(6)
                .place("parlour sill", Sort.WARM_SILL)
                .room(2)
                .journal();
    }

    private Journal over(Journal journal) {
        return journal.with(edits);
    }

    private ComingWinter bought() {
        bought("Pewter Choir", "prepared hyacinth", 3, 600);
        bought("Penny Gloaming", "crocus", 12, 300);
        bought("Blue Postcard", "dwarf iris", 10, 350);
        bought("Inkwell", "hyacinth", 9, 950);
        bought("Lantern Row", "daffodil", 10, 700);
        bought("Tuesday Coat", "tulip", 12, 620);
        bought("Marrow Lane", "tulip", 10, 500);
        return bought("Night Marbles", "grape hyacinth", 12, 240);
    }

    private ComingWinter bought(String name, String kind, int bulbs, long minor) {
        Variety variety = new Variety(
                new Id<>(70, ++number),
                name,
                "",
                Kind.of(kind),
                Optional.empty(),
                Variety.BloomSeason.NOT_SAID,
                "",
                kind.contains("hyacinth") ? Variety.Scent.STRONG : Variety.Scent.NONE,
                Variety.PacketForcing.YES,
                Variety.ForPots.NOT_MARKED,
                "");
        put(variety);
        return put(new Purchase(
                new Id<>(71, number),
                variety.id(),
                SEASON,
                Day.on(ORDERED),
                bulbs,
                Purchase.Grade.UNKNOWN,
                Optional.of(new Money(minor, "")),
                "Harbour Seeds",
                "",
                Arrival.NOT_SAID,
                Optional.empty(),
                Purchase.Cooled.UNKNOWN,
                State.ORDERED,
                ""));
    }

    private ComingWinter wishes() {
        put(wish(LocalDate.of(2028, 1, 10), LocalDate.of(2028, 3, 25), Manner.EVERY_DAY, 1, false));
        return put(wish(LocalDate.of(2028, 2, 14), LocalDate.of(2028, 2, 14), Manner.SOME_DAY, 3, true));
    }

    private Wish wish(LocalDate from, LocalDate to, Manner manner, int pots, boolean scented) {
        WishedFor asks = new WishedFor(
                manner, pots, Optional.empty(), Optional.empty(), "", scented, Optional.empty(), Optional.empty());
        return new Wish(new Id<>(72, ++number), SEASON, from, to, "", asks, Set.of(), "");
    }

    private ComingWinter put(Entity<?> entity) {
        edits.add(new Edit.Put(entity));
        return this;
    }
}
