// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.List;
import java.util.Optional;
import sillbook.exchange.RoundList.Row;
import sillbook.season.Job;
import sillbook.season.Readiness;
import sillbook.season.WaitingBulbs;
import sillbook.words.Provisos;

/** The list of a round as JSON. */
public final class RoundJson {
    private RoundJson() {}

    /**
     * The document of {@code sillbook round --json}.
     *
     * @param cautions what to beware of at the place, whole sentences
     */
    public static String write(RoundList list, List<String> cautions, Provisos provisos) {
        Named named = new Named(list.journal());
        Fields fields = new Fields()
                .text("place", list.place().name())
                .day("day", list.day())
                .whole("everyDays", list.round().map(Job.Round::everyDays))
                .day("last", list.round().map(Job.Round::last))
                .list("rows", list.rows(), row -> row(named, row))
                .list("bulbs", list.bulbs(), bulbs -> bulbs(named, bulbs))
                .text("line", list.line())
                .texts("cautions", cautions);
        return Answer.write(fields, provisos);
    }

    private static Fields bulbs(Named named, WaitingBulbs bulbs) {
        return new Fields()
                .text("variety", named.bulbs(bulbs.purchase().id()))
                .number("bulbs", bulbs.bulbs())
                .number("dryDays", bulbs.dry().days())
                .day("felt", bulbs.felt());
    }

    private static Fields row(Named named, Row row) {
        Optional<String> verdict =
                row.first().readiness().map(Readiness::verdict).map(Fields::code);
        return named.pots(row.pots())
                .number("daysIn", row.first().life().cold().daysIn())
                .number("daysColdEnough", row.first().life().cold().daysColdEnough())
                .day("looked", row.looked())
                .written("lastTime", row.lastTime())
                .text("verdict", verdict);
    }
}
