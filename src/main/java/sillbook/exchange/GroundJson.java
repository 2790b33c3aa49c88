// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import sillbook.model.Journal;
import sillbook.model.Trench;
import sillbook.model.Trench.Cover;
import sillbook.reckon.dates.DaySpan;
import sillbook.season.CoverHeat;
import sillbook.season.GroundForetold;
import sillbook.words.GroundTerms;
import sillbook.words.Provisos;

/** The ground in which pots stand buried as JSON. */
public final class GroundJson {
    private static final double CM = 100;

    private GroundJson() {}

    /**
     * The document of {@code sillbook ground --json}.
     *
     * @param foretold empty where a month of the air is not known
     */
    public static String write(
            Journal journal,
            List<Trench> trenches,
            Function<Trench, Optional<GroundForetold>> foretold,
            Provisos provisos) {
        return Answer.write(
                new Fields().list("ground", trenches, trench -> trench(journal, trench, foretold.apply(trench))),
                provisos);
    }

    private static Fields trench(Journal journal, Trench trench, Optional<GroundForetold> foretold) {
        return new Fields()
                .text("place", journal.places().get(trench.place()).name())
                .number("depth", trench.depth().centimetres() / CM)
                .text("soil", GroundTerms.SOILS.say(trench.soil()))
                .object("cover", trench.cover(), GroundJson::cover)
                .object("foretold", foretold, GroundJson::foretold);
    }

    private static Fields cover(Cover cover) {
        return new Fields()
                .text("of", GroundTerms.COVERS.say(cover.material()))
                .number("thick", cover.thickness().centimetres() / CM)
                .number("conductivity", CoverHeat.of(cover).conductivity());
    }

    private static Fields foretold(GroundForetold ground) {
        double safe = ground.safeDepth();
        return new Fields()
                .day("digBefore", ground.digBefore())
                .day("potsIn", ground.potsIn())
                .day("firstFrost", ground.firstFrost())
                .list("inBand", ground.inBand(), GroundJson::days)
                .day("coldestOn", ground.covered().coldestDay())
                .number("coldestC", ground.covered().wave().minimum())
                .object("frozenAtPots", ground.frozen(), GroundJson::days)
                .object("shut", ground.shut(), GroundJson::days)
                .object(
                        "frost",
                        new Fields()
                                .number("chance", ground.chance())
                                .number("otherwise", ground.otherwise())
                                .decimal("safeDepth", Optional.of(safe).filter(Double::isFinite)))
                .list(
                        "weeks",
                        weeks(ground),
                        week -> new Fields().day("day", week.getKey()).number("c", week.getValue()));
    }

    private static List<Map.Entry<LocalDate, Double>> weeks(GroundForetold ground) {
        return ground.winter()
                .start()
                .datesUntil(ground.winter().endExclusive(), Period.ofWeeks(1))
                .map(day -> Map.entry(day, ground.on(day)))
                .toList();
    }

    private static Fields days(DaySpan days) {
        return new Fields().day("from", days.start()).day("untilExclusive", days.endExclusive());
    }
}
