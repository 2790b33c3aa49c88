// SPDX-License-Identifier: Apache-2.0
package sillbook.exchange;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sillbook.model.LoggerFormat;
import sillbook.model.Place;
import sillbook.words.Provisos;
import sillbook.words.Temperatures;
import sillbook.words.logger.Compared;
import sillbook.words.logger.Counted;
import sillbook.words.logger.Counted.Span;
import sillbook.words.logger.Counted.Strange;
import sillbook.words.logger.Understood;
import sillbook.words.logger.Understood.Column;
import sillbook.words.logger.Understood.Found;
import sillbook.words.logger.Understood.Proof;
import sillbook.words.logger.UnderstoodWords;

/** What {@code sillbook import} answers of a thermometer's file, as JSON. */
public final class LoggerJson {
    private static final double MILLI = 1000;

    private LoggerJson() {}

    /** Of a file that leaves something open, so that nothing of it could be counted. */
    public static String asking(Place place, Understood understood) {
        return write(place, understood, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** Of one whose bytes were taken in for that place before, so that it was not gone through again. */
    public static String known(Place place, Understood understood) {
        return asking(place, understood);
    }

    /**
     * Of one that is clear.
     *
     * @param step the name of the step it made; empty where nothing is kept
     */
    public static String counted(
            Place place, Understood understood, Counted counted, Compared compared, Optional<String> step) {
        return write(place, understood, Optional.of(counted), Optional.of(compared), step);
    }

    private static String write(
            Place place,
            Understood understood,
            Optional<Counted> counted,
            Optional<Compared> compared,
            Optional<String> step) {
        Fields fields = new Fields()
                .text("of", "readings")
                .text("place", place.name())
                .flag("kept", step.isPresent())
                .text("step", step)
                .list(
                        "asks",
                        understood.questions(),
                        question -> new Fields()
                                .code("question", question)
                                .text("says", new UnderstoodWords(understood).asks(question)))
                .object("file", file(understood))
                .object("counts", counted, LoggerJson::counts)
                .object("beside", compared, LoggerJson::beside)
                .list("differences", compared.map(Compared::differences).orElse(List.of()), LoggerJson::difference)
                .list("strange", counted.map(Counted::strange).orElse(List.of()), LoggerJson::strange);
        return Answer.write(fields, new Provisos(List.of(), new UnderstoodWords(understood).assumed()));
    }

    private static Fields file(Understood understood) {
        return new Fields()
                .code("code", understood.code())
                .number("linesBefore", understood.linesBefore())
                .flag("heading", understood.hasHeading())
                .code("separator", understood.separator().value())
                .code("decimalSign", understood.decimalSign().value())
                .code("instants", understood.when().form())
                .text("dates", understood.dates().order().map(Found::value).map(Fields::code))
                .whole("proof", understood.dates().proof().map(Proof::line))
                .text("zone", understood.clock().zone().value().getId())
                .flag("zoneInLines", understood.clock().rowsNameZone())
                .whole("column", understood.temperature().map(Column::number))
                .numbers(
                        "columns",
                        understood.temperatures().stream().map(Column::number).toList())
                .text("unit", Temperatures.unit(understood.unit().value()))
                .flag("unitInLines", understood.rowsNameUnit())
                .texts("devices", understood.devices())
                .text("device", understood.device())
                .texts("toldBefore", toldBefore(understood.toldBefore()));
    }

    /** Which of the fields above rest on what was told of an earlier file; and whether any temperature was told to be suspicious. */
    private static List<String> toldBefore(LoggerFormat told) {
        Map<String, Boolean> fields = new LinkedHashMap<>();
        fields.put("separator", told.separator().isPresent());
        fields.put("decimalSign", told.decimalSign().isPresent());
        fields.put("dates", told.dates().isPresent());
        fields.put("zone", told.zone().isPresent());
        fields.put("column", told.column().isPresent());
        fields.put("unit", told.unit().isPresent());
        fields.put("device", told.device().isPresent());
        fields.put("suspicious", !told.suspicious().isEmpty());
        fields.values().removeIf(isTold -> !isTold);
        return List.copyOf(fields.keySet());
    }

    private static Fields counts(Counted counted) {
        return new Fields()
                .number("readings", counted.readings())
                .number("withoutValue", counted.withoutValue())
                .number("others", counted.others())
                .number("suspicious", counted.suspicious())
                .number("ahead", counted.ahead())
                .number("unreadable", counted.unreadable())
                .text("first", counted.span().map(Span::first).map(Instant::toString))
                .text("last", counted.span().map(Span::last).map(Instant::toString));
    }

    private static Fields beside(Compared compared) {
        return new Fields()
                .number("new", compared.fresh())
                .number("same", compared.known())
                .number("twice", compared.repeated())
                .number("changed", compared.changed())
                .number("differing", compared.differing())
                .flag("takenInBefore", compared.isTakenIn());
    }

    private static Fields difference(Compared.Difference one) {
        return new Fields()
                .number("line", one.line())
                .number("celsius", one.file() / MILLI)
                .number("journal", one.journal() / MILLI)
                .flag("changed", one.isChanged());
    }

    private static Fields strange(Strange strange) {
        return new Fields()
                .number("line", strange.line())
                .text("written", strange.written())
                .decimal("celsius", strange.milli().map(milli -> milli / MILLI));
    }
}
