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

/**
 * What own pots teach, each length worked out when it is first asked for.
 *
 * <p>Only what the plants did is learnt: the days to the first flower and the days in bloom. How long a pot was left in
 * the cold or in the cool room was the grower's choice.
 */
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

    /** Empty where too few lengths are known to learn from, or the figure is none that is learnt. */
    Optional<LearntLength> of(Scope scope, Kind kind, FigureName name) {
        boolean isOfPlants = name == FigureName.AFTER_COLD || name == FigureName.IN_BLOOM;
        return isOfPlants && !scope.isHouseRule()
                ? known.computeIfAbsent(List.of(scope, name), key -> learn(scope, kind, name))
                : Optional.empty();
    }

    private Optional<LearntLength> learn(Scope scope, Kind kind, FigureName name) {
        boolean needsCold = published.apply(kind, FigureName.COLD).isPresent();
        List<OwnLength> own = lengths.of(scope, kind, name, needsCold);
        return own.size() < LearntLength.LEAST
                ? Optional.empty()
                : published
                        .apply(scope.kind().orElse(kind), name)
                        .map(figure -> new LearntLength(scope, figure, own, widening));
    }
}
