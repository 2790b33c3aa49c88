// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.model.Kind;
import sillbook.model.OwnFigure.Scope;
import sillbook.reckon.stages.Widening;

/** What own pots teach, each length worked out when it is first asked for. */
final class Learning {
    private final OwnLengths lengths;
    private final BiFunction<Kind, FigureName, Optional<FigureInForce>> published;
    private final Widening widening;
    private final Map<List<Object>, Optional<LearntLength>> known = new ConcurrentHashMap<>();

    /** What is learnt from some lengths, and what was published for a kind before. */
    Learning(OwnLengths lengths, BiFunction<Kind, FigureName, Optional<FigureInForce>> published, Widening widening) {
        this.lengths = lengths;
        this.published = published;
        this.widening = widening;
    }

    /** Empty where too few lengths are known to learn from. */
    Optional<LearntLength> of(Scope scope, Kind kind, PlantSpan span) {
        return scope.isHouseRule()
                ? Optional.empty()
                : known.computeIfAbsent(List.of(scope, span), key -> learn(scope, kind, span));
    }

    private Optional<LearntLength> learn(Scope scope, Kind kind, PlantSpan span) {
        OwnLengths.Told own = lengths.of(scope, kind, span);
        return own.counting().size() < LearntLength.LEAST
                ? Optional.empty()
                : published
                        .apply(scope.kind().orElse(kind), span.grewFrom())
                        .map(figure ->
                                new LearntLength(scope, span, figure, own.counting(), own.shortOfCold(), widening));
    }
}
