// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.bulbs;

import static sillbook.season.Winter.winter;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.handbook.FigureName;
import sillbook.model.Arrival;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Event;
import sillbook.model.Happening;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.Place.Sort;
import sillbook.model.Purchase;
import sillbook.model.Purchase.Money;
import sillbook.model.Season;
import sillbook.model.Subject;
import sillbook.model.Variety;
import sillbook.model.Variety.PacketForcing;
import sillbook.model.Variety.Scent;
import sillbook.season.Winter;

/** Invented varieties with three winters of outcomes, some bulbs in hand, and what was noted. */
final class GrowersShelf {
    private GrowersShelf() {}

    static Journal told() {
        Journal scored = outcomes().journal();
        List<Edit> edits = new ArrayList<>();
        edits.add(new Edit.Put(tall(scored, "Marrow Lane", 45, PacketForcing.YES)));
        edits.add(new Edit.Put(tall(scored, "Inkwell", 24, PacketForcing.NOT_STATED)));
        edits.add(new Edit.Put(tall(scored, "Umbrella Street", 50, PacketForcing.NOT_STATED)));
        edits.add(new Edit.Put(tall(scored, "Soot and Honey", 60, PacketForcing.NO)));
        edits.add(new Edit.Put(bought(901, find(scored, "Marrow Lane"), 2026, 30, Purchase.State.IN_HAND)));
        edits.add(new Edit.Put(bought(902, find(scored, "Marrow Lane"), 2025, 20, Purchase.State.IN_HAND)));
        edits.add(new Edit.Put(bought(903, find(scored, "Inkwell"), 2026, 12, Purchase.State.ORDERED)));
        edits.add(new Edit.Put(noted(904, find(scored, "Marrow Lane"))));
        return scored.with(edits);
    }

    /** One variety over three winters: failed, judged and counted in two places, and growing. */
    static Journal recorded() {
        Winter told = winter().place("cellar", Sort.CELLAR).place("garage fridge", Sort.FRIDGE);
        told.of(2024).pot("T1", "Marrow Lane", "tulip/Triumph").closed("1 feb", End.FAILED);
        told.of(2025);
        judged(told, "T1", "cellar", 4, 5, "");
        judged(told, "T2", "garage fridge", 3, 4, "short in the cellar");
        return told.of(2026)
                .pot("T1", "Marrow Lane", "tulip/Triumph")
                .potted("5 oct", "cellar")
                .journal();
    }

    private static void judged(Winter told, String label, String place, int score, int flowers, String note) {
        told.pot(label, "Marrow Lane", "tulip/Triumph").potted("5 oct", place).outcome("1 mar", score, flowers, note);
    }

    private static Winter outcomes() {
        Winter told = winter().of(2023);
        scored(told, "T1", "Marrow Lane", "tulip/Triumph", 4);
        scored(told, "H1", "Inkwell", "hyacinth", 4);
        told.of(2024);
        scored(told, "T1", "Marrow Lane", "tulip/Triumph", 4);
        scored(told, "T2", "Marrow Lane", "tulip/Triumph", 3);
        scored(told, "H1", "Inkwell", "hyacinth", 5);
        told.of(2025);
        scored(told, "T1", "Marrow Lane", "tulip/Triumph", 3);
        scored(told, "L1", "Soot and Honey", "tulip/Single Late", 1);
        scored(told, "A1", "Umbrella Street", "amaryllis", 5);
        told.of(2026).pot("G1", "Tin Starling", "glory-of-the-snow");
        return told.ownFor("Marrow Lane", FigureName.IN_BLOOM, 10, 10, 10);
    }

    private static void scored(Winter told, String label, String variety, String kind, int score) {
        told.pot(label, variety, kind).outcome("12 feb", score);
    }

    static Variety find(Journal journal, String name) {
        return journal.varieties().all().stream()
                .filter(variety -> variety.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Variety tall(Journal journal, String name, double centimetres, PacketForcing packet) {
        Variety known = find(journal, name);
        Optional<Length> height = Optional.of(Length.ofCentimetres(centimetres));
        return new Variety(
                known.id(),
                name,
                "",
                known.kind(),
                height,
                Variety.BloomSeason.NOT_SAID,
                "plum",
                Scent.LIGHT,
                packet,
                Variety.ForPots.NOT_MARKED,
                "");
    }

    private static Purchase bought(long id, Variety of, int season, int count, Purchase.State state) {
        return new Purchase(
                new Id<>(9, id),
                of.id(),
                new Season(season),
                Day.on(LocalDate.of(season, 8, 20)),
                count,
                new Purchase.Grade("12+", Optional.empty()),
                season == 2026 ? Optional.of(new Money(950, "")) : Optional.empty(),
                "Harbour Seeds",
                "",
                Arrival.in("firm"),
                Optional.empty(),
                new Purchase.Cooled(Optional.of(6.0)),
                state,
                "");
    }

    private static Event noted(long id, Variety variety) {
        return new Event(
                new Id<>(9, id),
                new Subject.OfVariety(variety.id()),
                Day.on(LocalDate.of(2026, 3, 2)),
                1,
                Instant.parse("2026-03-02T09:00:00Z"),
                Optional.empty(),
                new Happening.Jotted("short in the cellar, fine in the fridge"));
    }

    /** One variety of a kind, and nothing else. */
    static Journal only(String name, Kind kind) {
        Journal none = winter().journal();
        return none.with(List.of(new Edit.Put(Variety.of(new Id<>(9, 7), name, kind))));
    }
}
