// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.model.Stage;
import sillbook.reckon.dates.Milestone;
import sillbook.reckon.dates.Window;
import sillbook.season.Ahead.Ground;

/** Puts the stages to come of a pot in order, each with what it rests on. */
record AheadReading(Foretold pot) {

    List<Ahead> list() {
        List<Ahead> ahead = new ArrayList<>();
        pot.windows().forEach((milestone, window) -> ahead.add(ahead(milestone, window)));
        return ahead;
    }

    private Ahead ahead(Milestone milestone, Window window) {
        boolean isNext = pot.prospect().next().filter(milestone::equals).isPresent();
        return new Ahead(stage(milestone), window, isNext ? grounds(window) : List.of(), figure(milestone));
    }

    private List<Ground> grounds(Window window) {
        List<Ground> grounds = new ArrayList<>();
        if (pot.readiness().isPresent()) {
            grounds.add(Ground.COLD);
        } else if (pot.life().potted().isPresent()) {
            grounds.add(Ground.BEGUN);
        }
        pot.readiness().ifPresent(ready -> {
            ready.roots().filter(roots -> pot.life().seen().isRooted()).ifPresent(roots -> grounds.add(Ground.ROOTS));
            ready.shoot().ifPresent(shoot -> grounds.add(Ground.SHOOT));
        });
        if (pot.prospect().wished().filter(day -> pot.isPlanned()).isPresent()) {
            boolean isAsPlanned =
                    pot.prospect().wished().filter(window.likely()::equals).isPresent();
            grounds.add(isAsPlanned ? Ground.PLAN : Ground.NEAR_PLAN);
            return grounds;
        }
        boolean isWished =
                pot.wish().flatMap(WishNow::on).filter(window.likely()::equals).isPresent();
        if (isWished) {
            grounds.add(Ground.WISH);
        } else if (grounds.isEmpty()) {
            grounds.add(Ground.CALENDAR);
        }
        return grounds;
    }

    private Optional<FigureInForce> figure(Milestone milestone) {
        boolean fromCold = pot.prospect().facts().on(Milestone.COLD).isPresent()
                || pot.windows().containsKey(Milestone.COLD);
        return switch (milestone) {
            case COLD -> Optional.empty();
            case COOL_ROOM -> fromCold ? find(FigureName.COLD) : Optional.empty();
            case WARM_ROOM -> find(FigureName.COOL_ROOM).or(() -> fromCold ? find(FigureName.COLD) : Optional.empty());
            case BLOOM -> find(FigureName.AFTER_COLD);
            case AFTER_BLOOM -> find(FigureName.IN_BLOOM);
        };
    }

    private Optional<FigureInForce> find(FigureName name) {
        return pot.figures().find(name);
    }

    static Stage stage(Milestone milestone) {
        return switch (milestone) {
            case COLD -> Stage.COLD;
            case COOL_ROOM -> Stage.COOL_ROOM;
            case WARM_ROOM -> Stage.WARM_ROOM;
            case BLOOM -> Stage.IN_BLOOM;
            case AFTER_BLOOM -> Stage.AFTER_BLOOM;
        };
    }
}
