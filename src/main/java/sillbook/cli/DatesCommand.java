// SPDX-License-Identifier: Apache-2.0
package sillbook.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sillbook.cli.DayOption.WrongOption;
import sillbook.exchange.DatesJson;
import sillbook.handbook.FigureInForce;
import sillbook.handbook.Handbook;
import sillbook.handbook.Origin;
import sillbook.model.Kind;
import sillbook.model.OwnFigure.Range;
import sillbook.reckon.dates.Facts;
import sillbook.reckon.dates.Milestone;
import sillbook.reckon.dates.Schedule;
import sillbook.reckon.dates.Warning;
import sillbook.reckon.dates.Window;
import sillbook.words.Days;
import sillbook.words.WarningWords;

/** Works out the days of a pot without a journal. */
@Command(
        name = "dates",
        description = {
            "Work out when the stages of a pot begin: forward from its potting, backward from a wished day.",
            "At least one day is wanted. Weeks are one number, or low,typical,high."
        })
final class DatesCommand implements Callable<Integer> {
    private final Printer printer;
    private final Supplier<LocalDate> today;

    @Option(
            names = "--kind",
            required = true,
            paramLabel = "K",
            description = "A kind, perhaps with its class: tulip triumph.")
    private String kind = "";

    @Option(names = "--potted", paramLabel = "DAY", description = "The day it was potted and watered.")
    private Optional<String> potted = Optional.empty();

    @Option(names = "--cold-from", paramLabel = "DAY", description = "The day its cold began; else that of potting.")
    private Optional<String> coldFrom = Optional.empty();

    @Option(names = "--out", paramLabel = "DAY", description = "The day it was really brought out.")
    private Optional<String> out = Optional.empty();

    @Option(names = "--bloom", paramLabel = "DAY", description = "The day it should flower.")
    private Optional<String> bloom = Optional.empty();

    @Option(
            names = "--cold-weeks",
            paramLabel = "N|L,T,H",
            description = "The whole cold it needs, dry weeks included.")
    private Optional<String> coldWeeks = Optional.empty();

    @Option(
            names = "--after-weeks",
            paramLabel = "N|L,T,H",
            description = "From the end of the cold to the first flower.")
    private Optional<String> afterWeeks = Optional.empty();

    @Option(names = "--cooled", paramLabel = "WEEKS", description = "Weeks its bulbs were cooled dry before.")
    private Optional<String> cooled = Optional.empty();

    @Option(names = "--json", description = "As JSON.")
    private boolean json;

    DatesCommand(Printer printer, Supplier<LocalDate> today) {
        this.printer = printer;
        this.today = today;
    }

    @Override
    public Integer call() {
        Handbook handbook = Handbook.standard();
        Kind known = handbook.find(kind)
                .orElseThrow(() -> new WrongOption(
                        "'" + kind + "' is no kind of the handbook. Write one, as tulip triumph or hyacinth."));
        DatesNeed need = DatesNeed.of(handbook, known, coldWeeks, afterWeeks);
        Facts facts = facts();
        facts.disorder().ifPresent(disorder -> {
            throw new WrongOption(Days.full(disorder.day()) + " is before " + Days.full(disorder.notBefore())
                    + ", which has to come first. Write the days in order.");
        });
        Schedule schedule = Schedule.reckon(need.need(), facts)
                .orElseThrow(() ->
                        new WrongOption("No day is given. Write --potted, --cold-from, --out or --bloom and a day."));
        print(known, need, schedule);
        return ExitCode.DONE;
    }

    private Facts facts() {
        Facts facts = Facts.NONE;
        if (potted.isPresent()) {
            facts = facts.withPotted(day(potted.get()));
        }
        if (coldFrom.isPresent()) {
            facts = facts.with(Milestone.COLD, day(coldFrom.get()));
        }
        if (out.isPresent()) {
            facts = facts.with(Milestone.COOL_ROOM, day(out.get()));
        }
        if (bloom.isPresent()) {
            facts = facts.withWish(day(bloom.get()));
        }
        return cooled.isPresent() ? facts.withDryWeeks(WeeksOption.one(cooled.get())) : facts;
    }

    private LocalDate day(String text) {
        return DayOption.ahead(text, today.get());
    }

    private void print(Kind known, DatesNeed need, Schedule schedule) {
        List<String> assumed = new ArrayList<>();
        schedule.assumed().forEach(assumption -> assumed.add("the cold began on the day of potting"));
        if (json) {
            printer.json(DatesJson.write(known, potted.map(this::day), schedule, need.figures(), assumed));
            return;
        }
        printer.line(known.toString());
        for (Milestone milestone : Milestone.values()) {
            schedule.stages().at(milestone).ifPresent(window -> printer.line(said(milestone, window)));
        }
        need.figures().forEach(figure -> printer.line(said(figure)));
        assumed.forEach(each -> printer.say("Assumed: " + each + "."));
        for (Warning warning : schedule.warnings()) {
            printer.say("! " + new WarningWords().say(warning));
        }
    }

    private static String said(Milestone milestone, Window window) {
        String stage = switch (milestone) {
            case COLD -> "into the cold";
            case COOL_ROOM -> "into the cool room";
            case WARM_ROOM -> "into the warm room";
            case BLOOM -> "first flower";
            case AFTER_BLOOM -> "past bloom";
        };
        return stage + ": " + Days.full(window.likely()) + " (" + Days.full(window.earliest()) + " to "
                + Days.full(window.latest()) + ")";
    }

    private static String said(FigureInForce figure) {
        Range range = figure.range();
        String source = figure.origin() == Origin.OWN_FOR_KIND ? "given" : String.join(" ", figure.sources());
        return figure.name().key() + ": " + WeeksOption.number(range.low()) + ", " + WeeksOption.number(range.typical())
                + ", " + WeeksOption.number(range.high()) + " "
                + figure.name().unit().name().toLowerCase(Locale.ROOT) + ", " + source;
    }
}
