// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.List;
import java.util.Optional;
import sillbook.change.CareFor;
import sillbook.change.Change;
import sillbook.change.Flower;
import sillbook.change.Plant;
import sillbook.model.Day;
import sillbook.model.Happening.BloomPoint;
import sillbook.model.Happening.Care;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.State;
import sillbook.ui.screen.form.Answers;
import sillbook.ui.screen.form.Blank;
import sillbook.ui.screen.form.Reading;
import sillbook.ui.screen.form.Sheet;
import sillbook.words.Heard;

/**
 * Something that only wants its day: potted, the first flower, past bloom, a care.
 *
 * @param what it is
 * @param place where the pots are put, when they are potted
 */
public record DaySheet(Pots pots, What what, Optional<Id<Place>> place) implements Sheet {
    private static final Blank DAY = new Blank("Day", 20);

    /** What happened on that day. */
    public enum What {
        POTTED("potted", "pot up"),
        FIRST_FLOWER("first flower", "first flower"),
        PAST_BLOOM("past bloom", "past bloom"),
        AFTERCARE("fed", "fed");

        private final String title;
        private final String records;

        What(String title, String records) {
            this.title = title;
            this.records = records;
        }
    }

    @Override
    public String title(State state) {
        return pots.title(state, "Write down: " + what.title + ",");
    }

    @Override
    public boolean isSlip() {
        return true;
    }

    @Override
    public List<Blank> blanks() {
        return List.of(DAY);
    }

    @Override
    public Answers prefilled() {
        return Answers.NONE.with(DAY, "today");
    }

    @Override
    public Reading read(State state, Answers answers) {
        Heard<Day> day = Blanks.dayThatWas(state, answers.text(DAY));
        Reading reading = Reading.NOTHING.with(DAY, Blanks.remark(day));
        return day.value().map(on -> reading.meaning(change(on))).orElse(reading);
    }

    private Change change(Day day) {
        return switch (what) {
            case POTTED -> new Plant(pots.fit(), place, day);
            case FIRST_FLOWER -> new Flower(pots.fit(), BloomPoint.FIRST_FLOWER, Optional.empty(), day);
            case PAST_BLOOM -> new Flower(pots.fit(), BloomPoint.PAST_BLOOM, Optional.empty(), day);
            case AFTERCARE -> new CareFor(pots.fit(), Care.FED, day);
        };
    }

    @Override
    public Aside aside(State state, Answers answers, Blank blank) {
        return Aside.of("", "The day it was: today, fri, 14 nov, about 5 jan.", "");
    }

    @Override
    public String recordWords() {
        return what.records;
    }

    @Override
    public Optional<String> draftName() {
        return Optional.empty();
    }
}
