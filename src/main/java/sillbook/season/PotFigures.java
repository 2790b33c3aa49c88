// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.model.Id;
import sillbook.model.Kind;
import sillbook.model.Variety;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Need;
import sillbook.reckon.dates.Warning;

/**
 * What a pot's dates rest on.
 *
 * @param varieties as the pot's plantings are ordered
 * @param warnings of varieties that should not share a pot
 */
public record PotFigures(List<OfVariety> varieties, List<Warning> warnings) {
    public PotFigures {
        varieties = List.copyOf(varieties);
        warnings = List.copyOf(warnings);
    }

    /**
     * What one variety in the pot needs.
     *
     * @param need with the cold that is shared
     * @param figures its own, before anything is shared
     * @param learnt what was learnt of it, under the conditions of the pot
     */
    public record OfVariety(
            Id<Variety> variety,
            Kind kind,
            Need need,
            Map<FigureName, FigureInForce> figures,
            Map<PlantSpan, LengthGiven> learnt) {
        public OfVariety {
            figures = Map.copyOf(figures);
            learnt = Map.copyOf(learnt);
        }

        public Optional<FigureInForce> find(FigureName name) {
            return Optional.ofNullable(figures.get(name));
        }

        public Optional<LengthGiven> find(PlantSpan span) {
            return Optional.ofNullable(learnt.get(span));
        }
    }

    /** Whether anything in it needs cold. */
    public boolean needsCold() {
        return cold().isPresent();
    }

    /** Whether what names it is one plant over years: a kind that has a yearly rest. */
    public boolean livesOn() {
        return varieties.get(0).find(FigureName.REST).isPresent();
    }

    /** The cold all its varieties that need any share, dry weeks included. */
    public Optional<DayCount> cold() {
        return varieties.stream().flatMap(one -> one.need().cold().stream()).findFirst();
    }

    /** A figure of the pot: of the neediest variety for its cold, else of the first that has one. */
    public Optional<FigureInForce> find(FigureName name) {
        var found = varieties.stream().flatMap(one -> one.find(name).stream());
        return name == FigureName.COLD
                ? found.max(Comparator.comparingDouble(figure -> figure.range().typical()))
                : found.findFirst();
    }
}
