// SPDX-License-Identifier: Apache-2.0
package sillbook.store;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.change.Step;
import sillbook.model.Arrival;
import sillbook.model.Band;
import sillbook.model.Cause;
import sillbook.model.Choice;
import sillbook.model.Container;
import sillbook.model.DateOrder;
import sillbook.model.Day;
import sillbook.model.Edit;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Failure;
import sillbook.model.Findings;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Impression;
import sillbook.model.Intention;
import sillbook.model.JobKind;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.Kind;
import sillbook.model.Length;
import sillbook.model.LoggerFormat;
import sillbook.model.LoggerProfile;
import sillbook.model.Outcome;
import sillbook.model.OwnFigure;
import sillbook.model.OwnKind;
import sillbook.model.PastWindows;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Potting;
import sillbook.model.PottingMix;
import sillbook.model.Proposal;
import sillbook.model.Purchase;
import sillbook.model.ReadingSource;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.model.Settings;
import sillbook.model.Space;
import sillbook.model.SpanReading;
import sillbook.model.SpotReading;
import sillbook.model.Stage;
import sillbook.model.Subject;
import sillbook.model.Temperature;
import sillbook.model.Thermometer;
import sillbook.model.Trench;
import sillbook.model.UsualWay;
import sillbook.model.Variety;
import sillbook.model.Wish;
import sillbook.model.WishedFor;

/** Entries made up from a seed, of every type and with every optional part, now there and now not. */
public final class RandomEntries {
    private static final List<String> TEXTS = List.of(
            "",
            "Marrow Lane",
            "'); DROP TABLE pot; --",
            "\"quoted\" and \\ back, {\"a\": [1]}",
            "5",
            "null",
            "a line\nand\ta tab",
            "Øvre Gärten, e\u0301, 日本, \uD83C\uDF37",
            "%s ? ?1 :name @x $y",
            "x".repeat(200));

    private final Random random;

    public RandomEntries(long seed) {
        this.random = new Random(seed);
    }

    /** A journal of so many entries. */
    public Journal journal(int entries) {
        Journal journal = Journal.empty(settings());
        while (journal.entities().size() < entries) {
            journal = journal.with(step(journal).edits());
        }
        return journal;
    }

    /** A step that some entries go, come or change in, so that all that is referred to is there in the end. */
    public Step step(Journal journal) {
        List<Edit> edits = new ArrayList<>();
        Journal current = journal;
        for (int edit = random.nextInt(6); edit >= 0; edit--) {
            List<Edit> next = List.of(edit(current));
            current = current.with(next);
            edits.addAll(next);
        }
        return new Step(text(), edits);
    }

    private Edit edit(Journal journal) {
        List<Entity<?>> loose = random.nextInt(4) == 0 ? loose(journal) : List.of();
        return loose.isEmpty() ? new Edit.Put(entity(journal)) : new Edit.Remove(pick(loose));
    }

    /** What nothing refers to. */
    private static List<Entity<?>> loose(Journal journal) {
        Set<Id<?>> used = journal.entities().stream().flatMap(Entity::refersTo).collect(Collectors.toSet());
        return journal.entities().stream()
                .filter(entity -> !(entity instanceof Settings) && !used.contains(entity.id()))
                .collect(Collectors.toList());
    }

    private Entity<?> entity(Journal journal) {
        if (journal.varieties().isEmpty()) {
            return variety(journal);
        }
        if (journal.places().isEmpty()) {
            return place(journal);
        }
        if (journal.pots().isEmpty()) {
            return pot(journal);
        }
        List<Supplier<Entity<?>>> types = List.of(
                this::settings,
                () -> ownKind(journal),
                () -> variety(journal),
                () -> ownFigure(journal),
                () -> place(journal),
                () -> trench(journal),
                () -> purchase(journal),
                () -> mix(journal),
                () -> container(journal),
                () -> usualWay(journal),
                () -> pot(journal),
                () -> event(journal),
                () -> event(journal),
                () -> spanReading(journal),
                () -> spotReading(journal),
                () -> thermometer(journal),
                () -> readingSource(journal),
                () -> loggerProfile(journal),
                () -> outcome(journal),
                () -> wish(journal),
                () -> choice(journal),
                () -> space(journal),
                () -> seasonPlan(journal),
                () -> intention(journal),
                () -> pastWindows(journal));
        return pick(types).get();
    }

    public Settings settings() {
        return new Settings(
                ZoneId.of(pick(List.of("Europe/London", "Pacific/Chatham", "UTC", "+03:30"))),
                MonthDay.of(1 + random.nextInt(12), 1 + random.nextInt(28)),
                pick(Settings.TemperatureUnit.values()),
                pick(Settings.LengthUnit.values()),
                pick(Settings.Colours.values()),
                random.nextBoolean());
    }

    private OwnKind ownKind(Journal journal) {
        return new OwnKind(oldOrNew(journal.ownKinds().all(), OwnKind::id), text(), text(), perhaps(this::kind));
    }

    private Variety variety(Journal journal) {
        return new Variety(
                oldOrNew(journal.varieties().all(), Variety::id),
                name(),
                text(),
                kind(),
                perhaps(this::length),
                pick(Variety.BloomSeason.values()),
                text(),
                pick(Variety.Scent.values()),
                pick(Variety.PacketForcing.values()),
                pick(Variety.ForPots.values()),
                text());
    }

    private OwnFigure ownFigure(Journal journal) {
        OwnFigure.Scope scope = pick(List.of(
                OwnFigure.Scope.ofAllHardy(),
                OwnFigure.Scope.of(kind()),
                OwnFigure.Scope.of(pick(journal.varieties().all()).id())));
        double low = random.nextDouble() * 10;
        double typical = low + random.nextDouble();
        return new OwnFigure(
                oldOrNew(journal.ownFigures().all(), OwnFigure::id),
                scope,
                text(),
                perhaps(() -> new OwnFigure.Range(low, typical, typical + 1.0 / 3)),
                text());
    }

    private Place place(Journal journal) {
        return new Place(
                oldOrNew(journal.places().all(), Place::id),
                name(),
                pick(Place.Sort.values()),
                pick(List.of(Stage.COLD, Stage.COOL_ROOM, Stage.WARM_ROOM)),
                perhaps(this::band),
                new Place.ColdDays(MonthDay.of(1 + random.nextInt(12), 1), MonthDay.of(2, 1 + random.nextInt(29))),
                text(),
                perhaps(() -> random.nextInt(50)),
                random.nextInt(20),
                Duration.ofHours(random.nextInt(300)),
                some(Place.Hazard.values()),
                text());
    }

    private Trench trench(Journal journal) {
        Trench.Air air = random.nextBoolean()
                ? new Trench.Read(pick(journal.places().all()).id())
                : new Trench.Means(Stream.generate(() -> band().low()).limit(12).toList());
        return new Trench(
                oldOrNew(journal.trenches().all(), Trench::id),
                pick(journal.places().all()).id(),
                new Length(1 + random.nextInt(9000), text()),
                pick(Trench.Soil.values()),
                perhaps(() -> new Trench.Cover(
                        pick(Trench.Cover.Material.values()), length(), perhaps(() -> 0.01 + random.nextDouble()))),
                air,
                perhaps(() -> 0.1 + random.nextDouble()));
    }

    private Purchase purchase(Journal journal) {
        int bulbs = 1 + random.nextInt(100);
        return new Purchase(
                oldOrNew(journal.purchases().all(), Purchase::id),
                pick(journal.varieties().all()).id(),
                season(),
                day(),
                bulbs,
                new Purchase.Grade(text(), perhaps(this::length)),
                perhaps(() -> new Purchase.Money(random.nextLong() >> 8, pick(List.of("", "EUR", "GBP")))),
                text(),
                text(),
                arrival(journal, bulbs),
                perhaps(() -> pick(journal.places().all()).id()),
                new Purchase.Cooled(perhaps(() -> random.nextDouble() * 15)),
                pick(Purchase.State.values()),
                text());
    }

    private Arrival arrival(Journal journal, int bulbs) {
        return new Arrival(
                perhaps(() -> 1 + random.nextInt(100)),
                anyOf(journal.varieties().all(), Variety::id),
                perhaps(() -> random.nextInt(1 + bulbs / 3)),
                perhaps(() -> random.nextInt(1 + bulbs / 3)),
                perhaps(() -> random.nextInt(1 + bulbs / 3)),
                text());
    }

    private PottingMix mix(Journal journal) {
        List<PottingMix.Part> parts = Stream.generate(() -> new PottingMix.Part(random.nextDouble() + 0.1, text()))
                .limit(random.nextInt(4))
                .toList();
        return new PottingMix(oldOrNew(journal.pottingMixes().all(), PottingMix::id), text(), parts, text());
    }

    private Container container(Journal journal) {
        return new Container(
                oldOrNew(journal.containers().all(), Container::id),
                text(),
                pick(Container.Shape.values()),
                perhaps(this::length),
                perhaps(this::length),
                random.nextInt(30),
                random.nextInt(5),
                text());
    }

    private UsualWay usualWay(Journal journal) {
        return new UsualWay(
                oldOrNew(journal.usualWays().all(), UsualWay::id),
                name(),
                anyOf(journal.containers().all(), Container::id),
                perhaps(this::length),
                anyOf(journal.pottingMixes().all(), PottingMix::id),
                pick(Potting.Holes.values()),
                pick(Potting.Depth.values()),
                text(),
                text());
    }

    private Potting potting() {
        return new Potting(text(), pick(Potting.Holes.values()), pick(Potting.Depth.values()), text());
    }

    private Pot pot(Journal journal) {
        List<Pot.Planting> plantings = Stream.generate(() -> planting(journal))
                .limit(1 + random.nextInt(3))
                .toList();
        Id<Pot> id = oldOrNew(journal.pots().all(), Pot::id);
        Season season = season();
        return new Pot(
                id,
                season,
                "P" + random.nextInt(1_000_000),
                plantings,
                pick(Pot.Way.values()),
                anyOf(journal.containers().all(), Container::id),
                perhaps(this::length),
                anyOf(journal.pottingMixes().all(), PottingMix::id),
                potting(),
                perhaps(this::id),
                Optional.empty(),
                text());
    }

    private Pot.Planting planting(Journal journal) {
        return new Pot.Planting(
                pick(journal.varieties().all()).id(),
                1 + random.nextInt(20),
                anyOf(journal.purchases().all(), Purchase::id));
    }

    private Event event(Journal journal) {
        return new Event(
                oldOrNew(journal.events().all(), Event::id),
                subject(journal),
                day(),
                random.nextInt(5),
                instant(),
                perhaps(this::instant),
                happening(journal));
    }

    private Subject subject(Journal journal) {
        return pick(Stream.of(
                        Stream.of(new Subject.OfSeason(season())),
                        journal.pots().all().stream().map(Pot::id).map(Subject.OfPot::new),
                        journal.places().all().stream().map(Place::id).map(Subject.OfPlace::new),
                        journal.varieties().all().stream().map(Variety::id).map(Subject.OfVariety::new),
                        journal.purchases().all().stream().map(Purchase::id).map(Subject.OfPurchase::new))
                .flatMap(subjects -> subjects)
                .<Subject>map(subject -> subject)
                .toList());
    }

    private Happening happening(Journal journal) {
        Optional<Id<Variety>> variety = anyOf(journal.varieties().all(), Variety::id);
        return pick(List.of(
                new Happening.Potted(),
                new Happening.Moved(pick(journal.places().all()).id(), pick(Stage.values())),
                new Happening.Checked(findings()),
                new Happening.Flowered(pick(Happening.BloomPoint.values()), variety),
                new Happening.Cared(pick(Happening.Care.values())),
                new Happening.Closed(pick(Happening.End.values()), text()),
                new Happening.PutOff(pick(JobKind.values()), date(), text()),
                new Happening.LeftOut(pick(JobKind.values()), text()),
                new Happening.Jotted(text()),
                new Happening.Displayed(perhaps(this::text))));
    }

    private Findings findings() {
        return new Findings(
                perhaps(() -> pick(Findings.Moisture.values())),
                random.nextBoolean(),
                perhaps(() -> pick(Findings.Water.values())),
                perhaps(() -> pick(Findings.Roots.values())),
                perhaps(this::length),
                perhaps(this::length),
                perhaps(() -> pick(Findings.Firmness.values())),
                some(Findings.Growth.values()),
                some(Findings.Trouble.values()),
                text());
    }

    private SpanReading spanReading(Journal journal) {
        return new SpanReading(
                oldOrNew(journal.spanReadings().all(), SpanReading::id),
                pick(journal.places().all()).id(),
                day(),
                day(),
                band());
    }

    private SpotReading spotReading(Journal journal) {
        return new SpotReading(
                oldOrNew(journal.spotReadings().all(), SpotReading::id),
                pick(journal.places().all()).id(),
                instant(),
                band().low());
    }

    private Thermometer thermometer(Journal journal) {
        Id<Place> place = pick(journal.places().all()).id();
        return new Thermometer(
                journal.thermometerAt(place).map(Thermometer::id).orElseGet(this::id),
                place,
                text(),
                perhaps(() -> new Thermometer.IceTest(band().low(), day())));
    }

    private ReadingSource readingSource(Journal journal) {
        Instant first = instant().truncatedTo(ChronoUnit.SECONDS);
        return new ReadingSource(
                oldOrNew(journal.readingSources().all(), ReadingSource::id),
                pick(journal.places().all()).id(),
                text(),
                text(),
                9 + random.nextInt(9),
                random.nextInt(9),
                first,
                first.plusSeconds(random.nextInt(9_999)));
    }

    private LoggerProfile loggerProfile(Journal journal) {
        return new LoggerProfile(
                oldOrNew(journal.loggerProfiles().all(), LoggerProfile::id),
                pick(journal.places().all()).id(),
                new LoggerProfile.Mark(text(), pick(LoggerFormat.Separator.values()), 1 + random.nextInt(9)),
                new LoggerFormat(
                        perhaps(() -> pick(LoggerFormat.Separator.values())),
                        perhaps(() -> pick(LoggerFormat.DecimalSign.values())),
                        perhaps(() -> pick(DateOrder.values())),
                        perhaps(() -> pick(Settings.TemperatureUnit.values())),
                        perhaps(() -> settings().zone()),
                        perhaps(() -> 1 + random.nextInt(9)),
                        perhaps(this::text),
                        Stream.generate(() -> random.nextInt(90_000) - 9_000)
                                .limit(random.nextInt(3))
                                .collect(Collectors.toSet())));
    }

    private Outcome outcome(Journal journal) {
        return new Outcome(
                oldOrNew(journal.outcomes().all(), Outcome::id),
                pick(journal.pots().all()).id(),
                anyOf(journal.varieties().all(), Variety::id),
                day(),
                perhaps(() -> 1 + random.nextInt(5)),
                perhaps(() -> random.nextInt(9)),
                perhaps(this::length),
                perhaps(this::date),
                perhaps(this::date),
                new Failure(
                        some(Failure.Sign.values()),
                        perhaps(() -> pick(Failure.Roots.values())),
                        text(),
                        perhaps(() -> pick(Cause.values()))),
                impression(),
                text());
    }

    private Impression impression() {
        Outcome.Again again = pick(Outcome.Again.values());
        return new Impression(
                pick(Impression.Evenness.values()),
                pick(Variety.Scent.values()),
                again,
                again == Outcome.Again.DIFFERENTLY ? text() : "");
    }

    private Wish wish(Journal journal) {
        LocalDate from = date();
        List<Id<Pot>> pots = new ArrayList<>();
        journal.pots().all().stream()
                .map(Pot::id)
                .filter(pot -> random.nextInt(3) == 0)
                .forEach(pots::add);
        return new Wish(
                oldOrNew(journal.wishes().all(), Wish::id),
                season(),
                from,
                from.plusDays(random.nextInt(9)),
                text(),
                asks(journal),
                Set.copyOf(pots),
                text());
    }

    private Choice choice(Journal journal) {
        return new Choice(
                oldOrNew(journal.choices().all(), Choice::id),
                pick(journal.varieties().all()).id(),
                season(),
                pick(List.of(
                        new Choice.Chosen(1 + random.nextInt(60)),
                        new Choice.SetAside(text()),
                        new Choice.Undecided())));
    }

    private PastWindows pastWindows(Journal journal) {
        int held = random.nextInt(20);
        return new PastWindows(
                oldOrNew(journal.pastWindows(season()).stream().toList(), PastWindows::id),
                season(),
                held,
                held + random.nextInt(9),
                random.nextInt(300));
    }

    /** A window of a pot. */
    public KeptWindow window(Id<Pot> pot) {
        LocalDate likely = date();
        return new KeptWindow(
                pot, pick(Stage.values()), date(), likely.minusDays(3), likely, likely.plusDays(3), text());
    }

    private <T extends Entity<T>> Id<T> oldOrNew(Collection<T> known, Function<T, Id<T>> id) {
        return random.nextInt(3) == 0 && !known.isEmpty() ? id.apply(pick(known)) : id();
    }

    private <T extends Entity<T>> Optional<Id<T>> anyOf(Collection<T> known, Function<T, Id<T>> id) {
        return known.isEmpty() ? Optional.empty() : perhaps(() -> id.apply(pick(known)));
    }

    public <T> Id<T> id() {
        return new Id<>(random.nextLong(), random.nextLong());
    }

    private String text() {
        return pick(TEXTS);
    }

    private String name() {
        return "n" + text();
    }

    private Kind kind() {
        return new Kind(pick(List.of("tulip", "daffodil", "amaryllis")), text());
    }

    private Length length() {
        return new Length(random.nextInt(10_000), text());
    }

    private Band band() {
        int low = random.nextInt(10_000) - 5_000;
        return new Band(new Temperature(low, text()), new Temperature(low + random.nextInt(9_000), text()));
    }

    private Season season() {
        return new Season(2020 + random.nextInt(8));
    }

    private LocalDate date() {
        return LocalDate.of(2020, 1, 1).plusDays(random.nextInt(3000));
    }

    private Day day() {
        return random.nextBoolean() ? Day.on(date()) : Day.about(date(), 1 + random.nextInt(9));
    }

    private Instant instant() {
        return Instant.ofEpochMilli(1_600_000_000_000L + random.nextInt());
    }

    private <T> Optional<T> perhaps(Supplier<T> given) {
        return random.nextBoolean() ? Optional.of(given.get()) : Optional.empty();
    }

    private <T> Set<T> some(T[] all) {
        return Stream.of(all).filter(one -> random.nextInt(3) == 0).collect(Collectors.toSet());
    }

    private <T> T pick(T[] all) {
        return all[random.nextInt(all.length)];
    }

    private <T> T pick(Collection<T> all) {
        return all.stream().skip(random.nextInt(all.size())).findFirst().orElseThrow();
    }

    private WishedFor asks(Journal journal) {
        return new WishedFor(
                pick(WishedFor.Manner.values()),
                1 + random.nextInt(9),
                perhaps(() -> pick(WishedFor.FlowerStage.values())),
                perhaps(this::kind),
                text(),
                random.nextBoolean(),
                perhaps(this::length),
                anyOf(journal.places().all(), Place::id));
    }

    private Space space(Journal journal) {
        return new Space(
                oldOrNew(journal.spaces().all(), Space::id),
                pick(journal.places().all()).id(),
                perhaps(() -> new Space.Surface(new Length(6000, "60 cm"), new Length(4000, "40 cm"))),
                perhaps(this::length),
                new Place.ColdDays(MonthDay.of(1 + random.nextInt(12), 1), MonthDay.of(2, 1 + random.nextInt(29))));
    }

    private SeasonPlan seasonPlan(Journal journal) {
        LocalDate from = date();
        List<Proposal> pots = new ArrayList<>();
        for (int pot = random.nextInt(4); pot > 0; pot--) {
            pots.add(proposal(journal));
        }
        return new SeasonPlan(
                oldOrNew(journal.seasonPlans().all(), SeasonPlan::id),
                season(),
                name(),
                new SeasonPlan.Rule(
                        1 + random.nextInt(4),
                        1 + random.nextInt(20),
                        from,
                        from.plusDays(random.nextInt(90)),
                        1 + random.nextInt(9),
                        some(DayOfWeek.values())),
                pots,
                perhaps(() -> new SeasonPlan.Search(random.nextInt(3), random.nextInt(30), random.nextInt(40))),
                perhaps(this::date),
                text());
    }

    private Proposal proposal(Journal journal) {
        return new Proposal(
                pick(journal.varieties().all()).id(),
                1 + random.nextInt(20),
                anyOf(journal.purchases().all(), Purchase::id),
                anyOf(journal.containers().all(), Container::id),
                anyOf(journal.pots().all(), Pot::id),
                course(journal));
    }

    private Proposal.Course course(Journal journal) {
        LocalDate potting = date();
        return new Proposal.Course(
                potting,
                anyOf(journal.places().all(), Place::id),
                potting.plusDays(random.nextInt(120)),
                anyOf(journal.places().all(), Place::id));
    }

    private Entity<?> intention(Journal journal) {
        return journal.seasonPlans().isEmpty()
                ? seasonPlan(journal)
                : new Intention(
                        oldOrNew(journal.intentions().all(), Intention::id),
                        pick(journal.pots().all()).id(),
                        pick(journal.seasonPlans().all()).id(),
                        course(journal));
    }
}
