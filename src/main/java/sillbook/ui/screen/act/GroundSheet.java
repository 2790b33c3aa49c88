// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.List;
import java.util.Optional;
import sillbook.change.TendGround;
import sillbook.model.Day;
import sillbook.model.Happening.Care;
import sillbook.model.Id;
import sillbook.model.JobKind;
import sillbook.model.Place;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.State;
import sillbook.ui.screen.form.Answers;
import sillbook.ui.screen.form.Blank;
import sillbook.ui.screen.form.Reading;
import sillbook.ui.screen.form.Sheet;
import sillbook.words.GroundJobWords;
import sillbook.words.Heard;
import sillbook.words.Terms;

/** The day on which a trench was dug, or covered. */
record GroundSheet(Id<Place> place, Care care) implements Sheet {
    private static final Blank DAY = new Blank("Day", 20);

    @Override
    public String title(State state) {
        return "Write down: " + Terms.CARES.say(care) + ", "
                + state.journal().places().get(place).name();
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
        return day.value()
                .map(on -> reading.meaning(new TendGround(place, care, on)))
                .orElse(reading);
    }

    @Override
    public Aside aside(State state, Answers answers, Blank blank) {
        List<String> steps = GroundJobWords.steps(care == Care.DUG ? JobKind.DIG_TRENCH : JobKind.COVER_TRENCH);
        return Aside.of("", steps.get(0), steps.get(1));
    }

    @Override
    public Optional<String> draftName() {
        return Optional.empty();
    }

    @Override
    public String recordWords() {
        return Terms.CARES.say(care);
    }
}
