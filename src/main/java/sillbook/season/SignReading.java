// SPDX-License-Identifier: Apache-2.0
package sillbook.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import sillbook.model.Day;
import sillbook.model.Findings.Growth;
import sillbook.model.Stage;
import sillbook.reckon.dates.Dates;
import sillbook.reckon.dates.Window;
import sillbook.reckon.stages.DayChances;

/** The signs to come, in order, of a pot that was brought in and is not in flower yet. */
record SignReading(Foretold pot) {

    List<SignAhead> list() {
        PotLife life = pot.life();
        return life.stage() == Stage.COOL_ROOM || life.stage() == Stage.WARM_ROOM
                ? Course.present(life, pot.pins().reading())
                        .begun(pot.figures().needsCold())
                        .map(Day::likely)
                        .map(this::signsAfter)
                        .orElse(List.of())
                : List.of();
    }

    private List<SignAhead> signsAfter(LocalDate broughtIn) {
        List<SignAhead> signs = new ArrayList<>();
        for (PlantSpan span : PlantSpan.values()) {
            pot.figures().varieties().stream()
                    .flatMap(one -> one.find(span).stream())
                    .filter(length -> PlantSpan.SIGNS.contains(span) && !isSeen(span))
                    .findFirst()
                    .ifPresent(length -> signs.add(new SignAhead(span, window(length, broughtIn), length)));
        }
        return signs;
    }

    private boolean isSeen(PlantSpan span) {
        Set<Growth> seen = pot.life().seen().growth();
        return (span == PlantSpan.TO_BUDS && !seen.isEmpty())
                || (span == PlantSpan.TO_COLOUR && seen.contains(Growth.COLOUR));
    }

    private Window window(LengthGiven length, LocalDate broughtIn) {
        DayChances.DayWindow days = length.window();
        LocalDate likely = Dates.later(pot.today(), broughtIn.plusDays(days.likely()));
        return new Window(
                broughtIn.plusDays(days.earliest()), likely, Dates.later(likely, broughtIn.plusDays(days.latest())));
    }
}
