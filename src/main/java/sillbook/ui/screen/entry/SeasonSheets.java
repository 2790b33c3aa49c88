// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.entry;

import java.util.Collection;
import java.util.List;
import sillbook.handbook.FigureName;
import sillbook.model.Labels;
import sillbook.model.Pot;
import sillbook.model.Settings;
import sillbook.ui.screen.form.Answers;
import sillbook.words.ColourTerms;
import sillbook.words.Days;
import sillbook.words.Terms;

/** Forms of notes, what is wished for, the grower's own figures, and the settings. */
final class SeasonSheets {
    private static final Part NOTE = Part.of("Note", 50, "note ", "In your own words, as long as you like.");

    private SeasonSheets() {}

    /** A note on some pots, of today. */
    static LineSheet jot(String labels) {
        Part words = Part.of("Note", 56, "", NOTE.hint()).after(": ").wanted();
        return LineSheet.of("Jot on " + labels, "note on " + labels, "note " + labels, List.of(words));
    }

    /** What should flower when, by some pots or by any of a kind. */
    static LineSheet wish(Collection<Pot> pots) {
        String labels = Labels.say(pots.stream().map(Pot::label).toList());
        Part whose = Part.of("What", 30, "", "Pots by their labels, or a kind: T4 T5, tulip.")
                .following();
        Part when = Part.of("For", 24, "", "A day, days, or a feast: 30 jan, 2 to 9 mar, for easter.")
                .wanted();
        return LineSheet.of("New wish", "new wish", "wish", List.of(whose, when, NOTE))
                .filled(Answers.NONE.with(whose.blank(), labels));
    }

    /** What should flower when, with all that can be asked for. */
    static LineSheet wishInFull() {
        List<Part> parts = List.of(
                Part.of("What", 24, "", "A kind, as tulip; nothing for whatever flowers.")
                        .following(),
                Part.of("For", 30, "", "A day, days, or a feast, with its year if it is not the next: 14 feb 2028.")
                        .wanted(),
                Part.of("Manner", 12, "", "every day, for flowers on each of the days; nothing for one of them."),
                Part.of("Pots", 6, "", "How many are to be in flower at once.").with(" pots"),
                Part.of("Scent", 10, "", "scented, for what smells; nothing for anything."),
                Part.of("Colour", 20, "colour ", "A word its colour has: white."),
                Part.of("Up to", 10, "up to ", "The full height it may have: 30 cm."),
                Part.of("Stage", 20, "", "On the day: buds in colour, first open, or full."),
                Part.of("At", 20, "", "The place it is to stand at."),
                NOTE);
        return LineSheet.of("New wish", "new wish in full", "wish", parts);
    }

    /**
     * A figure of the grower's own.
     *
     * @param holder a variety's name, a kind, or {@code all hardy}
     * @param now as it is now; may be empty
     */
    static LineSheet figure(String holder, FigureName figure, String now) {
        Part value = Part.of(
                        "Own figure",
                        24,
                        "",
                        "One value, or the least, the usual and the most: 12 15 17. None takes your own back.")
                .following()
                .wanted();
        return LineSheet.of(
                        Terms.FIGURES.say(figure) + " of " + holder,
                        "own figure",
                        "figure " + holder + " " + Terms.FIGURES.say(figure),
                        List.of(value, NOTE))
                .filled(Answers.NONE.with(value.blank(), now));
    }

    static LineSheet settings(Settings settings) {
        Part season = Part.of("Season", 12, "season start ", "The day a season begins: 1 jul; 1 jan suits the south.");
        Part temperatures = Part.of("Degrees", 6, "temperature ", "In C or in F; the other is read when written.");
        Part lengths = Part.of("Lengths", 6, "length ", "In cm or in inches; the other is read when written.");
        Part colours = Part.of("Colours", 10, "colours ", "For a dark background, a light one, either, or none.");
        Part care = Part.of("Daily care", 6, "daily care ", "Whether Today has its line for daily care: on or off.");
        Part zone = Part.of("Zone", 30, "zone ", "Whose midnight begins a day: Europe/Vienna.");
        Answers now = Answers.NONE
                .with(season.blank(), Days.date(settings.seasonStart()))
                .with(temperatures.blank(), Terms.TEMPERATURE_UNITS.say(settings.temperatures()))
                .with(lengths.blank(), Terms.LENGTH_UNITS.say(settings.lengths()))
                .with(colours.blank(), colours(settings))
                .with(care.blank(), settings.dailyCare() ? "on" : "off")
                .with(zone.blank(), settings.zone().getId());
        return LineSheet.of(
                        "Settings of this journal",
                        "settings",
                        "set",
                        List.of(season.following(), temperatures, lengths, colours, care, zone))
                .filled(now);
    }

    private static String colours(Settings settings) {
        return settings.colours() == Settings.Colours.ASK ? "" : ColourTerms.COLOURS.say(settings.colours());
    }
}
