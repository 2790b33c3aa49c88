// SPDX-License-Identifier: Apache-2.0
package sillbook.words;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import sillbook.model.Findings;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Place;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.model.Temperature;
import sillbook.season.Clue;

/** What speaks for a cause of failure, as a line. */
public record ClueWords(Journal journal) implements Clue.Cases<String> {

    /** {@code Wed  6 Jan  jotted: frost all week}. */
    public String say(Clue clue) {
        return clue.fold(this);
    }

    @Override
    public String tooCold(Clue.TooCold clue) {
        return read(
                clue.reading().on(),
                clue.reading().place(),
                clue.reading().between().low());
    }

    @Override
    public String tooWarm(Clue.TooWarm clue) {
        return read(
                clue.reading().on(),
                clue.reading().place(),
                clue.reading().between().high());
    }

    private String read(LocalDate day, Id<Place> place, Temperature read) {
        return Days.column(day) + "  " + place(place) + ": " + temperature(read) + " (reading)";
    }

    @Override
    public String jotted(Clue.Jotted clue) {
        return Days.column(clue.day()) + "  jotted: " + clue.text();
    }

    @Override
    public String found(Clue.Found clue) {
        List<String> seen = new ArrayList<>();
        Findings findings = clue.findings();
        findings.moisture().map(Terms.MOISTURES::say).ifPresent(seen::add);
        findings.water().map(Terms.WATERS::say).ifPresent(seen::add);
        findings.troubles().stream().sorted().map(Terms.TROUBLES::say).forEach(seen::add);
        if (!findings.note().isEmpty()) {
            seen.add(findings.note());
        }
        return Days.column(clue.day()) + "  seen: " + String.join(", ", seen);
    }

    @Override
    public String weeksIn(Clue.WeeksIn clue) {
        return (clue.isOver() ? "" : "still counting: ")
                + PotWords.cold(clue.daysIn(), clue.daysColdEnough())
                + " of " + OriginMarks.marked(clue.figure());
    }

    @Override
    public String beside(Clue.Beside clue) {
        return "fruit is kept in the " + place(clue.place());
    }

    @Override
    public String coolRoom(Clue.CoolRoom clue) {
        return Days.column(clue.broughtIn()) + "  brought in; " + Counts.of(clue.days(), "day") + " in a cool room of "
                + OriginMarks.marked(clue.figure());
    }

    @Override
    public String notChecked(Clue.NotChecked clue) {
        return "not checked in the " + place(clue.place()) + " since it went in, " + Days.day(clue.since());
    }

    @Override
    public String neverRead(Clue.NeverRead clue) {
        return "no reading from while it stood there" + in(clue.places(), ": ", " and ");
    }

    @Override
    public String readBetween(Clue.ReadBetween clue) {
        return "no reading " + (clue.isLow() ? "under " : "over ") + temperature(clue.limit()) + " since "
                + Days.date(clue.since());
    }

    @Override
    public String nothingNoted(Clue.NothingNoted clue) {
        return "none noted" + in(clue.places(), " in ", " or ");
    }

    @Override
    public String foundMoist(Clue.FoundMoist clue) {
        return clue.checks() == 0
                ? "nobody wrote whether it was dry or wet"
                : "neither dry nor wet at " + Counts.of(clue.checks(), "check");
    }

    @Override
    public String neverBroughtIn(Clue.NeverBroughtIn clue) {
        return "never brought in from the cold";
    }

    @Override
    public String needsNoCold(Clue.NeedsNoCold clue) {
        return "it needs no cold";
    }

    private String in(Collection<Id<Place>> places, String before, String between) {
        return places.isEmpty()
                ? ""
                : before + places.stream().map(place -> "the " + place(place)).collect(Collectors.joining(between));
    }

    private String place(Id<Place> place) {
        return new PotNames(journal).place(place);
    }

    private String temperature(Temperature temperature) {
        TemperatureUnit unit = journal.settings().temperatures();
        return Temperatures.say(temperature, unit);
    }
}
