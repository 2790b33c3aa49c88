// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.util.Optional;
import sillbook.reckon.soil.YearlyWave;
import sillbook.words.Provisos;
import sillbook.words.SoilFigures;

/** How cold it is at a depth, as JSON. */
public final class SoilJson {
    private SoilJson() {}

    /** The document of {@code sillbook reckon soil --json}. */
    public static String write(SoilFigures soil, Provisos provisos) {
        YearlyWave air = soil.air();
        Fields fields = new Fields()
                .number("mean", air.mean())
                .number("amplitude", air.amplitude())
                .number("minimumDay", air.coldest())
                .number("dampingDepth", soil.ground().dampingDepth(YearlyWave.YEAR))
                .object("atDepth", atDepth(soil))
                .list(
                        "daysAtOrBelow",
                        soil.limits(),
                        limit -> new Fields()
                                .number("limit", limit)
                                .number("days", soil.atDepth().daysUpTo(limit)))
                .list(
                        "stays",
                        soil.stays(),
                        stay -> new Fields()
                                .text(
                                        "from",
                                        SoilFigures.day(stay.from()).toString().substring(2))
                                .text(
                                        "to",
                                        SoilFigures.day(stay.to()).toString().substring(2)))
                .object(
                        "frost",
                        new Fields()
                                .number("chance", soil.frost().at(soil.depth()))
                                .decimal(
                                        "safeDepth",
                                        Optional.of(soil.frost().safeDepth()).filter(Double::isFinite)));
        return Answer.write(fields, provisos);
    }

    private static Fields atDepth(SoilFigures soil) {
        YearlyWave wave = soil.atDepth();
        return new Fields()
                .number("depth", soil.depth())
                .number("mean", wave.mean())
                .number("amplitude", wave.amplitude())
                .number("minimum", wave.minimum())
                .number("maximum", wave.maximum())
                .number("minimumDay", wave.coldest())
                .number("lagDays", soil.lag());
    }
}
