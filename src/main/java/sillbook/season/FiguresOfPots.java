// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.model.Journal;
import sillbook.model.Pot.Planting;
import sillbook.model.Variety;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.MixedPot;
import sillbook.reckon.dates.Need;
import sillbook.reckon.stages.DayChances;

/** Puts together the figures that the dates of a pot rest on; what was learnt, for what the pot is under. */
final class FiguresOfPots {
    private static final List<FigureName> OF_DATES = List.of(
            FigureName.COLD,
            FigureName.COLD_LIMIT,
            FigureName.COLD_BAND,
            FigureName.AFTER_COLD,
            FigureName.COOL_ROOM,
            FigureName.IN_BLOOM,
            FigureName.READY_SHOOT,
            FigureName.WARM_SHOOT,
            FigureName.FEED,
            FigureName.REST);

    private final Journal journal;
    private final Figures figures;
    private final ColdReading cold;

    /** Found once for each variety, and each of the conditions its pots are under; a winter has many pots of one. */
    private final Map<List<Object>, OfVariety> known = new ConcurrentHashMap<>();

    FiguresOfPots(Journal journal, Figures figures, LocalDate today) {
        this.journal = journal;
        this.figures = figures;
        this.cold = new ColdReading(journal, today);
    }

    /** What holds for a variety, whatever else is in the pot. */
    private record OfVariety(
            Variety variety, Map<FigureName, FigureInForce> figures, Map<PlantSpan, LengthGiven> learnt, Need need) {}

    PotFigures of(PotLife life) {
        List<OfVariety> varieties = life.pot().plantings().stream()
                .map(planting -> known(life, planting))
                .toList();
        MixedPot mixed = new MixedPot(varieties.stream().map(OfVariety::need).toList());
        List<Need> sharing = mixed.sharing();
        List<PotFigures.OfVariety> each = new ArrayList<>();
        for (int i = 0; i < varieties.size(); i++) {
            OfVariety one = varieties.get(i);
            each.add(new PotFigures.OfVariety(
                    one.variety().id(), one.variety().kind(), sharing.get(i), one.figures(), one.learnt()));
        }
        return new PotFigures(each, mixed.warnings());
    }

    private OfVariety known(PotLife life, Planting planting) {
        OfVariety usual = known.computeIfAbsent(
                List.of(planting.variety()), key -> usual(journal.varieties().get(planting.variety())));
        return usual.learnt().isEmpty() ? usual : under(expected(life, planting, usual), usual);
    }

    private OfVariety usual(Variety variety) {
        Map<FigureName, FigureInForce> found = new EnumMap<>(FigureName.class);
        for (FigureName name : OF_DATES) {
            figures.find(variety, name).ifPresent(figure -> found.put(name, figure));
        }
        return of(variety, found, learnt(variety, found));
    }

    /** Signs go with the flower: where its figure is not learnt, none of them is. */
    private Map<PlantSpan, LengthGiven> learnt(Variety variety, Map<FigureName, FigureInForce> found) {
        Map<PlantSpan, LengthGiven> learnt = new EnumMap<>(PlantSpan.class);
        for (PlantSpan span : PlantSpan.values()) {
            Optional<LearntLength> ofFigure = Optional.ofNullable(found.get(span.grewFrom()))
                    .flatMap(figure -> figures.learnt(variety.id(), variety.kind(), figure));
            Optional<LearntLength> length =
                    span.figure().isPresent() ? ofFigure : ofFigure.flatMap(flower -> figures.sign(variety, span));
            length.ifPresent(one -> learnt.put(span, one.asUsual()));
        }
        return learnt;
    }

    private Map<PlantSpan, Conditions> expected(PotLife life, Planting planting, OfVariety usual) {
        Course course = Course.present(life, cold);
        Map<PlantSpan, Conditions> expected = new EnumMap<>(PlantSpan.class);
        Need need = usual.need();
        usual.learnt()
                .keySet()
                .forEach(span -> expected.put(
                        span,
                        course.expected(
                                span, planting, need.cold(), need.afterCold().typical())));
        return expected;
    }

    private OfVariety under(Map<PlantSpan, Conditions> expected, OfVariety usual) {
        return known.computeIfAbsent(List.of(usual.variety().id(), expected), key -> {
            Map<FigureName, FigureInForce> found = new EnumMap<>(usual.figures());
            Map<PlantSpan, LengthGiven> learnt = new EnumMap<>(PlantSpan.class);
            usual.learnt().forEach((span, length) -> {
                LengthGiven given = length.length().given(expected.getOrDefault(span, Conditions.UNKNOWN));
                learnt.put(span, given);
                span.figure().ifPresent(name -> found.computeIfPresent(name, (any, figure) -> moved(figure, given)));
            });
            return of(usual.variety(), found, learnt);
        });
    }

    private static FigureInForce moved(FigureInForce figure, LengthGiven given) {
        return new FigureInForce(figure.name(), given.range(), figure.origin(), figure.figure(), figure.pots());
    }

    private static OfVariety of(
            Variety variety, Map<FigureName, FigureInForce> found, Map<PlantSpan, LengthGiven> learnt) {
        Need need = Figures.needOf(name -> Optional.ofNullable(found.get(name)).map(FigureInForce::range));
        return new OfVariety(
                variety,
                found,
                learnt,
                bloomAhead(found, learnt).map(need::withBloomAhead).orElse(need));
    }

    /**
     * What the days in bloom add to those before them, where either was learnt: the days of their sum less the days of
     * the first alone.
     */
    private static Optional<DayCount> bloomAhead(
            Map<FigureName, FigureInForce> found, Map<PlantSpan, LengthGiven> learnt) {
        return learnt.isEmpty()
                ? Optional.empty()
                : chances(PlantSpan.TO_FIRST_FLOWER, found, learnt)
                        .flatMap(before ->
                                chances(PlantSpan.IN_BLOOM, found, learnt).map(before::added))
                        .map(added -> DayCount.of(added.earliest(), added.likely(), added.latest()));
    }

    private static Optional<DayChances> chances(
            PlantSpan span, Map<FigureName, FigureInForce> found, Map<PlantSpan, LengthGiven> learnt) {
        return Optional.ofNullable(learnt.get(span))
                .map(LengthGiven::chances)
                .or(() -> Optional.ofNullable(found.get(span.grewFrom()))
                        .map(figure -> DayChances.of(LearntLength.points(figure).beta())));
    }
}
