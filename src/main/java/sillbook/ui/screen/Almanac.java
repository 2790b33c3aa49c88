// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import sillbook.handbook.Handbook;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.plan.OrderDue;
import sillbook.plan.Planning;
import sillbook.reckon.effects.Effects;
import sillbook.season.GroundForetold;
import sillbook.season.Moves;
import sillbook.season.Outlook;
import sillbook.season.PlaceClimate;
import sillbook.season.PlaceNow;
import sillbook.season.PotLine;
import sillbook.season.PotNow;
import sillbook.season.Sill;
import sillbook.season.Today;
import sillbook.season.VarietyNow;
import sillbook.season.Why;
import sillbook.season.past.By;
import sillbook.season.past.Choosing;
import sillbook.season.past.Merits;
import sillbook.season.past.Summary;
import sillbook.season.past.Tallied;
import sillbook.season.past.Trait;
import sillbook.season.past.Trials;
import sillbook.season.past.Winters;
import sillbook.words.Diary;

/**
 * What is true of a journal on a day, each thing worked out when it is first asked for and then kept: a screen is drawn
 * after every key, the journal changes far less often.
 */
public final class Almanac {
    private final Lazy<Outlook> outlook;
    private final Lazy<Today> today;
    private final Lazy<List<OrderDue>> orders;
    private final Lazy<List<PlaceNow>> places;
    private final Lazy<List<VarietyNow>> varieties;
    private final Lazy<Diary> diary;
    private final Lazy<Winters> winters;
    private final Lazy<List<Summary>> summaries;
    private final Lazy<Choosing> choosing;
    private final Lazy<Trials> trials;
    private final Lazy<Optional<Effects>> quick;
    private final Map<Trait, Merits> merits = new EnumMap<>(Trait.class);
    private final Map<By, List<Tallied>> tallied = new ConcurrentHashMap<>();
    private final Map<Season, List<PotLine>> lines = new HashMap<>();
    private final Map<Id<Place>, List<PotLine>> linesAt = new HashMap<>();
    private final Map<Season, Sill> sills = new HashMap<>();
    private final Map<Season, Map<Id<Place>, Moves>> moves = new HashMap<>();
    private final Map<LocalDate, Map<Id<Place>, PlaceClimate>> climates = new HashMap<>();
    private final Map<Id<Place>, List<Why<?>>> whys = new HashMap<>();
    private final Map<Id<Place>, Optional<GroundForetold>> grounds = new HashMap<>();
    private final Map<Id<Pot>, Optional<Sits>> sits = new HashMap<>();
    private final Function<Season, Map<Id<Place>, Moves>> movesOf;
    private final Function<Pot, Optional<Sits>> sitsOf;
    private final Plannings plannings;
    private final LocalDate day;
    private final BiFunction<Id<Place>, LocalDate, PlaceClimate> climate;

    Almanac(Journal journal, Handbook handbook, LocalDate day) {
        movesOf = season -> Moves.of(journal, outlook(), season);
        sitsOf = pot -> Sits.of(journal, pot);
        plannings = new Plannings(season -> Planning.of(journal, outlook(), season));
        this.day = day;
        climate = (place, on) -> PlaceClimate.of(journal, place, on);
        outlook = new Lazy<>(() -> Outlook.of(journal, handbook, day));
        today = new Lazy<>(() -> outlook().today());
        orders = new Lazy<>(() -> OrderDue.on(day, journal));
        places = new Lazy<>(() -> outlook().places());
        varieties = new Lazy<>(() -> outlook().varieties());
        diary = new Lazy<>(() -> Diary.of(journal));
        winters = new Lazy<>(() -> Winters.of(journal, day));
        summaries = new Lazy<>(
                () -> winters().seasons().stream().map(winters()::summary).toList());
        choosing = new Lazy<>(() -> Choosing.of(journal, outlook(), winters()));
        trials = new Lazy<>(() -> Trials.of(winters(), journal));
        quick = new Lazy<>(() -> trials().quick());
    }

    /** What is kept once it was worked out, by whichever thread asks first. */
    private static final class Lazy<T> {
        private final Supplier<T> working;
        private @Nullable T value;

        Lazy(Supplier<T> working) {
            this.working = working;
        }

        synchronized T get() {
            T known = value;
            if (known == null) {
                known = working.get();
                value = known;
            }
            return known;
        }
    }

    public Outlook outlook() {
        return outlook.get();
    }

    public Today today() {
        return today.get();
    }

    /** What is to be ordered for plans. */
    public List<OrderDue> orders() {
        return orders.get();
    }

    public List<PlaceNow> places() {
        return places.get();
    }

    /** By name, each with its record. */
    public List<VarietyNow> varieties() {
        return varieties.get();
    }

    /** Everything written, the newest day first. */
    public Diary diary() {
        return diary.get();
    }

    /** All that was ever grown. */
    public Winters winters() {
        return winters.get();
    }

    /** Works out ahead, on any thread, what Seasons opens with: the more winters, the longer it takes. */
    void readAhead() {
        tallied(By.VARIETY);
    }

    /** The scored pots as an experiment. */
    public Trials trials() {
        return trials.get();
    }

    /** How varieties or others stand by the quick answer. */
    public Merits merits(Trait trait) {
        return merits.computeIfAbsent(trait, of -> trials().merits(of, quick.get()));
    }

    /** What each winter came to in which anything was grown, the first first. */
    public List<Summary> summaries() {
        return summaries.get();
    }

    /** What there is to choose from for the coming season. */
    public Choosing choosing() {
        return choosing.get();
    }

    /** How the pots did that share a thing, the best first. */
    public List<Tallied> tallied(By by) {
        return tallied.computeIfAbsent(by, winters()::by);
    }

    /** What is planned with, and what plans come to. */
    public Plannings plannings() {
        return plannings;
    }

    public PotNow pot(Id<Pot> pot) {
        return outlook().pot(pot);
    }

    /** A line for every pot and every batch of a season, by label. */
    public List<PotLine> lines(Season season) {
        return lines.computeIfAbsent(season, outlook()::lines);
    }

    /** A line for every pot that stands at a place, pots of one batch together. */
    public List<PotLine> linesAt(Id<Place> place) {
        return linesAt.computeIfAbsent(place, outlook()::linesAt);
    }

    public Sill sill(Season season) {
        return sills.computeIfAbsent(season, outlook()::sill);
    }

    /** When the pots of a season came to a place and left it. */
    public Moves moves(Season season, Id<Place> place) {
        return moves.computeIfAbsent(season, movesOf).getOrDefault(place, Moves.NONE);
    }

    /** How warm a place has been. */
    public PlaceClimate climate(Id<Place> place) {
        return climate(place, day);
    }

    /** The same as of another day. */
    public PlaceClimate climate(Id<Place> place, LocalDate on) {
        return climates.computeIfAbsent(on, none -> new HashMap<>())
                .computeIfAbsent(place, there -> climate.apply(there, on));
    }

    /** What is to be explained of a place. */
    public List<Why<?>> whys(Place place) {
        return whys.computeIfAbsent(place.id(), there -> outlook().whys(place));
    }

    /** How the bulbs of a pot sit; empty where its width or their size is not known. */
    public Optional<Sits> sits(Pot pot) {
        return sits.computeIfAbsent(pot.id(), none -> sitsOf.apply(pot));
    }

    /** How cold the ground of a place is foretold to be; empty where no pots stand buried, or nothing of its air is known. */
    public Optional<GroundForetold> ground(Id<Place> place) {
        return grounds.computeIfAbsent(place, outlook()::ground);
    }
}
