// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.util.List;
import java.util.Optional;
import sillbook.model.Id;
import sillbook.model.Kind;
import sillbook.model.OwnFigure.Range;
import sillbook.model.OwnFigure.Scope;
import sillbook.model.Variety;

/**
 * The figure that holds for a bulb: the grower's own where there is one, else the handbook's.
 *
 * @param range in the unit of the name
 * @param figure the published figure it is; empty for one of the grower's own
 */
public record FigureInForce(FigureName name, Range range, Origin origin, Optional<Figure> figure) {

    /** Keys of the sources it rests on; none for one of the grower's own. */
    public List<String> sources() {
        return figure.map(Figure::sources).orElse(List.of());
    }

    /**
     * Whose figure is asked for.
     *
     * @param kind the kind as the grower names it
     * @param like the kind whose published figures it borrows; the same where it borrows none
     */
    public record Bulb(Optional<Id<Variety>> variety, Kind kind, Kind like) {
        public static Bulb of(Kind kind) {
            return new Bulb(Optional.empty(), kind, kind);
        }

        public static Bulb of(Id<Variety> variety, Kind kind) {
            return new Bulb(Optional.of(variety), kind, kind);
        }
    }

    /**
     * Own for the variety, before own for the class, before own for the kind, before the house rule for hardy kinds,
     * before the handbook; for a kind the handbook does not know, what it has for hardy bulbs is assumed.
     */
    public static Optional<FigureInForce> find(Handbook handbook, OwnFigures own, Bulb bulb, FigureName name) {
        return bulb.variety()
                .flatMap(variety -> own(own, Scope.of(variety), name, Origin.OWN_FOR_VARIETY))
                .or(() -> own(own, Scope.of(bulb.kind()), name, Origin.OWN_FOR_KIND))
                .or(() -> own(own, Scope.of(bulb.kind().withoutGroup()), name, Origin.OWN_FOR_KIND))
                .or(() -> isHardy(handbook, bulb)
                        ? own(own, Scope.ofAllHardy(), name, Origin.OWN_FOR_HARDY)
                        : Optional.empty())
                .or(() -> handbook.figure(bulb.like(), name).map(figure -> published(figure, bulb)))
                .or(() -> assumed(handbook, bulb, name));
    }

    private static boolean isHardy(Handbook handbook, Bulb bulb) {
        return handbook.entry(bulb.like()).map(KindEntry::needsCold).orElse(true);
    }

    private static Optional<FigureInForce> own(OwnFigures own, Scope scope, FigureName name, Origin origin) {
        return own.find(scope, name).map(range -> new FigureInForce(name, range, origin, Optional.empty()));
    }

    private static FigureInForce published(Figure figure, Bulb bulb) {
        Origin origin = Origin.HANDBOOK_GENERAL;
        if (figure.kind().name().equals(bulb.like().name())) {
            origin = figure.kind().group().isEmpty() ? Origin.HANDBOOK_KIND : Origin.HANDBOOK_CLASS;
        }
        return new FigureInForce(figure.name(), figure.range(), origin, Optional.of(figure));
    }

    private static Optional<FigureInForce> assumed(Handbook handbook, Bulb bulb, FigureName name) {
        if (handbook.entry(bulb.like()).isPresent()) {
            return Optional.empty();
        }
        return handbook.figure(Handbook.HARDY, name)
                .map(figure -> new FigureInForce(name, figure.range(), Origin.ASSUMED, Optional.of(figure)));
    }
}
