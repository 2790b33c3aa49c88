// SPDX-License-Identifier: Apache-2.0
package sillbook.words.line;

import java.time.DateTimeException;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import sillbook.change.WriteDown;
import sillbook.model.Day;
import sillbook.model.Settings;
import sillbook.model.Settings.Colours;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.text.Fold;
import sillbook.words.ColourTerms;
import sillbook.words.Days;
import sillbook.words.Heard;
import sillbook.words.Looking;
import sillbook.words.Terms;

/** {@code set season start 1 jan}: how the journal counts and writes. */
final class SetForm implements Form {
    private static final Slot<MonthDay> SEASON = Slot.one("", Senses.longest(SetForm::seasonStart));
    private static final Slot<TemperatureUnit> TEMPERATURE =
            Slot.one("", Senses.led(List.of("temperature", "temperatures"), Terms.TEMPERATURE_UNITS));
    private static final Slot<LengthUnit> LENGTH =
            Slot.one("", Senses.led(List.of("length", "lengths"), Terms.LENGTH_UNITS));
    private static final Slot<Colours> COLOURS =
            Slot.one("", Senses.led(List.of("colours", "colors", "colour"), ColourTerms.COLOURS));
    private static final Slot<ZoneId> ZONE = Slot.one("", Senses.longest((words, bench) -> zone(words)));
    private static final Slot<Boolean> DAILY_CARE = Slot.one(
            "",
            Senses.matching("daily care (on|off)", said -> Heard.as(said.text(1).equals("on"))));
    private static final Slot<Boolean> SETTING = Slot.one("setting", (line, from, bench) -> Optional.empty());

    @Override
    public FormHelp help() {
        return FormHelp.of(
                "setting",
                "Season start and a day; temperature C or F; length cm or in; colours dark, light, either or none; daily care on "
                        + "or off; zone and its name.",
                "set season start 1 jan",
                "set temperature F, length in",
                "set zone Europe/Vienna");
    }

    @Override
    public List<String> keywords() {
        return List.of("set");
    }

    @Override
    public List<Slot<?>> slots() {
        return List.of(SEASON, TEMPERATURE, LENGTH, COLOURS, ZONE, DAILY_CARE, SETTING);
    }

    @Override
    public int wanting(Filled filled) {
        return slots().stream().anyMatch(filled::has) ? 0 : 1;
    }

    private static Optional<Heard<MonthDay>> seasonStart(String words, Bench bench) {
        String said = Fold.of(words);
        for (String lead : List.of("season start ", "season starts ", "season from ")) {
            if (said.startsWith(lead)) {
                return Optional.of(bench.days(Looking.AHEAD)
                        .parse(words.substring(lead.length()))
                        .map(Day::likely)
                        .map(MonthDay::from));
            }
        }
        return Optional.empty();
    }

    private static Optional<Heard<ZoneId>> zone(String words) {
        if (!Fold.of(words).startsWith("zone ")) {
            return Optional.empty();
        }
        String name = words.substring("zone ".length()).strip();
        try {
            return Optional.of(Heard.as(ZoneId.of(name)));
        } catch (DateTimeException unknown) {
            return Optional.of(Heard.not("no zone", "'" + name + "' is no time zone. Write it as Europe/Vienna."));
        }
    }

    @Override
    public void draw(Filled filled, Draft draft) {
        if (wanting(filled) > 0) {
            draft.ask("which setting?", "Set what? Write a setting and its value, as: season start 1 jan.");
            return;
        }
        Settings before = draft.bench().journal().settings();
        filled.get(SEASON).ifPresent(day -> draft.means("a season starts on " + Days.date(day)));
        filled.get(TEMPERATURE).ifPresent(unit -> draft.means("temperatures in " + Terms.TEMPERATURE_UNITS.say(unit)));
        filled.get(LENGTH)
                .ifPresent(unit -> draft.means("lengths in " + (unit == LengthUnit.INCHES ? "inches" : "cm")));
        filled.get(COLOURS).ifPresent(colours -> draft.means("colours: " + ColourTerms.COLOURS.say(colours)));
        filled.get(ZONE).ifPresent(zone -> draft.means("days begin at midnight in " + zone.getId()));
        filled.get(DAILY_CARE)
                .ifPresent(on -> draft.means(on ? "Today asks for daily care" : "Today does not ask for daily care"));
        draft.change(new WriteDown(new Settings(
                filled.get(ZONE).orElse(before.zone()),
                filled.get(SEASON).orElse(before.seasonStart()),
                filled.get(TEMPERATURE).orElse(before.temperatures()),
                filled.get(LENGTH).orElse(before.lengths()),
                filled.get(COLOURS).orElse(before.colours()),
                filled.get(DAILY_CARE).orElse(before.dailyCare()))));
    }
}
