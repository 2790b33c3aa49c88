// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import sillbook.exchange.DatesJson;
import sillbook.exchange.UsedFigure;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.FigureName;
import sillbook.handbook.Handbook;
import sillbook.model.Journal;
import sillbook.model.Kind;
import sillbook.model.OwnFigure.Range;
import sillbook.model.Settings;
import sillbook.reckon.dates.Facts;
import sillbook.reckon.dates.Need;
import sillbook.reckon.dates.Schedule;
import sillbook.season.Figures;
import sillbook.words.FigureValues;
import sillbook.words.Kinds;
import sillbook.words.Provisos;
import sillbook.words.Warned;
import sillbook.words.WarningWords;

/**
 * The days of a pot, as reckoned from what was given.
 *
 * @param potted the day of potting, when it was given
 */
record DatesReckoned(
        Kind kind, Optional<LocalDate> potted, Facts facts, List<UsedFigure> figures, Need need, Schedule schedule) {
    /** Those that can go into a schedule, in its order. */
    private static final List<FigureName> NAMES = List.of(
            FigureName.COLD, FigureName.COLD_LIMIT, FigureName.AFTER_COLD, FigureName.COOL_ROOM, FigureName.IN_BLOOM);

    private static final Settings SETTINGS = Settings.initial(ZoneOffset.UTC);

    static DatesReckoned of(DatesOptions options, LocalDate today) {
        Handbook handbook = Handbook.standard();
        Journal nothing = Journal.empty(SETTINGS);
        Kind kind = options.kind(new Kinds(nothing, handbook));
        Facts facts = options.facts(today);
        List<UsedFigure> figures = figures(options.figures(), Figures.of(nothing, handbook, today), kind);
        Need need = Figures.needOf(range(figures));
        Schedule schedule = Schedule.reckon(need, facts)
                .orElseThrow(() -> new Misused("No day is given to reckon from. Write --potted, --cold-from, --out or"
                        + " --bloom, and a day."));
        return new DatesReckoned(kind, options.potted(today), facts, figures, need, schedule);
    }

    private static List<UsedFigure> figures(Map<FigureName, Range> given, Figures handbook, Kind kind) {
        List<UsedFigure> figures = new ArrayList<>();
        for (FigureName name : NAMES) {
            if (given.containsKey(name)) {
                figures.add(new UsedFigure(name, given.get(name), "given", List.of()));
            } else {
                handbook.find(kind, name).map(DatesReckoned::published).ifPresent(figures::add);
            }
        }
        return figures;
    }

    private static UsedFigure published(FigureInForce figure) {
        return new UsedFigure(figure.name(), figure.range(), figure.origin().word(), figure.sources());
    }

    private static Function<FigureName, Optional<Range>> range(List<UsedFigure> figures) {
        return name -> figures.stream()
                .filter(figure -> figure.name() == name)
                .map(UsedFigure::range)
                .findFirst();
    }

    Sight sight() {
        Provisos provisos = new Provisos(warnings(), assumed());
        DatesText text = new DatesText(SETTINGS);
        return new Sight(
                () -> DatesJson.write(kind, potted, schedule, figures, provisos),
                () -> text.lines(this, provisos.assumed()),
                provisos.warnings(),
                "");
    }

    private List<Warned> warnings() {
        WarningWords words = new WarningWords();
        return schedule.warnings().stream()
                .map(warning -> new Warned(warning.code(), words.say(warning)))
                .toList();
    }

    private List<String> assumed() {
        Stream<String> days = schedule.assumed().stream().map(assumption -> "the cold began on the day of potting");
        Stream<String> dry = need.cold().isEmpty() && facts.dryDays() > 0
                ? Stream.of("the weeks cooled dry count for nothing, for this kind needs no cold")
                : Stream.of();
        Stream<String> lengths = figures.stream()
                .filter(UsedFigure::isAssumed)
                .map(figure -> FigureValues.named(figure.name(), figure.range(), SETTINGS));
        return Stream.of(days, dry, lengths).flatMap(each -> each).toList();
    }
}
