// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.model.Kind;
import sillbook.reckon.dates.Judgement;
import sillbook.reckon.dates.Schedule;
import sillbook.reckon.dates.Stages;
import sillbook.reckon.dates.Window;
import sillbook.words.Provisos;

/** The dates of a pot as JSON. */
public final class DatesJson {
    private DatesJson() {}

    /**
     * The document of {@code sillbook reckon dates --json}.
     *
     * @param potted the day of potting, when it was given
     */
    public static String write(
            Kind kind, Optional<LocalDate> potted, Schedule schedule, List<UsedFigure> figures, Provisos provisos) {
        Fields fields = new Fields()
                .text("kind", kind.toString())
                .day("potted", potted)
                .object("stages", stages(schedule.stages()))
                .object("wish", schedule.judgement(), DatesJson::wish)
                .list("figures", figures, DatesJson::figure);
        return Answer.write(fields, provisos);
    }

    private static Fields stages(Stages stages) {
        return new Fields()
                .object("cold", stages.cold(), DatesJson::window)
                .object("coolRoom", stages.coolRoom(), DatesJson::window)
                .object("warmRoom", window(stages.warmRoom()))
                .object("bloom", window(stages.bloom()))
                .object("afterBloom", stages.afterBloom(), DatesJson::window);
    }

    private static Fields window(Window window) {
        return new Fields().window(window);
    }

    private static Fields wish(Judgement judgement) {
        return new Fields()
                .day("day", judgement.wish())
                .code("verdict", judgement.verdict())
                .text("reason", judgement.reason().map(Fields::code))
                .object("stages", stages(judgement.needed()));
    }

    private static Fields figure(UsedFigure figure) {
        return new Fields()
                .text("name", figure.name().key())
                .number("low", figure.range().low())
                .number("typical", figure.range().typical())
                .number("high", figure.range().high())
                .text("unit", figure.name().unit().word())
                .text("origin", figure.origin())
                .written("source", String.join(" ", figure.sources()));
    }
}
