// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sillbook.handbook.FigureInForce;
import sillbook.model.Kind;
import sillbook.reckon.dates.Milestone;
import sillbook.reckon.dates.Schedule;
import sillbook.reckon.dates.Warning;
import sillbook.words.WarningWords;

/** The dates of a pot as JSON. */
public final class DatesJson {
    private DatesJson() {}

    /**
     * The document of {@code sillbook reckon dates --json}.
     *
     * @param figures those it rests on
     * @param assumed what was taken for granted, a sentence each
     */
    public static String write(
            Kind kind,
            Optional<LocalDate> potted,
            Schedule schedule,
            List<FigureInForce> figures,
            List<String> assumed) {
        Fields stages = new Fields();
        for (Milestone milestone : Milestone.values()) {
            stages.object(name(milestone), schedule.stages().at(milestone), window -> new Fields().window(window));
        }
        return new Fields()
                .text("kind", kind.toString())
                .day("potted", potted)
                .object("stages", stages)
                .list("figures", figures, DatesJson::figure)
                .list("warnings", schedule.warnings(), DatesJson::warning)
                .texts("assumed", assumed)
                .write();
    }

    private static String name(Milestone milestone) {
        return switch (milestone) {
            case COLD -> "cold";
            case COOL_ROOM -> "coolRoom";
            case WARM_ROOM -> "warmRoom";
            case BLOOM -> "bloom";
            case AFTER_BLOOM -> "afterBloom";
        };
    }

    private static Fields figure(FigureInForce figure) {
        return new Fields()
                .text("name", figure.name().key())
                .number("low", figure.range().low())
                .number("typical", figure.range().typical())
                .number("high", figure.range().high())
                .code("unit", figure.name().unit())
                .text("origin", figure.origin().word())
                .text(
                        "source",
                        figure.sources().isEmpty()
                                ? Optional.empty()
                                : Optional.of(String.join(" ", figure.sources())));
    }

    private static Fields warning(Warning warning) {
        return new Fields().text("code", warning.code()).text("says", new WarningWords().say(warning));
    }
}
