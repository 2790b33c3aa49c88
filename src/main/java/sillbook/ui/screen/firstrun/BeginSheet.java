// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.firstrun;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sillbook.change.Change;
import sillbook.change.Together;
import sillbook.change.WriteDown;
import sillbook.model.Place;
import sillbook.model.Season;
import sillbook.model.Settings;
import sillbook.model.Settings.LengthUnit;
import sillbook.model.Settings.TemperatureUnit;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.State;
import sillbook.ui.screen.form.Answers;
import sillbook.ui.screen.form.Blank;
import sillbook.ui.screen.form.Reading;
import sillbook.ui.screen.form.Remark;
import sillbook.ui.screen.form.Sheet;
import sillbook.ui.screen.form.Suggestion;
import sillbook.words.Counts;
import sillbook.words.DayReader;
import sillbook.words.Days;
import sillbook.words.Heard;
import sillbook.words.Terms;
import sillbook.words.Vocabulary;

/**
 * What a new book asks first: units, when the season begins, the places. Each may be left as it stands, or all of it.
 *
 * @param settings as the book was begun with them
 */
record BeginSheet(Settings settings) implements Sheet {
    private static final Blank DEGREES = new Blank("Degrees", 12);
    private static final Blank LENGTHS = new Blank("Lengths", 12);
    private static final Blank SEASON = new Blank("Season", 12);
    private static final Blank PLACES = new Blank("Places", 48);

    @Override
    public String title(State state) {
        return "Your own book, to begin with";
    }

    @Override
    public boolean isSlip() {
        return true;
    }

    @Override
    public List<Blank> blanks() {
        return List.of(DEGREES, LENGTHS, SEASON, PLACES);
    }

    @Override
    public Answers prefilled() {
        return Answers.NONE
                .with(DEGREES, Terms.TEMPERATURE_UNITS.say(settings.temperatures()))
                .with(LENGTHS, Terms.LENGTH_UNITS.say(settings.lengths()))
                .with(SEASON, Days.date(settings.seasonStart()));
    }

    /** What is left empty stays as it was. */
    @Override
    public Reading read(State state, Answers answers) {
        Heard<TemperatureUnit> degrees = answers.isBlank(DEGREES)
                ? Heard.as(settings.temperatures())
                : Terms.TEMPERATURE_UNITS.parse(answers.text(DEGREES));
        Heard<LengthUnit> lengths = answers.isBlank(LENGTHS)
                ? Heard.as(settings.lengths())
                : Terms.LENGTH_UNITS.parse(answers.text(LENGTHS));
        Heard<MonthDay> start = start(state, answers.text(SEASON));
        Heard<List<Place>> places =
                NamedPlaces.parse(answers.text(PLACES), state.kit().ids());
        Reading reading = Reading.NOTHING
                .with(DEGREES, remark(degrees.map(unit -> unit == TemperatureUnit.CELSIUS ? "Celsius" : "Fahrenheit")))
                .with(LENGTHS, remark(lengths.map(unit -> unit == LengthUnit.INCHES ? "inches" : "centimetres")))
                .with(SEASON, remark(start.map(from -> season(state.shown().today(), from))))
                .with(PLACES, remark(places.map(BeginSheet::said)));
        Optional<Change> change = degrees.then(inDegrees ->
                        lengths.then(inLengths -> start.then(from -> places.map(named -> change(
                                new Settings(
                                        settings.zone(),
                                        from,
                                        inDegrees,
                                        inLengths,
                                        settings.colours(),
                                        settings.dailyCare()),
                                named)))))
                .value();
        return change.map(reading::meaning).orElse(reading);
    }

    private static Remark remark(Heard<String> heard) {
        return heard.fold(Remark::understood, wrong -> Remark.wrong(wrong.brief(), wrong.sentence()));
    }

    /** A month, or a day of the year. */
    private Heard<MonthDay> start(State state, String text) {
        if (text.isEmpty()) {
            return Heard.as(settings.seasonStart());
        }
        boolean isMonth = text.chars().noneMatch(Character::isDigit);
        return DayReader.back(state.shown().today())
                .parseExact(isMonth ? "1 " + text : text)
                .map(MonthDay::from);
    }

    /** {@code this is season 2026-27}. */
    private static String season(LocalDate today, MonthDay start) {
        return "from " + Days.date(start) + "; this is season "
                + Season.of(today, start).name(start);
    }

    private static String said(List<Place> places) {
        return places.isEmpty() ? "" : Counts.of(places.size(), "place");
    }

    private static Change change(Settings settings, List<Place> places) {
        List<Change> changes = new ArrayList<>(List.of(new WriteDown(settings)));
        places.forEach(place -> changes.add(new WriteDown(place)));
        return new Together("book begun: units, season" + (places.isEmpty() ? "" : ", places"), changes);
    }

    @Override
    public List<Suggestion> suggestions(State state, Answers answers, Blank blank) {
        if (blank.equals(DEGREES)) {
            return suggested(Terms.TEMPERATURE_UNITS, answers.text(blank));
        }
        return blank.equals(LENGTHS) ? suggested(Terms.LENGTH_UNITS, answers.text(blank)) : List.of();
    }

    private static <T> List<Suggestion> suggested(Vocabulary<T> units, String typed) {
        return units.beginning(typed).stream()
                .map(unit -> Suggestion.of(units.say(unit), ""))
                .toList();
    }

    @Override
    public Aside aside(State state, Answers answers, Blank blank) {
        String all = "Enter begins with these, Esc leaves all as it is; , changes them later.";
        if (blank.equals(DEGREES)) {
            return Aside.of("", "C or F for temperatures; the other is read too where you write it.", all);
        }
        if (blank.equals(LENGTHS)) {
            return Aside.of("", "cm or in for pots and shoots; the other is read too where you write it.", all);
        }
        return blank.equals(SEASON)
                ? Aside.of("", "The month a season begins: Jul in the north; Jan suits southern winters.", all)
                : Aside.of("", "Where pots can stand: garage fridge, cellar, stair window (cool room).", all);
    }

    @Override
    public String recordWords() {
        return "begin";
    }

    @Override
    public Optional<String> draftName() {
        return Optional.of("a new book");
    }
}
