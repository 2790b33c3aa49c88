// SPDX-License-Identifier: Apache-2.0
package sillbook.handbook;

import java.util.ArrayList;
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
 * @param pots how many of the grower's own pots it was learnt from; 0 where it was not
 */
public record FigureInForce(FigureName name, Range range, Origin origin, Optional<Figure> figure, int pots) {

    /** One that was typed, published or taken for granted. */
    public FigureInForce(FigureName name, Range range, Origin origin, Optional<Figure> figure) {
        this(name, range, origin, figure, 0);
    }

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
     * From the more particular to the more general, the variety, its class, its kind and all hardy kinds: what was typed
     * for it, before what was learnt for it; then the handbook's. Where the handbook's was asked for, what was learnt does
     * not count, and nothing more general than what it was asked for. For a kind the handbook does not know, what it has
     * for hardy bulbs is assumed.
     */
    public static Optional<FigureInForce> find(Handbook handbook, OwnFigures own, Bulb bulb, FigureName name) {
        List<Scope> scopes = scopes(handbook, bulb);
        boolean isLearning = scopes.stream().noneMatch(scope -> own.isHandbookAsked(scope, name));
        for (Scope scope : scopes) {
            Optional<FigureInForce> found =
                    typed(own, scope, name).or(() -> isLearning ? learnt(own, scope, bulb, name) : Optional.empty());
            if (found.isPresent()) {
                return found;
            }
            if (own.isHandbookAsked(scope, name)) {
                break;
            }
        }
        return handbook.figure(bulb.like(), name)
                .map(figure -> published(figure, bulb))
                .or(() -> assumed(handbook, bulb, name));
    }

    /** What a figure may have been written for that holds for a bulb, the more particular first. */
    public static List<Scope> scopes(Handbook handbook, Bulb bulb) {
        List<Scope> scopes = new ArrayList<>();
        bulb.variety().map(Scope::of).ifPresent(scopes::add);
        scopes.add(Scope.of(bulb.kind()));
        if (!bulb.kind().group().isEmpty()) {
            scopes.add(Scope.of(bulb.kind().withoutGroup()));
        }
        if (isHardy(handbook, bulb)) {
            scopes.add(Scope.ofAllHardy());
        }
        return scopes;
    }

    private static boolean isHardy(Handbook handbook, Bulb bulb) {
        return handbook.entry(bulb.like()).map(KindEntry::needsCold).orElse(true);
    }

    private static Optional<FigureInForce> typed(OwnFigures own, Scope scope, FigureName name) {
        return own.find(scope, name).map(range -> new FigureInForce(name, range, typedFor(scope), Optional.empty()));
    }

    private static Origin typedFor(Scope scope) {
        if (scope.isHouseRule()) {
            return Origin.OWN_FOR_HARDY;
        }
        return scope.variety().isPresent() ? Origin.OWN_FOR_VARIETY : Origin.OWN_FOR_KIND;
    }

    private static Optional<FigureInForce> learnt(OwnFigures own, Scope scope, Bulb bulb, FigureName name) {
        Origin origin = scope.variety().isPresent() ? Origin.LEARNT_FOR_VARIETY : Origin.LEARNT_FOR_KIND;
        return own.learnt(scope, bulb, name)
                .map(learnt -> new FigureInForce(name, learnt.range(), origin, Optional.empty(), learnt.pots()));
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
