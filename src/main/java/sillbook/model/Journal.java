// SPDX-License-Identifier: Apache-2.0
package sillbook.model;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * All that a journal says, at one moment. It never changes: {@link #with} gives the journal after some edits.
 *
 * <p>Readings of thermometers are not here; there can be millions, and they are asked of the store by place and time. What they come to,
 * day by day, is.
 */
public final class Journal {
    private final Map<Class<?>, Catalogue<?>> content;
    private final DaysRead daysRead;

    /** Worked out when first asked for; two threads may both do it and come to the same. */
    private volatile @Nullable Map<Subject, List<Event>> histories;

    private volatile @Nullable Map<Id<Place>, List<SpanReading>> spans;

    private Journal(Map<Class<?>, Catalogue<?>> content, DaysRead daysRead) {
        this.content = content;
        this.daysRead = daysRead;
    }

    /** A journal that says nothing but how it counts. */
    public static Journal empty(Settings settings) {
        return of(List.of(settings));
    }

    /** The journal of these entities; one of them must be its settings. */
    public static Journal of(Collection<? extends Entity<?>> entities) {
        List<Edit> puts = new ArrayList<>(entities.size());
        entities.forEach(entity -> puts.add(new Edit.Put(entity)));
        return new Journal(Map.of(), DaysRead.NONE).with(puts);
    }

    /** This journal with the edits carried out, in order. */
    public Journal with(List<Edit> edits) {
        Map<Class<?>, List<Edit>> byType = new LinkedHashMap<>();
        edits.forEach(edit -> byType.computeIfAbsent(edit.entity().getClass(), type -> new ArrayList<>())
                .add(edit));
        Map<Class<?>, Catalogue<?>> edited = new HashMap<>(content);
        byType.forEach((type, some) -> edited.put(type, catalogue(type).with(some)));
        edited.values().removeIf(Catalogue::isEmpty);
        return new Journal(edited, daysRead);
    }

    /** This journal with these days of its thermometers in the place of those it knew. */
    public Journal with(DaysRead days) {
        return new Journal(content, days);
    }

    private Catalogue<?> catalogue(Class<?> type) {
        Catalogue<?> found = content.get(type);
        return found != null ? found : Catalogue.NONE;
    }

    /** Entities are filed under their own class. */
    @SuppressWarnings("unchecked")
    private <T extends Entity<T>> Catalogue<T> all(Class<T> type) {
        return (Catalogue<T>) catalogue(type);
    }

    /** Whether an entity of any type has this id. */
    public boolean contains(Id<?> id) {
        return content.values().stream().anyMatch(catalogue -> catalogue.knows(id));
    }

    /** Every entity, type by type. */
    public List<Entity<?>> entities() {
        List<Entity<?>> entities = new ArrayList<>();
        content.values().forEach(catalogue -> entities.addAll(catalogue.all()));
        return entities;
    }

    public Settings settings() {
        return all(Settings.class).get(Settings.ID);
    }

    public Catalogue<OwnKind> ownKinds() {
        return all(OwnKind.class);
    }

    public Catalogue<OwnFigure> ownFigures() {
        return all(OwnFigure.class);
    }

    public Catalogue<Variety> varieties() {
        return all(Variety.class);
    }

    public Catalogue<Purchase> purchases() {
        return all(Purchase.class);
    }

    public Catalogue<PottingMix> pottingMixes() {
        return all(PottingMix.class);
    }

    public Catalogue<Container> containers() {
        return all(Container.class);
    }

    public Catalogue<UsualWay> usualWays() {
        return all(UsualWay.class);
    }

    public Catalogue<Place> places() {
        return all(Place.class);
    }

    public Catalogue<Trench> trenches() {
        return all(Trench.class);
    }

    /** How pots stand buried at a place; empty where that is not written down. */
    public Optional<Trench> trench(Id<Place> place) {
        return trenches().all().stream()
                .filter(trench -> trench.place().equals(place))
                .findFirst();
    }

    public Catalogue<Pot> pots() {
        return all(Pot.class);
    }

    public Catalogue<Event> events() {
        return all(Event.class);
    }

    public Catalogue<SpanReading> spanReadings() {
        return all(SpanReading.class);
    }

    /** Those of a place, the first begun first. */
    public List<SpanReading> spanReadingsAt(Id<Place> place) {
        Map<Id<Place>, List<SpanReading>> known = spans;
        if (known == null) {
            known = spanReadings().all().stream()
                    .sorted(Comparator.comparing(
                                    (SpanReading reading) -> reading.from().likely())
                            .thenComparing(reading -> reading.to().likely()))
                    .collect(Collectors.groupingBy(SpanReading::place));
            spans = known;
        }
        return known.getOrDefault(place, List.of());
    }

    public Catalogue<SpotReading> spotReadings() {
        return all(SpotReading.class);
    }

    /** What readings were taken in from. */
    public Catalogue<ReadingSource> readingSources() {
        return all(ReadingSource.class);
    }

    public Catalogue<LoggerProfile> loggerProfiles() {
        return all(LoggerProfile.class);
    }

    /** What was told of the files of a place's thermometer. */
    public List<LoggerProfile> loggerProfilesAt(Id<Place> place) {
        return loggerProfiles().all().stream()
                .filter(profile -> profile.place().equals(place))
                .toList();
    }

    public Catalogue<Thermometer> thermometers() {
        return all(Thermometer.class);
    }

    public Optional<Thermometer> thermometerAt(Id<Place> place) {
        return thermometers().all().stream()
                .filter(thermometer -> thermometer.place().equals(place))
                .findFirst();
    }

    /** What the thermometers said, as far as it was read from the store. */
    public DaysRead daysRead() {
        return daysRead;
    }

    public Catalogue<Outcome> outcomes() {
        return all(Outcome.class);
    }

    /** How a pot did: as a whole, and each variety in it that was judged by itself. */
    public List<Outcome> outcomesOf(Id<Pot> pot) {
        return outcomes().all().stream()
                .filter(outcome -> outcome.pot().equals(pot))
                .toList();
    }

    /** What was found to be wrong with a pot as a whole. */
    public Failure failureOf(Id<Pot> pot) {
        return outcomesOf(pot).stream()
                .filter(outcome -> outcome.variety().isEmpty())
                .findFirst()
                .map(Outcome::failure)
                .orElse(Failure.NONE);
    }

    public Catalogue<Wish> wishes() {
        return all(Wish.class);
    }

    public Catalogue<Space> spaces() {
        return all(Space.class);
    }

    public Catalogue<SeasonPlan> seasonPlans() {
        return all(SeasonPlan.class);
    }

    public Catalogue<Intention> intentions() {
        return all(Intention.class);
    }

    public Catalogue<Choice> choices() {
        return all(Choice.class);
    }

    /** What is marked of a variety for a season, by a mark of that season's own. */
    public Optional<Choice> choice(Id<Variety> variety, Season season) {
        return choices().all().stream()
                .filter(choice ->
                        choice.season().equals(season) && choice.variety().equals(variety))
                .findFirst();
    }

    /** The mark that holds for a season: its own, else one of an earlier season by which the variety was set aside. */
    public Optional<Choice> choiceHolding(Id<Variety> variety, Season season) {
        return choices().all().stream()
                .filter(choice -> choice.variety().equals(variety) && !season.isBefore(choice.season()))
                .max(Comparator.comparing(Choice::season))
                .filter(last -> last.season().equals(season) || last.isSetAside());
    }

    /** How true the windows before a season were; empty where that is not settled. */
    public Optional<PastWindows> pastWindows(Season season) {
        return all(PastWindows.class).all().stream()
                .filter(windows -> windows.season().equals(season))
                .findFirst();
    }

    /** What happened to a pot, place or other subject, in the order of history. */
    public List<Event> history(Subject subject) {
        Map<Subject, List<Event>> known = histories;
        if (known == null) {
            known = sortedHistories();
            histories = known;
        }
        return known.getOrDefault(subject, List.of());
    }

    public List<Event> history(Id<Pot> pot) {
        return history(new Subject.OfPot(pot));
    }

    /** Whether it was ever potted; a pot that was not may have other entries. */
    public boolean isPotted(Id<Pot> pot) {
        return history(pot).stream().anyMatch(event -> event.what() instanceof Happening.Potted);
    }

    private Map<Subject, List<Event>> sortedHistories() {
        Map<Subject, List<Event>> bySubject = new HashMap<>();
        for (Event event : events().all()) {
            bySubject
                    .computeIfAbsent(event.subject(), subject -> new ArrayList<>())
                    .add(event);
        }
        bySubject.replaceAll(
                (subject, events) -> events.stream().sorted(Event.BY_HISTORY).toList());
        return bySubject;
    }

    public Season seasonOf(LocalDate day) {
        return Season.of(day, settings().seasonStart());
    }

    /** {@code 2025-26}; only {@code 2025} where seasons begin with the calendar year. */
    public String nameOf(Season season) {
        return season.name(settings().seasonStart());
    }

    /** The season for which bulbs are chosen on a day. */
    public Season chosenFor(LocalDate day) {
        return Season.chosenFor(day, settings().seasonStart());
    }

    public List<Pot> potsOf(Season season) {
        // By the number: a record's own equals is linked anew at every start, and this is on the way to the first
        // picture.
        return pots().all().stream()
                .filter(pot -> pot.season().year() == season.year())
                .toList();
    }

    public Optional<Pot> pot(Season season, String label) {
        return potsOf(season).stream()
                .filter(pot -> pot.label().equalsIgnoreCase(label))
                .findFirst();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Journal that && content.equals(that.content) && daysRead.equals(that.daysRead);
    }

    @Override
    public int hashCode() {
        return content.hashCode();
    }

    @Override
    public String toString() {
        return content.values().toString();
    }
}
