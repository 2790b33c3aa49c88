// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import sillbook.change.Move;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Stage;
import sillbook.season.Job;
import sillbook.season.Readiness;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.State;
import sillbook.ui.screen.form.Answers;
import sillbook.ui.screen.form.Blank;
import sillbook.ui.screen.form.Note;
import sillbook.ui.screen.form.Reading;
import sillbook.ui.screen.form.Remark;
import sillbook.ui.screen.form.Sheet;
import sillbook.ui.screen.form.Suggestion;
import sillbook.words.Days;
import sillbook.words.Heard;
import sillbook.words.PotNames;
import sillbook.words.Terms;
import sillbook.words.Weeks;

/**
 * Pots are carried to a place.
 *
 * @param to the place it opens with, by name; may be empty
 * @param stage the stage it opens with, in words; empty for what the place serves
 */
public record MoveSheet(Pots pots, String to, String stage) implements Sheet {
    private static final Blank TO = new Blank("To", 20);
    private static final Blank STAGE = new Blank("Stage", 20);
    private static final Blank MANY = new Blank("How many", 6);
    private static final Blank DAY = new Blank("Day", 20);

    public static MoveSheet of(Pots pots) {
        return new MoveSheet(pots, "", "");
    }

    /** As a job asks for it. */
    public static MoveSheet of(State state, Pots pots, Job.OfPots job) {
        String to = job.route()
                .to()
                .map(there -> new PotNames(state.journal()).place(there.place()))
                .orElse("");
        return new MoveSheet(pots, to, Terms.STAGES.say(job.route().stage()));
    }

    @Override
    public String title(State state) {
        return pots.title(state, "Move");
    }

    @Override
    public boolean isSlip() {
        return true;
    }

    @Override
    public List<Blank> blanks() {
        return pots.fit().size() > 1 ? List.of(TO, MANY, STAGE, DAY) : List.of(TO, STAGE, DAY);
    }

    @Override
    public Answers prefilled() {
        return Answers.NONE.with(TO, to).with(STAGE, stage).with(DAY, "today");
    }

    @Override
    public Reading read(State state, Answers answers) {
        Heard<Place> place = Blanks.place(state, answers.text(TO));
        Heard<Stage> where =
                answers.isBlank(STAGE) ? place.map(Place::serves) : Terms.STAGES.parse(answers.text(STAGE));
        Heard<Day> day = Blanks.dayThatWas(state, answers.text(DAY));
        HowMany some = new HowMany(state, pots.fit());
        Heard<Integer> many = some.parse(answers.text(MANY));
        List<Id<Pot>> going = some.going(many.value(), place.value(), where.value());
        Reading reading = Reading.NOTHING
                .with(TO, placeRemark(state, answers, place, going))
                .with(MANY, some.remark(many, going))
                .with(STAGE, stageRemark(answers, where))
                .with(DAY, Blanks.remark(day));
        for (String note : List.of(shortOfCold(state, where, going), pots.leftOutWords(state, "not growing"))) {
            reading = note.isEmpty() ? reading : reading.with(new Note("", note));
        }
        Optional<Stage> stage = where.value().filter(known -> many.value().isPresent());
        return meaning(reading, going, place.value(), stage, day.value());
    }

    private static Reading meaning(
            Reading reading, List<Id<Pot>> going, Optional<Place> place, Optional<Stage> stage, Optional<Day> day) {
        if (place.isEmpty() || stage.isEmpty() || day.isEmpty()) {
            return reading;
        }
        return reading.meaning(new Move(going, place.get().id(), stage.get(), day.get()));
    }

    private Remark placeRemark(State state, Answers answers, Heard<Place> place, List<Id<Pot>> going) {
        if (answers.isBlank(TO)) {
            return Remark.wrong("a place", "To where? Write a place, as " + anExample(state) + ". Nothing was moved.");
        }
        return place.fold(found -> Blanks.remark(state, found, going), Blanks::wrong);
    }

    private static String anExample(State state) {
        return state.journal().places().all().stream()
                .findFirst()
                .map(Place::name)
                .orElse("cellar");
    }

    private static Remark stageRemark(Answers answers, Heard<Stage> stage) {
        if (answers.isBlank(STAGE)) {
            return Remark.understood(stage.value()
                    .map(Terms.STAGES::say)
                    .map(said -> said + ", as the place serves")
                    .orElse(""));
        }
        return stage.fold(read -> Remark.understood(""), Blanks::wrong);
    }

    /** Which of the pots would come in before they are cold enough. */
    private String shortOfCold(State state, Heard<Stage> stage, List<Id<Pot>> going) {
        if (stage.value().filter(Stage.COLD::isBefore).isEmpty()) {
            return "";
        }
        Map<Integer, List<String>> byWeeks = new TreeMap<>();
        for (Id<Pot> pot : going) {
            int halves = halfWeeksShort(state, pot);
            if (halves > 0) {
                byWeeks.computeIfAbsent(halves, some -> new ArrayList<>())
                        .add(state.journal().pots().get(pot).label());
            }
        }
        return byWeeks.isEmpty() ? "" : new ShortOfCold(byWeeks).words();
    }

    private static int halfWeeksShort(State state, Id<Pot> pot) {
        Optional<Readiness> readiness = state.almanac().pot(pot).readiness();
        return readiness
                .map(Readiness::coldEnoughOn)
                .map(day -> (int) state.shown().today().until(day, ChronoUnit.DAYS))
                .map(days -> (int) Math.round(Weeks.ofDays(days * 2)))
                .orElse(0);
    }

    @Override
    public List<Suggestion> suggestions(State state, Answers answers, Blank blank) {
        if (blank.equals(TO)) {
            return Blanks.places(state, answers.text(TO));
        }
        return blank.equals(STAGE)
                ? Terms.STAGES.beginning(answers.text(STAGE)).stream()
                        .map(stage -> Suggestion.of(Terms.STAGES.say(stage), ""))
                        .toList()
                : List.of();
    }

    @Override
    public Aside aside(State state, Answers answers, Blank blank) {
        if (blank.equals(MANY)) {
            return Aside.of("", "So many of them, those most ready first, then by label.", "Leave it blank for all.");
        }
        String first = blank.equals(DAY)
                ? "The day it was moved: today, fri, 14 nov. Today is "
                        + Days.full(state.shown().today()) + "."
                : "Type a few letters. Up Down choose, Tab takes it and goes on.";
        return Aside.of("", first, "Nothing is moved until you record.");
    }

    @Override
    public String recordWords() {
        return pots.fit().size() > 1 ? "move them, one step" : "move 1, one step";
    }

    @Override
    public Optional<String> draftName() {
        return Optional.of("move");
    }
}
