// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.model.Arrival;
import sillbook.model.Band;
import sillbook.model.Batch;
import sillbook.model.Day;
import sillbook.model.DayRead;
import sillbook.model.DaysRead;
import sillbook.model.Entity;
import sillbook.model.Event;
import sillbook.model.Failure;
import sillbook.model.Findings;
import sillbook.model.Happening;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.Care;
import sillbook.model.Happening.End;
import sillbook.model.Id;
import sillbook.model.Ids;
import sillbook.model.Intention;
import sillbook.model.JobKind;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.Labels;
import sillbook.model.LastRead;
import sillbook.model.Length;
import sillbook.model.Outcome;
import sillbook.model.OwnFigure;
import sillbook.model.OwnFigure.Range;
import sillbook.model.OwnFigure.Scope;
import sillbook.model.OwnKind;
import sillbook.model.Place;
import sillbook.model.Place.ColdDays;
import sillbook.model.Place.Hazard;
import sillbook.model.Place.Sort;
import sillbook.model.Pot;
import sillbook.model.Potting;
import sillbook.model.Proposal;
import sillbook.model.Purchase;
import sillbook.model.Season;
import sillbook.model.SeasonPlan;
import sillbook.model.Settings;
import sillbook.model.SpanReading;
import sillbook.model.Stage;
import sillbook.model.Subject;
import sillbook.model.Temperature;
import sillbook.model.Trench;
import sillbook.model.Variety;
import sillbook.model.Wish;
import sillbook.model.WishedFor;
import sillbook.reckon.cold.ColdWeight;

/**
 * A winter told in a few lines, for tests.
 *
 * <pre>{@code
 * Outlook outlook = winter()
 *         .place("cellar", Sort.CELLAR).room(20)
 *         .place("stair window", Sort.COOL_ROOM)
 *         .pot("T4", "Marrow Lane", "tulip").potted("21 sep", "cellar").saw("10 jan", Look.roots().shoot(6))
 *         .pots("H5-H22", "Inkwell", "hyacinth").potted("12 oct", "cellar")
 *         .then("H5-H7").moved("9 jan", "stair window")
 *         .wish("30 jan", "T4")
 *         .on("12 jan");
 * }</pre>
 *
 * <p>What follows {@code place} is about that place; what follows {@code pot}, {@code pots} or {@code then} is about
 * those pots. Days are told without their year, as {@code 21 sep}, and lie in the season; {@code ~21 sep} is about then,
 * give or take three days.
 */
public final class Winter {
    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

    private static final double HOURS = 24;
    private static final double WARM = 13;

    private final Map<Id<?>, Entity<?>> entities = new LinkedHashMap<>();
    private final Map<Object, DayRead> daysRead = new LinkedHashMap<>();
    private final Map<Id<Place>, LastRead> lastRead = new LinkedHashMap<>();
    private final Map<String, Id<Place>> places = new LinkedHashMap<>();
    private final Map<String, Id<Pot>> pots = new LinkedHashMap<>();
    private final Map<String, Id<Variety>> varieties = new LinkedHashMap<>();
    private final Ids ids;
    private Settings settings = Settings.initial(ZoneOffset.UTC);
    private Season season = new Season(2026);
    private List<String> told = List.of();
    private String place = "";
    private int events;

    private Winter() {
        long[] last = {0};
        ids = () -> ++last[0];
    }

    /** The winter of 2026-27, with nothing in it. */
    public static Winter winter() {
        return new Winter();
    }

    /** Another season from here on; places and varieties stay. */
    public Winter of(int year) {
        season = new Season(year);
        return this;
    }

    /** Seasons begin on 1 January, and the winter is that of 2027. */
    public Winter south() {
        season = new Season(2027);
        return set(all -> new Settings(
                all.zone(), MonthDay.of(1, 1), all.temperatures(), all.lengths(), all.colours(), all.dailyCare()));
    }

    public Winter withoutDailyCare() {
        return set(all ->
                new Settings(all.zone(), all.seasonStart(), all.temperatures(), all.lengths(), all.colours(), false));
    }

    /** Where clocks go by that zone. */
    public Winter in(String zone) {
        return set(all -> new Settings(
                ZoneId.of(zone), all.seasonStart(), all.temperatures(), all.lengths(), all.colours(), all.dailyCare()));
    }

    private Winter set(UnaryOperator<Settings> change) {
        settings = change.apply(settings);
        return this;
    }

    // Places

    public Winter place(String name, Sort sort) {
        place = name;
        Id<Place> id = ids.next();
        places.put(name, id);
        return put(Place.of(id, name, sort));
    }

    public Winter room(int pots) {
        return change(it -> new Place(
                it.id(),
                it.name(),
                it.sort(),
                it.serves(),
                it.usual(),
                it.coldDays(),
                it.light(),
                Optional.of(pots),
                it.checkEveryDays(),
                it.bridges(),
                it.hazards(),
                it.note()));
    }

    public Winter every(int days) {
        return change(it -> new Place(
                it.id(),
                it.name(),
                it.sort(),
                it.serves(),
                it.usual(),
                it.coldDays(),
                it.light(),
                it.room(),
                days,
                it.bridges(),
                it.hazards(),
                it.note()));
    }

    public Winter cold(String from, String untilExclusive) {
        ColdDays days = new ColdDays(MonthDay.from(day(from)), MonthDay.from(day(untilExclusive)));
        return change(it -> new Place(
                it.id(),
                it.name(),
                it.sort(),
                it.serves(),
                it.usual(),
                days,
                it.light(),
                it.room(),
                it.checkEveryDays(),
                it.bridges(),
                it.hazards(),
                it.note()));
    }

    /** The lowest and highest between two days. */
    public Winter read(String from, String to, double low, double high) {
        Id<SpanReading> id = ids.next();
        return put(new SpanReading(id, placeId(place), Day.on(day(from)), Day.on(day(to)), Band.ofCelsius(low, high)));
    }

    /** Read all the time, from a day to another, both in it: always as warm. */
    public Winter logged(String from, String to, double celsius) {
        return logged(from, to, celsius, celsius);
    }

    /** The same, evenly up and down between two temperatures. */
    public Winter logged(String from, String to, double low, double high) {
        day(from).datesUntil(day(to).plusDays(1)).forEach(day -> logged(day, HOURS, low, high));
        return this;
    }

    /** Of a day only so many hours. */
    public Winter loggedHours(String on, double hours, double celsius) {
        logged(day(on), hours, celsius, celsius);
        return this;
    }

    private void logged(LocalDate day, double hours, double low, double high) {
        Id<Place> there = placeId(place);
        double weight = ColdWeight.USUAL.between(low, high);
        daysRead.put(
                List.of(there, day),
                new DayRead(
                        there,
                        day,
                        (int) hours,
                        hours,
                        hours * weight,
                        hours * Math.max(weight, low == high && low >= 0 && low < 2 ? 1 : 0),
                        hours * share(low, high, 0, false),
                        hours * share(low, high, WARM, true),
                        milli((low + high) / 2),
                        milli(low),
                        milli(high)));
        LastRead last = new LastRead(
                there,
                day.atStartOfDay()
                        .plusSeconds((long) (hours * 3600))
                        .minusSeconds(1)
                        .toInstant(ZoneOffset.UTC),
                Temperature.ofCelsius(high));
        lastRead.merge(there, last, (one, other) -> one.at().isAfter(other.at()) ? one : other);
    }

    private static int milli(double celsius) {
        return Temperature.ofCelsius(celsius).milli();
    }

    /** The part of a steady change from one temperature to another that lies on one side of a bound. */
    private static double share(double low, double high, double bound, boolean isAbove) {
        double below = low == high ? (low < bound ? 1 : 0) : Math.max(0, Math.min(1, (bound - low) / (high - low)));
        return isAbove ? (low == high && low == bound ? 0 : 1 - below) : below;
    }

    public Winter usually(double low, double high) {
        return change(it -> new Place(
                it.id(),
                it.name(),
                it.sort(),
                it.serves(),
                Optional.of(Band.ofCelsius(low, high)),
                it.coldDays(),
                it.light(),
                it.room(),
                it.checkEveryDays(),
                it.bridges(),
                it.hazards(),
                it.note()));
    }

    public Winter beside(Hazard... hazards) {
        return change(it -> new Place(
                it.id(),
                it.name(),
                it.sort(),
                it.serves(),
                it.usual(),
                it.coldDays(),
                it.light(),
                it.room(),
                it.checkEveryDays(),
                it.bridges(),
                Set.of(hazards),
                it.note()));
    }

    /** How pots stand buried at the last place, in garden soil. */
    public Winter ground(double centimetres, Optional<Trench.Cover> cover, double... months) {
        Trench.Air air = new Trench.Means(
                DoubleStream.of(months).mapToObj(Temperature::ofCelsius).toList());
        return ground(centimetres, cover, air);
    }

    /** The same, the air as it is read at a place. */
    public Winter groundUnder(String outdoors, double centimetres) {
        return ground(centimetres, Optional.empty(), new Trench.Read(placeId(outdoors)));
    }

    private Winter ground(double centimetres, Optional<Trench.Cover> cover, Trench.Air air) {
        Length depth = Length.ofCentimetres(centimetres);
        return put(
                new Trench(ids.next(), placeId(place), depth, Trench.Soil.GARDEN_SOIL, cover, air, Optional.empty()));
    }

    public static Trench.Cover straw(double centimetres) {
        return new Trench.Cover(Trench.Cover.Material.STRAW, Length.ofCentimetres(centimetres), Optional.empty());
    }

    private Winter change(UnaryOperator<Place> change) {
        Id<Place> id = placeId(place);
        return put(change.apply(entity(Place.class, id)));
    }

    /** A note on the place. */
    public Winter noted(String on, String text) {
        return happened(new Subject.OfPlace(placeId(place)), on, new Happening.Jotted(text));
    }

    /** An answer to the round of the last place, or its part of the daily care. */
    public Winter roundPutOff(String on, JobKind job, String until) {
        return happened(new Subject.OfPlace(placeId(place)), on, new Happening.PutOff(job, day(until), ""));
    }

    /** Something is done to the ground of the last place. */
    public Winter tended(String on, Care care) {
        return happened(new Subject.OfPlace(placeId(place)), on, new Happening.Cared(care));
    }

    public Winter roundLeftOut(String on, JobKind job) {
        return happened(new Subject.OfPlace(placeId(place)), on, new Happening.LeftOut(job, ""));
    }

    // Pots

    /** A pot of five bulbs of one variety; its kind may be told with a group, as {@code tulip/Triumph}. */
    public Winter pot(String label, String variety, String kind) {
        return pots(label, variety, kind);
    }

    /** Pots made together, as {@code H5-H22}. */
    public Winter pots(String labels, String variety, String kind) {
        return made(labels, List.of(new Pot.Planting(variety(variety, kind), 5, Optional.empty())));
    }

    /** A pot of two varieties. */
    public Winter mixed(String label, String one, String kind, String other, String otherKind) {
        return made(
                label,
                List.of(
                        new Pot.Planting(variety(one, kind), 5, Optional.empty()),
                        new Pot.Planting(variety(other, otherKind), 3, Optional.empty())));
    }

    private Winter made(String labels, List<Pot.Planting> plantings) {
        told = expand(labels);
        Optional<Id<Batch>> batch = told.size() > 1 ? Optional.of(ids.next()) : Optional.empty();
        for (String label : told) {
            Id<Pot> id = ids.next();
            pots.put(label, id);
            put(new Pot(
                    id,
                    season,
                    label,
                    plantings,
                    Pot.Way.DRAINED,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Potting.NOT_SAID,
                    batch,
                    Optional.empty(),
                    ""));
        }
        return this;
    }

    private static List<String> expand(String labels) {
        int dash = labels.indexOf('-');
        if (dash < 0) {
            return List.of(labels.split(" ", -1));
        }
        String first = labels.substring(0, dash);
        return Labels.from(first, Labels.number(labels.substring(dash + 1)) - Labels.number(first) + 1);
    }

    private Id<Variety> variety(String name, String kind) {
        return varieties.computeIfAbsent(name, unknown -> {
            Variety variety = Variety.of(ids.next(), name, kind(kind.isEmpty() ? "tulip" : kind));
            put(variety);
            return variety.id();
        });
    }

    private static Kind kind(String told) {
        int slash = told.indexOf('/');
        return slash < 0 ? Kind.of(told) : new Kind(told.substring(0, slash), told.substring(slash + 1));
    }

    /** What follows is about these pots, as {@code H5-H7} or {@code T1 T4}. */
    public Winter then(String labels) {
        told = expand(labels);
        return this;
    }

    /** The bulbs of the pots come of a purchase that was cooled so long before it came. */
    public Winter cooled(double weeks) {
        return bought(new Purchase.Cooled(Optional.of(weeks)), Purchase.State.IN_HAND);
    }

    /** The bulbs of the pots are ordered, but have not come. */
    public Winter ordered() {
        return bought(Purchase.Cooled.UNKNOWN, Purchase.State.ORDERED);
    }

    /** The pots are grown in that way. */
    public Winter grown(Pot.Way way) {
        return eachPot(label -> {
            Pot pot = entity(Pot.class, id(label));
            put(new Pot(
                    pot.id(),
                    pot.season(),
                    pot.label(),
                    pot.plantings(),
                    way,
                    pot.container(),
                    pot.across(),
                    pot.pottingMix(),
                    pot.potting(),
                    pot.batch(),
                    pot.parent(),
                    pot.note()));
        });
    }

    /** The bulbs of the pots came on that day, and wait at that place. */
    public Winter bought(String on, String waits) {
        Optional<Id<Place>> there = Optional.of(placeId(waits));
        return bought(Purchase.Cooled.UNKNOWN, Purchase.State.IN_HAND, day(on), there);
    }

    /** The bulbs of the pots were ordered on that day, to wait at that place. */
    public Winter ordered(String on, String waits) {
        Optional<Id<Place>> there = Optional.of(placeId(waits));
        return bought(Purchase.Cooled.UNKNOWN, Purchase.State.ORDERED, day(on), there);
    }

    private Winter bought(Purchase.Cooled cooled, Purchase.State state) {
        return bought(cooled, state, season.firstDay(settings.seasonStart()), Optional.empty());
    }

    private Winter bought(Purchase.Cooled cooled, Purchase.State state, LocalDate day, Optional<Id<Place>> waits) {
        return eachPot(label -> {
            Pot pot = entity(Pot.class, id(label));
            List<Pot.Planting> plantings = pot.plantings().stream()
                    .map(planting -> new Pot.Planting(
                            planting.variety(),
                            planting.count(),
                            Optional.of(purchase(planting, cooled, state, day, waits))))
                    .toList();
            put(new Pot(
                    pot.id(),
                    pot.season(),
                    pot.label(),
                    plantings,
                    pot.way(),
                    pot.container(),
                    pot.across(),
                    pot.pottingMix(),
                    pot.potting(),
                    pot.batch(),
                    pot.parent(),
                    pot.note()));
        });
    }

    private Id<Purchase> purchase(
            Pot.Planting planting,
            Purchase.Cooled cooled,
            Purchase.State state,
            LocalDate day,
            Optional<Id<Place>> waits) {
        Purchase purchase = new Purchase(
                ids.next(),
                planting.variety(),
                season,
                Day.on(day),
                10,
                Purchase.Grade.UNKNOWN,
                Optional.empty(),
                "",
                "",
                Arrival.NOT_SAID,
                waits,
                cooled,
                state,
                "");
        put(purchase);
        return purchase.id();
    }

    public Winter potted(String on) {
        return happened(on, new Happening.Potted());
    }

    /** Potted, and put in a place at once. */
    public Winter potted(String on, String where) {
        return potted(on).moved(on, where);
    }

    /** Carried to a place, and in the stage that place serves. */
    public Winter moved(String on, String where) {
        return moved(on, where, entity(Place.class, placeId(where)).serves());
    }

    public Winter moved(String on, String where, Stage stage) {
        return happened(on, new Happening.Moved(placeId(where), stage));
    }

    public Winter saw(String on, Look look) {
        return happened(on, new Happening.Checked(look.findings()));
    }

    /** Checked, and all well. */
    public Winter checked(String on) {
        return happened(on, new Happening.Checked(Findings.ALL_WELL));
    }

    /** The bulbs of the pots were felt, while they waited to be potted. */
    public Winter felt(String on) {
        return eachPot(label -> entity(Pot.class, id(label))
                .first()
                .purchase()
                .ifPresent(purchase ->
                        happened(new Subject.OfPurchase(purchase), on, new Happening.Checked(Findings.DRY_WELL))));
    }

    public Winter flowered(String on) {
        return happened(on, new Happening.Flowered(BloomPoint.FIRST_FLOWER, Optional.empty()));
    }

    public Winter flowered(String on, BloomPoint point, String variety) {
        return happened(on, new Happening.Flowered(point, Optional.of(variety(variety, ""))));
    }

    public Winter pastBloom(String on) {
        return happened(on, new Happening.Flowered(BloomPoint.PAST_BLOOM, Optional.empty()));
    }

    public Winter cared(String on, Care care) {
        return happened(on, new Happening.Cared(care));
    }

    public Winter jotted(String on, String text) {
        return happened(on, new Happening.Jotted(text));
    }

    /** Into the display of that name; out of it when the name is empty. */
    public Winter displayed(String on, String display) {
        return happened(on, new Happening.Displayed(Optional.of(display)));
    }

    public Winter closed(String on, End end) {
        return happened(on, new Happening.Closed(end, ""));
    }

    public Winter putOff(String on, JobKind job, String until) {
        return happened(on, new Happening.PutOff(job, day(until), "no room"));
    }

    public Winter leftOut(String on, JobKind job) {
        return happened(on, new Happening.LeftOut(job, "no need"));
    }

    public Winter outcome(String on, int score) {
        return outcome(Optional.empty(), on, score);
    }

    public Winter outcomeOf(String variety, String on, int score) {
        return outcome(Optional.of(variety(variety, "")), on, score);
    }

    /** An outcome of the pot as a whole, its flowers counted. */
    public Winter outcome(String on, int score, int flowers, String note) {
        return eachPot(label -> {
            Outcome bare = Outcome.notJudged(ids.next(), id(label), Optional.empty(), Day.on(day(on)));
            put(new Outcome(
                    bare.id(),
                    bare.pot(),
                    bare.variety(),
                    bare.day(),
                    Optional.of(score),
                    Optional.of(flowers),
                    bare.height(),
                    bare.firstGood(),
                    bare.lastGood(),
                    bare.failure(),
                    bare.impression(),
                    note));
        });
    }

    /** An outcome of the pot as a whole, of how it failed at most. */
    public Winter outcomeWithoutScore(String on, Failure failure) {
        return eachPot(label -> put(Outcome.notJudged(ids.next(), id(label), Optional.empty(), Day.on(day(on)))
                .withFailure(failure)));
    }

    private Winter outcome(Optional<Id<Variety>> variety, String on, int score) {
        return eachPot(label -> put(Outcome.notJudged(ids.next(), id(label), variety, Day.on(day(on)))
                .withScore(score)));
    }

    // What is wished and known

    /** The pots are meant to be in flower on that day. */
    public Winter wish(String on, String labels) {
        return wish(on, on, labels);
    }

    public Winter wish(String from, String to, String labels) {
        return wish(from, to, Optional.empty(), labels);
    }

    /** Of a mixed pot, only the bulbs of that kind are meant. */
    public Winter wishFor(Kind kind, String on, String labels) {
        return wish(on, on, Optional.of(kind), labels);
    }

    private Winter wish(String from, String to, Optional<Kind> kind, String labels) {
        Set<Id<Pot>> meant = Set.copyOf(expand(labels).stream().map(this::id).toList());
        return put(new Wish(ids.next(), season, day(from), day(to), "", WishedFor.one(kind), meant, ""));
    }

    /** By a plan that was adopted, the pots told last are potted on a day, and come in on another. */
    public Winter meant(String potting, String cold, String in, String room) {
        SeasonPlan plan = new SeasonPlan(
                ids.next(),
                season,
                "A",
                new SeasonPlan.Rule(1, 12, day(in), day(in), 4, Set.of()),
                List.of(),
                Optional.empty(),
                Optional.of(day(potting)),
                "");
        put(plan);
        Proposal.Course course =
                new Proposal.Course(day(potting), Optional.of(placeId(cold)), day(in), Optional.of(placeId(room)));
        return eachPot(label -> put(new Intention(ids.next(), id(label), plan.id(), course)));
    }

    public Winter ownKind(String name, Optional<Kind> like) {
        return put(new OwnKind(ids.next(), name, "X", like));
    }

    /** The handbook's figure is asked for, whatever was learnt. */
    public Winter handbookFor(Kind kind, FigureName name) {
        return put(new OwnFigure(ids.next(), Scope.of(kind), name.key(), Optional.empty(), ""));
    }

    public Winter own(Kind kind, FigureName name, double low, double typical, double high) {
        return own(Scope.of(kind), name, low, typical, high);
    }

    public Winter ownFor(String variety, FigureName name, double low, double typical, double high) {
        return own(Scope.of(variety(variety, "")), name, low, typical, high);
    }

    public Winter houseRule(FigureName name, double low, double typical, double high) {
        return own(Scope.ofAllHardy(), name, low, typical, high);
    }

    private Winter own(Scope scope, FigureName name, double low, double typical, double high) {
        return put(new OwnFigure(ids.next(), scope, name.key(), Optional.of(new Range(low, typical, high)), ""));
    }

    // What comes of it

    public Journal journal() {
        List<Entity<?>> all = new ArrayList<>(entities.values());
        all.add(settings);
        return Journal.of(all).with(DaysRead.of(daysRead.values(), lastRead.values()));
    }

    /** What is true on a day. */
    public Outlook on(String today) {
        return Outlook.of(journal(), Handbook.standard(), day(today));
    }

    public Season season() {
        return season;
    }

    public Id<Pot> id(String label) {
        return Optional.ofNullable(pots.get(label)).orElseThrow(() -> new AssertionError("no pot " + label));
    }

    public boolean has(String label) {
        return pots.containsKey(label);
    }

    public Id<Place> placeId(String name) {
        return Optional.ofNullable(places.get(name)).orElseThrow(() -> new AssertionError("no place " + name));
    }

    public String name(Destination destination) {
        return entity(Place.class, destination.place()).name();
    }

    public List<Id<Pot>> ids(String labels) {
        return expand(labels).stream().map(this::id).toList();
    }

    /** A day of the season. */
    public LocalDate day(String told) {
        String[] parts = told.replace("~", "").split(" ", -1);
        int month = MONTHS.indexOf(parts[1].toLowerCase(Locale.ROOT)) + 1;
        MonthDay day = MonthDay.of(month, Integer.parseInt(parts[0]));
        return day.atYear(day.isBefore(settings.seasonStart()) ? season.year() + 1 : season.year());
    }

    private Winter happened(String on, Happening what) {
        return eachPot(label -> happened(new Subject.OfPot(id(label)), on, what));
    }

    private Winter happened(Subject subject, String on, Happening what) {
        Day day = on.startsWith("~") ? Day.about(day(on), 3) : Day.on(day(on));
        events++;
        return put(new Event(
                ids.next(),
                subject,
                day,
                events,
                day.likely().atTime(8, 0).toInstant(ZoneOffset.UTC),
                Optional.empty(),
                what));
    }

    private Winter eachPot(Consumer<String> action) {
        told.forEach(action);
        return this;
    }

    private <T> T entity(Class<T> type, Id<T> id) {
        return type.cast(Optional.ofNullable(entities.get(id)).orElseThrow());
    }

    private Winter put(Entity<?> entity) {
        entities.put(entity.id(), entity);
        return this;
    }

    /** What was seen of a pot. */
    public record Look(Findings findings) {
        public static Look roots() {
            return new Look(Findings.NOTHING).with(Findings.Roots.SHOWING);
        }

        public static Look noRoots() {
            return new Look(Findings.NOTHING).with(Findings.Roots.NONE);
        }

        public static Look ofShoot(double centimetres) {
            return new Look(Findings.NOTHING).shoot(centimetres);
        }

        private Look with(Findings.Roots roots) {
            return new Look(findings.withRoots(roots));
        }

        public Look shoot(double centimetres) {
            return new Look(findings.withShoot(Length.ofCentimetres(centimetres)));
        }

        public Look rootLength(double centimetres) {
            return new Look(findings.withRootLength(Length.ofCentimetres(centimetres)));
        }

        public Look growth(Findings.Growth... signs) {
            Findings more = findings;
            for (Findings.Growth sign : signs) {
                more = more.with(sign);
            }
            return new Look(more);
        }
    }
}
