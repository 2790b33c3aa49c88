// SPDX-License-Identifier: Apache-2.0
package sillbook.benchmark;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import sillbook.change.Change;
import sillbook.change.Check;
import sillbook.change.Close;
import sillbook.change.Flower;
import sillbook.change.Hand;
import sillbook.change.Move;
import sillbook.change.PotUp;
import sillbook.change.Step;
import sillbook.change.WriteDown;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Failure;
import sillbook.model.Findings;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.Ids;
import sillbook.model.Impression;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Outcome;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Potting;
import sillbook.model.PottingMix;
import sillbook.model.Season;
import sillbook.model.Settings;
import sillbook.model.Stage;
import sillbook.model.Variety;

/**
 * An invented grower's winters, the last one under way on a given day: so many pots each, looked at every ten days. What flowered is
 * judged and done with.
 */
final class InventedSeasons {
    /** Ten winters of sixty tulips in one cellar. */
    static final Shape TEN = new Shape(10, 60, 30, List.of("tulip"), 1, 0);

    /** Thirty winters of two hundred pots of many kinds, in many places and potting mixes. */
    static final Shape THIRTY = new Shape(
            30,
            200,
            60,
            List.of("tulip", "hyacinth", "daffodil", "crocus", "grape hyacinth", "dwarf iris", "squill", "snowdrop"),
            6,
            6);

    private static final int DAYS_OF_COLD = 105;
    private static final Place STAIRS = Place.of(new Id<>(2, 0), "stair window", Place.Sort.COOL_ROOM);

    private final LocalDate today;
    private final Ids ids;
    private final Shape shape;
    private final List<Variety> varieties;
    private final List<Place> cellars;
    private final List<PottingMix> mixes;
    private final SplittableRandom scores = new SplittableRandom(30);
    private final List<Entity<?>> entities = new ArrayList<>();

    /**
     * How much there is.
     *
     * @param pots each winter
     * @param kinds of the varieties, in turn
     */
    record Shape(int seasons, int pots, int varieties, List<String> kinds, int cellars, int mixes) {}

    private InventedSeasons(LocalDate today, Shape shape) {
        this.today = today;
        this.shape = shape;
        long[] last = {1000};
        this.ids = () -> last[0]++;
        this.varieties = IntStream.range(0, shape.varieties())
                .mapToObj(number -> Variety.of(
                        new Id<>(1, number),
                        "Invention " + number,
                        Kind.of(shape.kinds().get(number % shape.kinds().size()))))
                .toList();
        this.cellars = IntStream.rangeClosed(1, shape.cellars())
                .mapToObj(number -> Place.of(new Id<>(2, number), "cellar " + number, Place.Sort.CELLAR))
                .toList();
        this.mixes = IntStream.range(0, shape.mixes())
                .mapToObj(number -> new PottingMix(new Id<>(3, number), "mix " + number, List.of(), ""))
                .toList();
    }

    static Journal until(LocalDate today, ZoneId zone, Shape shape) {
        InventedSeasons seasons = new InventedSeasons(today, shape);
        seasons.entities.add(Settings.initial(zone));
        seasons.entities.addAll(seasons.shelf());
        seasons.entities.add(STAIRS);
        int current = Season.of(today, Settings.initial(zone).seasonStart()).year();
        IntStream.range(0, shape.seasons()).forEach(back -> seasons.winter(new Season(current - back)));
        return Journal.of(seasons.entities);
    }

    private List<Entity<?>> shelf() {
        List<Entity<?>> shelf = new ArrayList<>(varieties);
        shelf.addAll(cellars);
        shelf.addAll(mixes);
        return shelf;
    }

    private void winter(Season season) {
        for (int number = 0; number < shape.pots(); number++) {
            LocalDate potted = LocalDate.of(season.year(), 9, 15).plusDays(number % 60);
            if (!potted.isAfter(today)) {
                entities.addAll(pot(season, number, potted));
            }
        }
    }

    /** A pot's whole life on its own, so that making winters takes no longer than their number of pots. */
    private List<Entity<?>> pot(Season season, int number, LocalDate potted) {
        Variety variety = varieties.get(number % varieties.size());
        // Other strides than the varieties have, so that all meet all.
        Place cellar = cellars.get((number / 7 + season.year()) % cellars.size());
        List<Entity<?>> bench = new ArrayList<>(List.of(Settings.initial(ZoneId.of("UTC")), variety, cellar, STAIRS));
        Optional<PottingMix> mix = mixes.isEmpty()
                ? Optional.empty()
                : Optional.of(mixes.get((number / 11 + season.year()) % mixes.size()));
        mix.ifPresent(bench::add);
        Journal alone = Journal.of(bench);
        alone = after(alone, potUp(season, number, variety, cellar, mix, potted), potted);
        Id<Pot> pot = alone.potsOf(season).get(0).id();
        for (int days = 10; days < DAYS_OF_COLD; days += 10) {
            alone = after(alone, look(pot, cellar, potted.plusDays(days)), potted.plusDays(days));
        }
        LocalDate out = potted.plusDays(DAYS_OF_COLD);
        alone = after(alone, new Move(List.of(pot), STAIRS.id(), Stage.COOL_ROOM, Day.on(out)), out);
        alone = after(alone, flower(pot, BloomPoint.FIRST_FLOWER, out.plusDays(21)), out.plusDays(21));
        alone = after(alone, flower(pot, BloomPoint.PAST_BLOOM, out.plusDays(31)), out.plusDays(31));
        LocalDate end = out.plusDays(45);
        alone = after(alone, new WriteDown(outcome(pot, end)), end);
        alone = after(alone, new Close(List.of(pot), End.FINISHED, "", Day.on(end)), end);
        List<Entity<?>> life = new ArrayList<>(alone.pots().all());
        life.addAll(alone.events().all());
        life.addAll(alone.outcomes().all());
        return life;
    }

    private Journal after(Journal journal, Change change, LocalDate day) {
        if (day.isAfter(today)) {
            return journal;
        }
        Instant now = day.atTime(9, 0).toInstant(ZoneOffset.UTC);
        List<Edit> edits = change.on(journal, new Hand(now, day, ids)).fold(Step::edits, refusal -> {
            throw new IllegalStateException(refusal.sentence());
        });
        return journal.with(edits);
    }

    private static PotUp potUp(
            Season season, int number, Variety variety, Place cellar, Optional<PottingMix> mix, LocalDate potted) {
        return new PotUp(
                season,
                List.of(new Pot.Planting(variety.id(), 5, Optional.empty())),
                1,
                "T" + (number + 1),
                Pot.Way.DRAINED,
                Optional.empty(),
                Optional.empty(),
                mix.map(PottingMix::id),
                Potting.NOT_SAID,
                Optional.of(Day.on(potted)),
                Optional.of(cellar.id()),
                Optional.empty(),
                "");
    }

    private Outcome outcome(Id<Pot> pot, LocalDate day) {
        return new Outcome(
                ids.next(),
                pot,
                Optional.empty(),
                Day.on(day),
                Optional.of(2 + scores.nextInt(4)),
                Optional.of(5),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Failure.NONE,
                Impression.of(Outcome.Again.YES),
                "");
    }

    private static Check look(Id<Pot> pot, Place cellar, LocalDate day) {
        return new Check(Map.of(pot, Findings.ALL_WELL), Optional.of(cellar.id()), Day.on(day));
    }

    private static Flower flower(Id<Pot> pot, BloomPoint point, LocalDate day) {
        return new Flower(List.of(pot), point, Optional.empty(), Day.on(day));
    }
}
