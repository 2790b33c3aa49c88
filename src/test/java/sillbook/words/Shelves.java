// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import sillbook.change.Change;
import sillbook.change.Hand;
import sillbook.change.Move;
import sillbook.change.PotUp;
import sillbook.change.Step;
import sillbook.change.WriteDown;
import sillbook.handbook.Handbook;
import sillbook.model.Arrival;
import sillbook.model.Band;
import sillbook.model.Container;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Id;
import sillbook.model.Ids;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.Place;
import sillbook.model.Place.ColdDays;
import sillbook.model.Place.Sort;
import sillbook.model.Pot;
import sillbook.model.Potting;
import sillbook.model.PottingMix;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.Settings;
import sillbook.model.Stage;
import sillbook.model.Variety;
import sillbook.season.Outlook;
import sillbook.words.line.Bench;
import sillbook.words.line.LineReading;
import sillbook.words.line.QuickLine;

/** A small invented journal to write lines in: a house in winter on Tue 12 Jan 2027. */
public final class Shelves {
    public static final LocalDate TODAY = LocalDate.of(2027, 1, 12);
    public static final Season SEASON = new Season(2026);

    private final AtomicLong count = new AtomicLong(1000);
    private final Ids ids = count::incrementAndGet;
    private Journal journal = Journal.empty(Settings.initial(ZoneId.of("Europe/Vienna")));

    private Shelves() {}

    /** The journal of the tests' tables. */
    public static Bench bench() {
        Shelves shelves = new Shelves();
        shelves.furnish();
        return shelves.toBench();
    }

    /** The same journal after some more lines. */
    public static Bench after(List<String> lines) {
        Shelves shelves = new Shelves();
        shelves.furnish();
        lines.forEach(shelves::write);
        return shelves.toBench();
    }

    private void write(String line) {
        LineReading reading = QuickLine.read(line, toBench());
        apply(reading.change().orElseThrow(() -> new AssertionError(line + ": " + reading.complaint())));
    }

    /** A journal that has nothing in it yet. */
    public static Bench bare() {
        return new Shelves().toBench();
    }

    private Bench toBench() {
        return new Bench(journal, Outlook.of(journal, Handbook.standard(), TODAY), Handbook.standard(), ids);
    }

    private void furnish() {
        place("garage fridge", Sort.FRIDGE, Stage.COLD, 9);
        place("cellar", Sort.CELLAR, Stage.COLD, 20);
        place("trench", Sort.TRENCH, Stage.COLD, 12);
        place("stair window", Sort.COOL_ROOM, Stage.COOL_ROOM, 4);
        place("kitchen sill", Sort.WARM_SILL, Stage.WARM_ROOM, 6);
        place("parlour sill", Sort.WARM_SILL, Stage.WARM_ROOM, 5);
        variety("Marrow Lane", new Kind("tulip", "Triumph"));
        variety("Inkwell", Kind.of("hyacinth"));
        variety("Lantern Row", new Kind("daffodil", "6"));
        variety("Linen Parade", Kind.of("paperwhite"));
        variety("Umbrella Street", Kind.of("amaryllis"));
        write(new PottingMix(id(101), "sill mix", List.of(new PottingMix.Part(2, "loam")), ""));
        write(new Container(
                id(102),
                "bowl 19 cm",
                Container.Shape.BOWL,
                Optional.of(Length.ofCentimetres(19)),
                Optional.empty(),
                3,
                0,
                ""));
        purchase("Marrow Lane", 30);
        purchase("Linen Parade", 14);
        pots("T1", 6, "Marrow Lane", 5, "cellar", LocalDate.of(2026, 9, 21));
        pots("H1", 3, "Inkwell", 3, "garage fridge", LocalDate.of(2026, 10, 14));
        pots("D1", 1, "Lantern Row", 5, "cellar", LocalDate.of(2026, 10, 1));
        pots("A1", 1, "Umbrella Street", 1, "kitchen sill", LocalDate.of(2026, 11, 20));
        move("D1", "stair window", LocalDate.of(2027, 1, 4));
    }

    private static <T> Id<T> id(long low) {
        return new Id<>(7, low);
    }

    private void apply(Change change) {
        Hand hand = new Hand(TODAY.atStartOfDay(ZoneOffset.UTC).toInstant(), TODAY, ids);
        Step step = (Step) change.on(journal, hand);
        journal = journal.with(step.edits());
    }

    private void write(Entity<?> entity) {
        journal = journal.with(List.of(new Edit.Put(entity)));
    }

    private void place(String name, Sort sort, Stage serves, int room) {
        Place plain = Place.of(id(count.incrementAndGet()), name, sort);
        write(new Place(
                plain.id(),
                name,
                sort,
                serves,
                Optional.of(Band.ofCelsius(2, 9)),
                ColdDays.ALL_YEAR,
                "",
                Optional.of(room),
                plain.checkEveryDays(),
                plain.bridges(),
                plain.hazards(),
                ""));
    }

    private void variety(String name, Kind kind) {
        apply(new WriteDown(Variety.of(id(count.incrementAndGet()), name, kind)));
    }

    private void purchase(String variety, int bulbs) {
        write(new Purchase(
                id(count.incrementAndGet()),
                variety(variety).id(),
                SEASON,
                Day.on(LocalDate.of(2026, 8, 20)),
                bulbs,
                Purchase.Grade.UNKNOWN,
                Optional.empty(),
                "",
                "",
                Arrival.NOT_SAID,
                Optional.empty(),
                Purchase.Cooled.UNKNOWN,
                Purchase.State.IN_HAND,
                ""));
    }

    private Variety variety(String name) {
        return journal.varieties().all().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private Place place(String name) {
        return journal.places().all().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private void pots(String first, int howMany, String variety, int bulbs, String place, LocalDate day) {
        apply(new PotUp(
                SEASON,
                List.of(new Pot.Planting(variety(variety).id(), bulbs, Optional.empty())),
                howMany,
                first,
                Pot.Way.DRAINED,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Potting.NOT_SAID,
                Optional.of(Day.on(day)),
                Optional.of(place(place).id()),
                Optional.empty(),
                ""));
    }

    private void move(String label, String place, LocalDate day) {
        Pot pot = journal.pot(SEASON, label).orElseThrow();
        apply(new Move(List.of(pot.id()), place(place).id(), place(place).serves(), Day.on(day)));
    }
}
