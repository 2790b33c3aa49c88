// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import static org.assertj.core.api.Assertions.fail;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import sillbook.change.Change;
import sillbook.change.Hand;
import sillbook.change.PotUp;
import sillbook.handbook.Handbook;
import sillbook.model.Day;
import sillbook.model.Entity;
import sillbook.model.Findings;
import sillbook.model.Findings.Roots;
import sillbook.model.Happening;
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
import sillbook.model.Season;
import sillbook.model.Settings;
import sillbook.model.Stage;
import sillbook.model.Variety;

/**
 * A winter that is lived, not told: 150 pots in 12 batches, a journal that grows by changes alone, and bulbs that root,
 * shoot and flower in their own time, which the grower learns only by looking.
 */
final class LivedWinter {
    static final int POTS = 150;
    static final int BATCHES = 12;
    static final LocalDate FIRST = LocalDate.of(2026, 9, 15);
    static final LocalDate LAST = LocalDate.of(2027, 6, 30);
    private static final Season SEASON = new Season(2026);
    private static final int POTTING_DAYS = 60;
    private static final List<String> KINDS = List.of(
            "tulip",
            "tulip/Triumph",
            "tulip/Single Early",
            "daffodil",
            "hyacinth",
            "prepared hyacinth",
            "crocus",
            "grape hyacinth",
            "dwarf iris",
            "snowdrop",
            "squill",
            "paperwhite");

    private final Random random;
    private final Ids ids;
    private final Map<LocalDate, List<PotUp>> pottings = new HashMap<>();
    private final Map<Id<Pot>, Integer> haste = new HashMap<>();
    private Journal journal;

    LivedWinter(Random random) {
        this.random = random;
        long[] last = {0};
        this.ids = () -> ++last[0];
        List<Entity<?>> house = new ArrayList<>(List.of(Settings.initial(ZoneOffset.UTC)));
        house.addAll(places());
        List<Variety> varieties = new ArrayList<>();
        for (int batch = 0; batch < BATCHES; batch++) {
            varieties.add(Variety.of(ids.next(), "Number " + batch, kind(KINDS.get(random.nextInt(KINDS.size())))));
        }
        house.addAll(varieties);
        journal = Journal.of(house);
        plan(varieties);
    }

    private static Kind kind(String told) {
        int slash = told.indexOf('/');
        return slash < 0 ? Kind.of(told) : new Kind(told.substring(0, slash), told.substring(slash + 1));
    }

    private List<Place> places() {
        return List.of(
                place("cellar", Sort.CELLAR, 70, ColdDays.ALL_YEAR),
                place("fridge", Sort.FRIDGE, 12, ColdDays.ALL_YEAR),
                place("garage", Sort.GARAGE, 40, new ColdDays(MonthDay.of(10, 10), MonthDay.of(4, 10))),
                place("trench", Sort.TRENCH, 40, new ColdDays(MonthDay.of(10, 15), MonthDay.of(4, 1))),
                place("stair window", Sort.COOL_ROOM, 20, ColdDays.ALL_YEAR),
                place("porch", Sort.PORCH, 30, ColdDays.ALL_YEAR),
                place("kitchen sill", Sort.WARM_SILL, 20, ColdDays.ALL_YEAR),
                place("parlour sill", Sort.WARM_SILL, 30, ColdDays.ALL_YEAR));
    }

    private Place place(String name, Sort sort, int room, ColdDays coldDays) {
        Place usual = Place.of(ids.next(), name, sort);
        return new Place(
                usual.id(),
                name,
                sort,
                usual.serves(),
                usual.usual(),
                coldDays,
                usual.light(),
                Optional.of(room),
                usual.checkEveryDays(),
                usual.bridges(),
                usual.hazards(),
                usual.note());
    }

    /** So many pots of each variety, on a day of the autumn; together they are all the pots. */
    private void plan(List<Variety> varieties) {
        int[] sizes = new int[BATCHES];
        for (int pot = 0; pot < POTS; pot++) {
            sizes[pot < 2 * BATCHES ? pot % BATCHES : random.nextInt(BATCHES)]++;
        }
        for (int batch = 0; batch < BATCHES; batch++) {
            LocalDate day = FIRST.plusDays(random.nextInt(POTTING_DAYS));
            String label = (char) ('A' + batch) + "1";
            pottings.computeIfAbsent(day, none -> new ArrayList<>())
                    .add(potUp(varieties.get(batch), sizes[batch], label));
        }
    }

    private PotUp potUp(Variety variety, int pots, String label) {
        return new PotUp(
                SEASON,
                List.of(new Pot.Planting(variety.id(), 5, Optional.empty())),
                pots,
                label,
                Pot.Way.DRAINED,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Potting.NOT_SAID,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
    }

    /** The pots meant to be potted on that day, not yet made. */
    List<PotUp> pottingsOf(LocalDate day) {
        return pottings.getOrDefault(day, List.of());
    }

    Outlook on(LocalDate day) {
        return Outlook.of(journal, Handbook.standard(), day);
    }

    Season season() {
        return SEASON;
    }

    Journal journal() {
        return journal;
    }

    Ids ids() {
        return ids;
    }

    /** A change is made on a day; it must be accepted. */
    void does(LocalDate day, Change change) {
        Instant now = day.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC);
        change.on(journal, new Hand(now, day, ids))
                .fold(
                        step -> {
                            journal = journal.with(step.edits());
                            return step;
                        },
                        refusal -> fail(
                                day + ": " + change.getClass().getSimpleName() + " is refused: " + refusal.sentence()));
    }

    /** Whether a pot's winter has not ended yet; another line of the same day may have ended it. */
    boolean isThere(Id<Pot> pot) {
        return journal.history(pot).stream().noneMatch(event -> event.what() instanceof Happening.Closed);
    }

    /** What a look at a pot finds, most looks nothing but that it is well. */
    Findings look(PotNow pot) {
        Findings found = Findings.ALL_WELL;
        int cold = pot.life().cold().daysIn() + haste(pot) * 2;
        if (cold > 60 && random.nextInt(3) > 0) {
            found = found.withRoots(cold > 70 ? Roots.SHOWING : Roots.NONE);
        }
        if (cold > 85 && random.nextInt(3) > 0) {
            found = found.withShoot(Length.ofCentimetres(Math.min(9, (cold - 80) / 8)));
        }
        if (random.nextInt(15) == 0) {
            found = found.withMoisture(Findings.Moisture.DRY).withWatered(true);
        }
        return random.nextInt(40) == 0 ? found.with(Findings.Trouble.MOULD) : found;
    }

    /** Whether a pot in a room opens its first flower, or has opened it and nobody wrote it. */
    boolean flowers(PotNow pot, LocalDate day) {
        boolean isForced = pot.life().stage() == Stage.COOL_ROOM || pot.life().stage() == Stage.WARM_ROOM;
        LocalDate out = pot.life().phases().stream()
                .filter(phase -> phase.stage() == Stage.COOL_ROOM || phase.stage() == Stage.WARM_ROOM)
                .map(phase -> phase.days().start())
                .findFirst()
                .orElse(LocalDate.MAX);
        return isForced && !day.isBefore(out.plusDays(21 + haste(pot)));
    }

    /** Bulbs of one variety are much alike, and yet no two pots the same. */
    private int haste(PotNow pot) {
        return haste.computeIfAbsent(pot.life().pot().id(), one -> random.nextInt(4));
    }

    static Day on(LocalDate day, int daysAgo) {
        return Day.on(day.minusDays(daysAgo));
    }
}
