// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureInForce.Bulb;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.handbook.KindEntry;
import sillbook.handbook.Origin;
import sillbook.handbook.OwnFigures;
import sillbook.model.Kind;
import sillbook.model.OwnFigure.Range;
import sillbook.reckon.dates.DayCount;
import sillbook.reckon.dates.Need;

/**
 * What a kind needs, by the handbook and by what the command line puts over it.
 *
 * @param figures those that went in
 */
record DatesNeed(Need need, List<FigureInForce> figures) {

    static DatesNeed of(Handbook handbook, Kind kind, Optional<String> coldWeeks, Optional<String> afterWeeks) {
        boolean needsCold = handbook.entry(kind).map(KindEntry::needsCold).orElse(true);
        Optional<FigureInForce> cold = figure(handbook, kind, FigureName.COLD, coldWeeks);
        Optional<FigureInForce> after = figure(handbook, kind, FigureName.AFTER_COLD, afterWeeks);
        Optional<FigureInForce> cool = figure(handbook, kind, FigureName.COOL_ROOM, Optional.empty());
        Optional<FigureInForce> bloom = figure(handbook, kind, FigureName.IN_BLOOM, Optional.empty());
        DayCount afterDays = after.map(DatesNeed::weeks).orElse(DayCount.ZERO);
        Need need =
                needsCold && cold.isPresent() ? Need.ofCold(weeks(cold.get()), afterDays) : Need.withoutCold(afterDays);
        Optional<FigureInForce> limit = figure(handbook, kind, FigureName.COLD_LIMIT, Optional.empty());
        if (needsCold && limit.isPresent()) {
            need = need.withColdLimit(weeks(limit.get()).typical());
        }
        if (cool.isPresent()) {
            need = need.withCoolRoom(days(cool.get()));
        }
        if (bloom.isPresent()) {
            need = need.withInBloom(days(bloom.get()));
        }
        List<FigureInForce> figures = new ArrayList<>();
        List.of(cold, after, cool, bloom).forEach(figure -> figure.ifPresent(figures::add));
        return new DatesNeed(need, figures);
    }

    private static Optional<FigureInForce> figure(
            Handbook handbook, Kind kind, FigureName name, Optional<String> given) {
        return given.map(text -> own(name, WeeksOption.range(text)))
                .or(() -> FigureInForce.find(handbook, OwnFigures.NONE, Bulb.of(kind), name));
    }

    private static FigureInForce own(FigureName name, Range range) {
        return new FigureInForce(name, range, Origin.OWN_FOR_KIND, Optional.empty());
    }

    private static DayCount weeks(FigureInForce figure) {
        Range range = figure.range();
        return DayCount.ofWeeks(range.low(), range.typical(), range.high());
    }

    private static DayCount days(FigureInForce figure) {
        Range range = figure.range();
        return DayCount.ofDays(range.low(), range.typical(), range.high());
    }
}
