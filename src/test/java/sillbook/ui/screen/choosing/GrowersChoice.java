// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.choosing;

import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sillbook.model.Arrival;
import sillbook.model.Choice;
import sillbook.model.Choice.Chosen;
import sillbook.model.Choice.Mark;
import sillbook.model.Choice.SetAside;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Failure;
import sillbook.model.Failure.Sign;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Place.Sort;
import sillbook.model.Purchase;
import sillbook.model.Purchase.Money;
import sillbook.model.Purchase.State;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.season.Winter;

/** Three invented winters of eight varieties, and what was bought and marked, to choose from in January. */
final class GrowersChoice {
    static final Season COMING = new Season(2027);

    private int number;

    private GrowersChoice() {}

    static Journal told() {
        return new GrowersChoice().journal();
    }

    /** The same before anything is marked or bought. */
    static Journal unmarked() {
        return winters().journal();
    }

    /** So many varieties never grown, and of each so many bulbs chosen. */
    static List<Edit> novelties(int howMany, int bulbs) {
        List<Edit> more = new ArrayList<>();
        for (int nth = 1; nth <= howMany; nth++) {
            Variety variety = Variety.of(new Id<>(63, nth), "Novelty " + nth, Kind.of("crocus"));
            put(more, variety);
            put(more, new Choice(new Id<>(64, nth), variety.id(), COMING, new Chosen(bulbs)));
        }
        return more;
    }

    static Variety find(Journal journal, String name) {
        return journal.varieties().all().stream()
                .filter(variety -> variety.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private Journal journal() {
        Journal grown = unmarked();
        List<Edit> more = new ArrayList<>();
        put(more, Variety.of(new Id<>(60, 1), "Tin Starling", new Kind("tulip", "Triumph")));
        put(more, bought(find(grown, "Lantern Row"), 2026, 20, State.IN_HAND, 900));
        put(more, bought(find(grown, "Inkwell"), 2026, 9, State.IN_HAND, 950));
        put(more, bought(find(grown, "Marrow Lane"), 2026, 30, State.IN_HAND, 600));
        put(more, bought(find(grown, "Linen Parade"), 2026, 5, State.IN_HAND, 500));
        put(more, marked(find(grown, "Lantern Row"), COMING, new Chosen(10)));
        put(more, marked(find(grown, "Inkwell"), COMING, new Chosen(9)));
        put(more, marked(find(grown, "Goose Errand"), COMING, new SetAside("both pots leaned")));
        put(more, marked(find(grown, "Ninepenny Hat"), COMING.previous(), new SetAside("")));
        put(more, marked(find(grown, "Marrow Lane"), COMING.previous(), new Chosen(12)));
        return grown.with(more);
    }

    private static void put(List<Edit> edits, Entity<?> entity) {
        edits.add(new Edit.Put(entity));
    }

    private Purchase bought(Variety variety, int season, int bulbs, State state, long minor) {
        Purchase plain = Purchase.of(
                new Id<>(61, ++number),
                variety.id(),
                new Season(season),
                Day.on(LocalDate.of(season, 9, 5)),
                bulbs,
                state);
        return new Purchase(
                plain.id(),
                plain.variety(),
                plain.season(),
                plain.day(),
                plain.count(),
                plain.grade(),
                Optional.of(new Money(minor, "")),
                "",
                "",
                Arrival.NOT_SAID,
                Optional.empty(),
                plain.cooled(),
                plain.state(),
                "");
    }

    private Choice marked(Variety variety, Season season, Mark mark) {
        return new Choice(new Id<>(62, ++number), variety.id(), season, mark);
    }

    private static Winter winters() {
        Winter told = winter().place("fridge", Sort.FRIDGE)
                .place("cellar", Sort.CELLAR)
                .place("sill", Sort.WARM_SILL);
        told.of(2024);
        told.pot("D1", "Lantern Row", "daffodil/6")
                .potted("1 oct", "cellar")
                .flowered("18 feb")
                .outcome("20 feb", 4)
                .pastBloom("28 feb");
        scored(told, "H1", "Inkwell", "hyacinth", "fridge", 4);
        scored(told, "T1", "Marrow Lane", "tulip/Triumph", "cellar", 3);
        scored(told, "T2", "Tuesday Coat", "tulip/Double Early", "fridge", 5);
        scored(told, "T3", "Ninepenny Hat", "tulip/Single Early", "cellar", 1);
        floppy(told, "D2");
        told.of(2025);
        bloomed(told, "T1", "Marrow Lane", "tulip/Triumph", "8 feb", 4, "20 feb");
        bloomed(told, "H1", "Inkwell", "hyacinth", "2 mar", 5, "12 mar");
        scored(told, "D1", "Lantern Row", "daffodil/6", "fridge", 5);
        scored(told, "T2", "Tuesday Coat", "tulip/Double Early", "fridge", 4);
        scored(told, "T3", "Ninepenny Hat", "tulip/Single Early", "cellar", 2);
        scored(told, "T4", "Ninepenny Hat", "tulip/Single Early", "fridge", 4);
        scored(told, "P1", "Linen Parade", "paperwhite", "sill", 4);
        floppy(told, "D2");
        return told.of(2026);
    }

    private static void scored(Winter told, String label, String variety, String kind, String place, int score) {
        told.pot(label, variety, kind).potted("5 oct", place).outcome("1 mar", score);
    }

    private static void bloomed(
            Winter told, String label, String variety, String kind, String flower, int score, String past) {
        told.pot(label, variety, kind)
                .potted("5 oct", "fridge")
                .flowered(flower)
                .outcome(past, score)
                .pastBloom(past);
    }

    private static void floppy(Winter told, String label) {
        told.pot(label, "Goose Errand", "daffodil/2")
                .potted("5 oct", "cellar")
                .outcomeWithoutScore("1 mar", new Failure(Set.of(Sign.FLOPPY), Optional.empty(), "", Optional.empty()));
    }
}
