// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import sillbook.model.Batch;
import sillbook.model.Day;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.OwnFigure.Scope;
import sillbook.model.Pot;
import sillbook.model.Pot.Planting;
import sillbook.model.Variety;

/**
 * How long the grower's own plants took, read from what is written; of a plant that lives on in each of its winters.
 *
 * <p>A pot that still waits for the end of a span is no length yet; a day that is only about known makes none.
 */
final class OwnLengths {
    private final Journal journal;
    private final LocalDate today;
    private final ColdReading cold;

    /** The days of cold that a variety needs at least; empty where it needs none. */
    private final Function<Variety, Optional<Integer>> leastCold;

    /** Read once, when first asked for: by the name of the kind. */
    private final Map<String, List<OfPot>> byKind = new LinkedHashMap<>();

    OwnLengths(Journal journal, LocalDate today, Function<Variety, Optional<Integer>> leastCold) {
        this.journal = journal;
        this.today = today;
        this.cold = new ColdReading(journal, today);
        this.leastCold = leastCold;
    }

    /**
     * What own pots say of a span, the oldest first.
     *
     * @param counting those that are learnt from
     * @param shortOfCold those that are not, because they had less cold than they need; none of which no cold was
     *     written at all
     */
    record Told(List<OwnLength> counting, List<OwnLength> shortOfCold) {}

    /** One span of one variety in one pot, in one winter. */
    private record OfPot(
            Pot pot,
            Variety variety,
            PlantSpan span,
            LocalDate from,
            int days,
            Conditions under,
            boolean isShortOfCold) {
        /** What stands and falls together: made together, of one variety, begun on one day. */
        Object together() {
            Optional<Id<Batch>> batch = pot.batch();
            return List.of(batch.isPresent() ? batch.get() : pot.id(), variety.id(), from);
        }
    }

    /** The lengths of a span in the pots of a scope. */
    Told of(Scope scope, Kind kind, PlantSpan span) {
        List<OfPot> each = ofKind(kind).stream()
                .filter(one -> one.span() == span && isIn(scope, one.variety()))
                .toList();
        return new Told(
                lengths(each.stream().filter(one -> !one.isShortOfCold()).toList()),
                lengths(each.stream().filter(OfPot::isShortOfCold).toList()));
    }

    private static List<OwnLength> lengths(Collection<OfPot> each) {
        Map<Object, List<OfPot>> together = new LinkedHashMap<>();
        each.forEach(one -> together.computeIfAbsent(one.together(), key -> new ArrayList<>())
                .add(one));
        return together.values().stream()
                .map(OwnLengths::length)
                .sorted(Comparator.comparing(OwnLength::from))
                .toList();
    }

    private static boolean isIn(Scope scope, Variety variety) {
        Kind kind = variety.kind();
        return scope.variety().map(variety.id()::equals).orElse(true)
                && scope.kind()
                        .map(wanted -> wanted.equals(kind) || wanted.equals(kind.withoutGroup()))
                        .orElse(true);
    }

    private static OwnLength length(List<OfPot> together) {
        return new OwnLength(
                together.stream().map(one -> one.pot().id()).distinct().toList(),
                together.get(0).from(),
                together.stream().mapToInt(OfPot::days).average().orElseThrow(),
                Conditions.mean(together.stream().map(OfPot::under).toList()));
    }

    private synchronized List<OfPot> ofKind(Kind kind) {
        return byKind.computeIfAbsent(
                kind.name(),
                name -> journal.pots().all().stream()
                        .filter(this::hasFlowered)
                        .sorted(ByLabel.OF_POTS)
                        .flatMap(pot -> read(pot, name))
                        .toList());
    }

    private boolean hasFlowered(Pot pot) {
        return journal.history(pot.id()).stream().anyMatch(event -> event.what() instanceof Happening.Flowered);
    }

    private Stream<OfPot> read(Pot pot, String kind) {
        Map<Id<Variety>, Planting> varieties = new LinkedHashMap<>();
        pot.plantings().stream()
                .filter(planting -> journal.varieties()
                        .get(planting.variety())
                        .kind()
                        .name()
                        .equals(kind))
                .forEach(planting -> varieties.putIfAbsent(planting.variety(), planting));
        if (varieties.isEmpty()) {
            return Stream.empty();
        }
        PotLife life = History.read(journal, pot, today);
        return life.winters().stream()
                .map(year -> new Course(life, year, cold))
                .flatMap(course -> varieties.values().stream().flatMap(planting -> read(course, planting)));
    }

    private Stream<OfPot> read(Course course, Planting planting) {
        Variety variety = journal.varieties().get(planting.variety());
        Bloom bloom = course.year().bloom();
        boolean isAlone = isAlone(course.life().pot());
        Bloom.Points points = isAlone ? bloom.pot() : bloom.of(variety.id());
        Optional<Integer> least = leastCold.apply(variety);
        Optional<Integer> had = least.map(any -> course.daysOfCold(planting)).filter(days -> days > 0);
        boolean isShort = had.filter(days -> days < least.orElse(0)).isPresent();
        return Stream.of(PlantSpan.values())
                .filter(span -> isAlone || !PlantSpan.SIGNS.contains(span))
                .flatMap(span ->
                        exact(span == PlantSpan.IN_BLOOM ? points.firstFlower() : course.begun(least.isPresent()))
                                .flatMap(from -> course.reached(span, points)
                                        .map(to -> (int) ChronoUnit.DAYS.between(from, to.likely()))
                                        .filter(days -> days > 0)
                                        .map(days -> new OfPot(
                                                course.life().pot(),
                                                variety,
                                                span,
                                                from,
                                                days,
                                                course.under(span, had, Optional.of(from)),
                                                isShort)))
                                .stream());
    }

    private static boolean isAlone(Pot pot) {
        return pot.plantings().stream().map(Planting::variety).distinct().count() == 1;
    }

    private static Optional<LocalDate> exact(Optional<Day> day) {
        return day.filter(Day::isExact).map(Day::likely);
    }
}
