// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import sillbook.handbook.Handbook;
import sillbook.model.Batch;
import sillbook.model.Failure;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.KeptWindow;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Pot.Planting;
import sillbook.model.Season;
import sillbook.model.Stage;
import sillbook.model.Variety;

/**
 * What is true of a journal on a day: where every pot stands, what is due and why, and what is to come.
 *
 * <p>It is worked out once, when asked for, for the pots of this season, those of the one before that are not done, plants
 * of any that live on, and any made for the next. Pots of other winters are read when they are asked for, and have no jobs.
 */
public final class Outlook {
    private final Journal journal;
    private final LocalDate today;
    private final Season season;
    private final Handbook handbook;
    private final Figures figures;
    private final Destinations destinations;
    private final Neighbours neighbours;
    private final PotNowReading potReading;
    private final Batches batches;
    private final Standings standings;
    private final DryBulbs dryBulbs;
    private final Rounds rounds;
    private final Displays displays;
    private final LivingOn livingOn;
    private final List<PotLife> lives;

    /** Worked out when first asked for; two threads may both do it and come to the same. */
    private @Nullable Current current;

    private Outlook(Journal journal, Handbook handbook, LocalDate today) {
        this.journal = journal;
        this.today = today;
        this.season = journal.seasonOf(today);
        this.handbook = handbook;
        this.figures = Figures.of(journal, handbook, today);
        this.lives = currentLives();
        this.destinations = new Destinations(journal, lives, today);
        this.neighbours = new Neighbours(journal, destinations);
        this.potReading = new PotNowReading(journal, figures, destinations, neighbours, today);
        this.batches = new Batches(lives);
        this.standings = new Standings(lives);
        this.dryBulbs = new DryBulbs(journal, figures, lives, today);
        this.rounds = new Rounds(journal, today, standings, dryBulbs);
        this.displays = new Displays(lives);
        this.livingOn = new LivingOn(journal, figures, lives, today);
    }

    /** The pots that have jobs, and their jobs. A line that is typed asks only where pots stand, and does without. */
    private record Current(Map<Id<Pot>, PotNow> pots, List<Job.OfPots> jobs, Map<Id<Pot>, Job.OfPots> jobOf) {}

    private Current current() {
        Current known = current;
        if (known == null) {
            known = readCurrent();
            current = known;
        }
        return known;
    }

    private Current readCurrent() {
        Map<Id<Pot>, PotNow> pots = new LinkedHashMap<>();
        lives.forEach(life -> pots.put(life.pot().id(), potReading.now(life)));
        List<Job.OfPots> jobs = batches.together(
                pots.values().stream().flatMap(pot -> pot.next().stream()).toList());
        Map<Id<Pot>, Job.OfPots> jobOf = new HashMap<>();
        jobs.forEach(job -> job.pots().forEach(pot -> jobOf.put(pot, job)));
        return new Current(pots, jobs, jobOf);
    }

    public static Outlook of(Journal journal, Handbook handbook, LocalDate today) {
        return new Outlook(journal, handbook, today);
    }

    private List<PotLife> currentLives() {
        return journal.pots().all().stream()
                .filter(pot -> !pot.season().isBefore(season.previous()) || figures.livesOn(pot))
                .map(pot -> History.read(journal, pot, today))
                .filter(life ->
                        life.stage() != Stage.DONE || !life.pot().season().isBefore(season))
                .sorted(ByLabel.OF_LIVES)
                .toList();
    }

    public LocalDate day() {
        return today;
    }

    public Figures figures() {
        return figures;
    }

    /** How a variety suits pots, and what says so. */
    public Suiting suiting(Variety variety) {
        return Suiting.of(variety, figures, handbook);
    }

    /**
     * One pot, of whatever season.
     *
     * @throws IllegalStateException when the journal has no such pot
     */
    public PotNow pot(Id<Pot> pot) {
        PotNow known = current().pots().get(pot);
        return known != null ? known : potReading.ofOtherWinter(journal.pots().get(pot));
    }

    /** The next job of a pot, together with those of its batch that agree; empty when nothing is left to do. */
    public Optional<Job.OfPots> job(Id<Pot> pot) {
        return Optional.ofNullable(current().jobOf().get(pot));
    }

    /** The growing pots that stand at a place, by label. */
    public List<Id<Pot>> standingAt(Id<Place> place) {
        return standings.at(place).stream().map(life -> life.pot().id()).toList();
    }

    /** The bulbs that wait dry at a place and are looked at there: of this season or one to come. */
    public List<WaitingBulbs> dryAt(Id<Place> place) {
        return dryBulbs.lookedAfterAt(place);
    }

    /** The same of a variety, wherever they wait. */
    public List<WaitingBulbs> dryOf(Id<Variety> variety) {
        return dryBulbs.of(variety);
    }

    /** Of some pots those whose turn it is to go to a place first, most ready first; none that stands there already. */
    public List<Id<Pot>> turnsInto(Stage stage, Id<Place> place, Collection<Id<Pot>> of) {
        return Turns.into(stage, place, of.stream().map(this::pot));
    }

    /** Of some pots those to be sold, given or used first, the furthest on first; none whose winter is over. */
    public List<Id<Pot>> turnsAway(Collection<Id<Pot>> of) {
        return Turns.away(of.stream().map(this::pot));
    }

    /** How the pots made together with this one stand, those that are gone last; empty where it was made alone. */
    public List<BatchPart> batchOf(Id<Pot> pot) {
        Optional<Id<Batch>> batch = journal.pots().get(pot).batch();
        return batch.isEmpty()
                ? List.of()
                : BatchParts.of(journal.pots().all().stream()
                        .filter(other -> other.batch().equals(batch))
                        .map(other -> pot(other.id()).life()));
    }

    /** The pots a pot shares its row with: those of its batch that are not done; it alone where there are none. */
    public List<Id<Pot>> rowOf(Id<Pot> pot) {
        return batches.of(journal.pots().get(pot)).map(BatchShare::pots).orElse(List.of(pot));
    }

    /** The pots that a display is made up from now, by label; none when there is no such display. */
    public List<Id<Pot>> inDisplay(String name) {
        return displays.in(name);
    }

    /** The names of the displays that are made up now. */
    public List<String> displays() {
        return displays.names();
    }

    /** A place with room that serves a stage, for a pot to be carried to; empty when there is none. */
    public Optional<Destination> destination(Id<Pot> pot, Stage stage) {
        PotLife life = pot(pot).life();
        return destinations.suggest(life.pot(), stage, life.stands().map(Stay::place));
    }

    /** What a pot of some bulbs would take that is to be made for a season. */
    public Forcing forcing(Planting planting, Season of) {
        return new ForcingReading(journal, potReading, today).of(planting, of);
    }

    /** The pots of a season, and the plants of earlier ones that live on in it, by label. */
    public List<PotNow> pots(Season of) {
        return Stream.concat(journal.potsOf(of).stream(), livingOn.in(of))
                .sorted(ByLabel.OF_POTS)
                .map(pot -> pot(pot.id()))
                .toList();
    }

    /** The plants of earlier seasons that live on. */
    public LivingOn livingOn() {
        return livingOn;
    }

    /** Why the figures shown for a pot are what they are. */
    public List<Why<?>> whys(Id<Pot> pot) {
        PotNow now = pot(pot);
        Foretold foretold = potReading.foretell(now.life());
        return new WhyReading(foretold, now.next(), new YearJobs(new JobSite(foretold, neighbours)), figures).list();
    }

    /**
     * The causes that a failure of this pot could have, each with what the journal says of it: what entries speak for first, then what
     * cannot be told, then what nothing speaks for.
     *
     * @param found what was seen to be wrong
     */
    public List<Suspect> suspects(Id<Pot> pot, Failure found) {
        return new SuspectReading(journal, pot(pot), found).list();
    }

    /** The growing pots that stood through the same as this one: the same days at the same place, by label. */
    public List<Id<Pot>> alsoThrough(Id<Pot> pot, Suspect suspect) {
        return new Company(pot(pot).life(), lives).through(suspect);
    }

    /** Why the round of a place falls on its day; empty where there is none. */
    public Optional<RoundDue> why(Place place) {
        return rounds.why(place);
    }

    /** Why what is shown of a place is what it is: its warmth, its round, and how cold its ground will be. */
    public List<Why<?>> whys(Place place) {
        return Stream.concat(
                        WhyClimate.of(journal, standings, place, today).stream(),
                        Stream.of(why(place), grounds().why(place)).flatMap(Optional::stream))
                .<Why<?>>map(why -> why)
                .toList();
    }

    /** How cold it is foretold to get this winter where pots stand buried; empty where the ground, or a month of its air, is not known. */
    public Optional<GroundForetold> ground(Id<Place> place) {
        return grounds().of(place);
    }

    private GroundReading grounds() {
        return new GroundReading(journal, today);
    }

    /** What the day asks for and shows. */
    public Today today() {
        List<Job.OfGround> ground = grounds().jobs(standings, current().pots().values());
        TodaySheet sheet = new TodaySheet(today, current().jobs(), rounds.list(), ground);
        List<Job.OfPots> due = sheet.due();
        Flowers flowers = new Flowers(current().pots().values(), batches, due, today);
        return new Today(
                today,
                season,
                sheet.late(),
                sheet.ready(),
                due,
                sheet.checks(),
                rounds.dailyCare(),
                ground,
                sheet.soon(),
                sheet.later(),
                flowers.inBloom(),
                flowers.opening(),
                new PlacesReading(journal, standings, dryBulbs, rounds, today).attention(),
                new WeeksAhead(current().pots().values(), today).list(),
                new DoneReading(journal, today).list());
    }

    /** The places in the order of the journal, and what stands there. */
    public List<PlaceNow> places() {
        PlacesAhead inTwoWeeks = new PlacesAhead(current().pots().values(), lines(season, today), destinations)
                .to(today.plusDays(Today.SOON_DAYS));
        PlacesReading reading = new PlacesReading(journal, standings, dryBulbs, rounds, today);
        return journal.places().all().stream()
                .map(place -> reading.now(place, inTwoWeeks))
                .toList();
    }

    /** The varieties by name, each with its record and what is in hand. */
    public List<VarietyNow> varieties() {
        VarietyReading reading = new VarietyReading(journal, season);
        return journal.varieties().all().stream()
                .sorted(Comparator.comparing(Variety::name, String.CASE_INSENSITIVE_ORDER))
                .map(reading::now)
                .toList();
    }

    private Lines lines(Season of, LocalDate day) {
        MonthDay start = journal.settings().seasonStart();
        return new Lines(of.firstDay(start), of.endExclusive(start), day);
    }

    /** A line for every pot and every batch of a season, by label. */
    public List<PotLine> lines(Season of) {
        return drawn(pots(of), lines(of, today));
    }

    /** A line for every pot that stands at a place, pots of one batch together, by label. */
    public List<PotLine> linesAt(Id<Place> place) {
        return drawn(standingAt(place).stream().map(this::pot).toList(), lines(season, today));
    }

    /** The line of one pot, drawn as it stands itself though others of its batch may stand elsewhere. */
    public PotLine line(Id<Pot> pot) {
        PotNow now = pot(pot);
        return drawn(List.of(now), lines(livingOn.seasonOf(now.life().pot()), today))
                .get(0);
    }

    private List<PotLine> drawn(List<PotNow> pots, Lines lines) {
        Batches together = new Batches(pots.stream().map(PotNow::life).toList());
        return new LineReading(lines, together, this::pot, this::job).all(pots);
    }

    /** The days of a season on which something is in flower. */
    public Sill sill(Season of) {
        Lines lines = lines(of, today);
        return SillReading.of(pots(of).stream().map(lines::of).toList());
    }

    /** The windows shown for some pots now, to be kept so that the book can later be held to its word. */
    public List<KeptWindow> windowsToKeep(Collection<Id<Pot>> pots) {
        return pots.stream()
                .map(pot ->
                        potReading.foretell(History.read(journal, journal.pots().get(pot), today)))
                .flatMap(pot -> new AheadReading(pot)
                        .list().stream()
                                .map(ahead -> ahead.kept(pot.life().pot().id(), today)))
                .toList();
    }
}
