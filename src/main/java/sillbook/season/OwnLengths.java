// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sillbook.handbook.FigureName;
import sillbook.model.Batch;
import sillbook.model.Day;
import sillbook.model.Happening;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.OwnFigure.Scope;
import sillbook.model.Pot;
import sillbook.model.Pot.Planting;
import sillbook.model.Stage;
import sillbook.model.Variety;

/**
 * How long the stages of the grower's own pots took, read from what is written.
 *
 * <p>A pot that still waits for the end of a stage is no length yet; a day that is only about known makes none; of a plant
 * that lives on its first winter counts.
 */
final class OwnLengths {
    private final Journal journal;
    private final LocalDate today;

    /** Read once, when first asked for: by the name of the kind. */
    private final Map<String, List<OfPot>> byKind = new LinkedHashMap<>();

    OwnLengths(Journal journal, LocalDate today) {
        this.journal = journal;
        this.today = today;
    }

    /** One stage of one variety in one pot. */
    private record OfPot(Pot pot, Variety variety, FigureName name, LocalDate from, int days) {
        /** What stands and falls together: made together, of one variety, begun on one day. */
        Object together() {
            Optional<Id<Batch>> batch = pot.batch();
            return batch.isPresent() ? List.of(batch.get(), variety.id(), from) : List.of(pot.id(), variety.id());
        }
    }

    /**
     * The lengths of a stage in the pots of a scope, the oldest first.
     *
     * @param needsCold whether its days are counted from the end of the cold, or from potting
     */
    List<OwnLength> of(Scope scope, Kind kind, FigureName name, boolean needsCold) {
        Map<Object, List<OfPot>> together = new LinkedHashMap<>();
        ofKind(kind, needsCold).stream()
                .filter(one -> one.name() == name && isIn(scope, one.variety()))
                .forEach(one -> together.computeIfAbsent(one.together(), key -> new ArrayList<>())
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
                together.stream().mapToInt(OfPot::days).average().orElseThrow());
    }

    private synchronized List<OfPot> ofKind(Kind kind, boolean needsCold) {
        return byKind.computeIfAbsent(
                kind.name(),
                name -> journal.pots().all().stream()
                        .sorted(ByLabel.OF_POTS)
                        .flatMap(pot -> read(pot, name, needsCold))
                        .toList());
    }

    private Stream<OfPot> read(Pot pot, String kind, boolean needsCold) {
        List<Variety> varieties = pot.plantings().stream()
                .map(Planting::variety)
                .distinct()
                .map(journal.varieties()::get)
                .toList();
        if (varieties.stream().noneMatch(one -> one.kind().name().equals(kind)) || !hasFlowered(pot)) {
            return Stream.empty();
        }
        PotLife life = History.read(journal, pot, today);
        Optional<Day> out = needsCold ? leftCold(life) : life.potted();
        Stream<OfPot> lengths = Stream.empty();
        for (Variety variety : varieties) {
            Bloom bloom = life.years().past().stream()
                    .findFirst()
                    .map(Years.Year::bloom)
                    .orElse(life.bloom());
            Bloom.Points points = varieties.size() == 1 ? bloom.pot() : bloom.of(variety.id());
            lengths = Stream.of(
                            lengths,
                            stage(pot, variety, FigureName.AFTER_COLD, out, points.firstFlower()).stream(),
                            stage(pot, variety, FigureName.IN_BLOOM, points.firstFlower(), points.pastBloom()).stream())
                    .flatMap(each -> each);
        }
        return lengths.filter(one -> one.variety().kind().name().equals(kind));
    }

    private boolean hasFlowered(Pot pot) {
        return journal.history(pot.id()).stream().anyMatch(event -> event.what() instanceof Happening.Flowered);
    }

    private static Optional<Day> leftCold(PotLife life) {
        List<Phase> phases = life.phases();
        for (int i = phases.size() - 1; i > 0; i--) {
            Phase after = phases.get(i);
            if (after.stage() != Stage.COLD && phases.get(i - 1).stage() == Stage.COLD) {
                return Optional.of(Day.on(after.days().start()))
                        .filter(day -> !life.uncertain().contains(after.stage()));
            }
        }
        return Optional.empty();
    }

    private static Optional<OfPot> stage(
            Pot pot, Variety variety, FigureName name, Optional<Day> from, Optional<Day> to) {
        return from.filter(Day::isExact)
                .flatMap(begun -> to.filter(Day::isExact)
                        .map(ended -> (int) ChronoUnit.DAYS.between(begun.likely(), ended.likely()))
                        .filter(days -> days > 0)
                        .map(days -> new OfPot(pot, variety, name, begun.likely(), days)));
    }
}
