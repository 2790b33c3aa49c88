// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import static sillbook.season.Winter.winter;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.Arrival;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Findings;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place.Hazard;
import sillbook.model.Place.Sort;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.season.Winter;
import sillbook.season.Winter.Look;

/** An invented winter in full swing, on 12 January 2027, for the pictures of the pages. */
public final class GrowersWinter {
    private GrowersWinter() {}

    public static Winter told() {
        Winter told = places(winter());
        inside(told);
        outOfTheCold(told);
        stillCold(told);
        return told.wish("30 jan", "T4");
    }

    /** The same winter with bulbs ordered, and not yet come. */
    public static Journal withAnOrder() {
        Journal journal = told().journal();
        Variety variety = journal.varieties().all().iterator().next();
        return journal.with(List.of(new Edit.Put(new Purchase(
                new Id<>(97, 1),
                variety.id(),
                new Season(2026),
                Day.on(LocalDate.of(2026, 8, 20)),
                30,
                Purchase.Grade.UNKNOWN,
                Optional.empty(),
                "Harbour Seeds",
                "",
                Arrival.NOT_SAID,
                Optional.empty(),
                Purchase.Cooled.UNKNOWN,
                Purchase.State.ORDERED,
                ""))));
    }

    private static Winter places(Winter winter) {
        return winter.place("garage fridge", Sort.FRIDGE)
                .room(9)
                .usually(2, 9)
                .beside(Hazard.FOOD)
                .place("cellar", Sort.CELLAR)
                .room(20)
                .usually(2, 9)
                .place("trench", Sort.TRENCH)
                .room(12)
                .beside(Hazard.FROST, Hazard.MICE)
                .place("porch", Sort.PORCH)
                .room(8)
                .usually(7, 13)
                .place("stair window", Sort.COOL_ROOM)
                .room(4)
                .usually(10, 15)
                .place("kitchen sill", Sort.WARM_SILL)
                .room(6)
                .usually(15, 21)
                .place("parlour sill", Sort.WARM_SILL)
                .room(5)
                .usually(15, 21);
    }

    private static void inside(Winter winter) {
        winter.pot("P1", "Linen Parade", "paperwhite")
                .potted("10 nov", "porch")
                .moved("24 nov", "kitchen sill")
                .flowered("16 dec")
                .pot("C1", "Penny Gloaming", "crocus")
                .potted("28 sep", "garage fridge")
                .moved("26 dec", "stair window")
                .flowered("6 jan")
                .outcome("11 jan", 4)
                .checked("12 jan")
                .pot("A1", "Umbrella Street", "amaryllis")
                .potted("5 nov", "kitchen sill")
                .flowered("9 jan")
                .cared("12 jan", Care.TURNED)
                .pot("H1", "Pewter Choir", "prepared hyacinth")
                .potted("21 sep", "cellar")
                .moved("2 dec", "stair window")
                .moved("10 dec", "parlour sill")
                .flowered("20 dec")
                .pastBloom("7 jan");
    }

    private static void outOfTheCold(Winter winter) {
        winter.pot("T4", "Marrow Lane", "tulip/Triumph")
                .potted("21 sep", "cellar")
                .saw("13 nov", Look.noRoots())
                .saw("3 dec", Look.roots())
                .saw("2 jan", Look.roots().shoot(3))
                .saw("10 jan", Look.roots().shoot(6))
                .jotted("21 sep", "flat sides to the rim")
                .pot("D1", "Lantern Row", "daffodil/6")
                .potted("21 sep", "cellar")
                .moved("28 dec", "stair window")
                .saw("10 jan", Look.roots().shoot(12))
                .pot("M1", "Night Marbles", "grape hyacinth")
                .potted("5 oct", "cellar")
                .moved("4 jan", "stair window")
                .pot("I1", "Blue Postcard", "dwarf iris")
                .potted("28 sep", "cellar")
                .moved("28 dec", "porch")
                .moved("5 jan", "parlour sill");
    }

    private static void stillCold(Winter winter) {
        winter.pots("H5-H22", "Inkwell", "hyacinth")
                .potted("12 oct", "cellar")
                .saw("2 jan", Look.roots().shoot(3))
                .then("H5-H7")
                .moved("8 jan", "porch")
                .pot("S1", "Thimble Post", "snowdrop")
                .potted("8 oct", "trench")
                .pot("H2", "Inkwell", "hyacinth")
                .potted("26 oct", "garage fridge")
                .pot("T1", "Tuesday Coat", "tulip/Double Early")
                .potted("5 oct", "garage fridge")
                .pot("D2", "Goose Errand", "daffodil/2")
                .potted("12 oct", "cellar")
                .saw("2 jan", Look.roots().shoot(4))
                .pot("T3", "Ninepenny Hat", "tulip/Single Early")
                .potted("12 oct", "trench")
                .pot("C2", "Penny Gloaming", "crocus")
                .potted("2 nov", "trench")
                .pot("T8", "Ninepenny Hat", "tulip/Single Early")
                .potted("19 oct", "trench")
                .saw("10 jan", Look.ofShoot(1).growth(Findings.Growth.BUDS))
                .pot("H4", "Bramble Tax", "hyacinth")
                .potted("23 nov", "cellar")
                .saw("2 jan", Look.noRoots())
                .pot("T9", "Soot and Honey", "tulip/Triumph")
                .potted("9 nov", "cellar")
                .closed("20 dec", End.BROKEN)
                .pot("A2", "Umbrella Street", "amaryllis");
    }
}
