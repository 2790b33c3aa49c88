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
import sillbook.model.Pot;
import sillbook.model.Variety;
import sillbook.ui.screen.Aside;
import sillbook.ui.screen.State;
import sillbook.ui.screen.form.Answers;
import sillbook.ui.screen.form.Blank;
import sillbook.ui.screen.form.Choices;
import sillbook.ui.screen.form.Reading;
import sillbook.ui.screen.form.Remark;
import sillbook.ui.screen.form.Sheet;
import sillbook.ui.screen.form.Suggestion;
import sillbook.words.CautionWords;
import sillbook.words.Heard;
import sillbook.words.Vocabulary;

/**
 * Something that only wants its day: potted, the first flower, past bloom, a care.
 *
 * @param what it is
 * @param place where the pots are put, when they are potted
 * @param shared the varieties that share the pots, of which one may be meant; empty where each pot holds one only
 */
public record DaySheet(Pots pots, What what, Optional<Id<Place>> place, List<Variety> shared) implements Sheet {
    private static final Blank DAY = new Blank("Day", 20);
    private static final Blank VARIETY = new Blank("Variety", 30);

    public DaySheet {
        shared = List.copyOf(shared);
    }

    static DaySheet of(Pots pots, What what) {
        return new DaySheet(pots, what, Optional.empty(), List.of());
    }

    /** A point of bloom, which varieties that share a pot come to each in its time. */
    static DaySheet ofBloom(State state, Pots pots, What what) {
        List<Variety> shared = pots.fit().stream()
                .map(state.journal().pots()::get)
                .filter(Pot::isMixed)
                .flatMap(pot -> pot.plantings().stream())
                .map(Pot.Planting::variety)
                .distinct()
                .map(state.journal().varieties()::get)
                .toList();
        return new DaySheet(pots, what, Optional.empty(), shared);
    }

    /** What happened on that day. */
    public enum What {
        POTTED("potted", "pot up"),
        FIRST_FLOWER("first flower", "first flower"),
        PAST_BLOOM("past bloom", "past bloom"),
        FED("fed", "fed"),
        OUTDOORS("put outdoors", "outdoors"),
        BROUGHT_IN("brought in", "brought in"),
        RESTED("put to rest", "rested"),
        WOKEN("woken", "woken"),
        REPOTTED("repotted", "repotted");

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
        return shared.isEmpty() ? List.of(DAY) : List.of(VARIETY, DAY);
    }

    @Override
    public Answers prefilled() {
        return Answers.NONE.with(DAY, "today");
    }

    @Override
    public Reading read(State state, Answers answers) {
        Heard<Day> day = Blanks.dayThatWas(state, answers.text(DAY));
        Heard<Optional<Id<Variety>>> variety = variety(answers);
        Reading reading = Reading.NOTHING.with(DAY, Blanks.remark(day)).with(VARIETY, remark(variety));
        return day.value()
                .flatMap(on -> variety.value().map(which -> reading.meaning(change(on, which))))
                .orElse(reading);
    }

    private Heard<Optional<Id<Variety>>> variety(Answers answers) {
        return answers.isBlank(VARIETY)
                ? Heard.as(Optional.empty())
                : names().parse(answers.text(VARIETY)).map(one -> Optional.of(one.id()));
    }

    private static Remark remark(Heard<Optional<Id<Variety>>> variety) {
        return variety.fold(which -> Remark.understood(which.isEmpty() ? "the pot as a whole" : ""), Blanks::wrong);
    }

    private Vocabulary<Variety> names() {
        return Choices.of("variety in the pot", shared, Variety::name);
    }

    @Override
    public List<Suggestion> suggestions(State state, Answers answers, Blank blank) {
        return blank.equals(VARIETY)
                ? names().beginning(answers.text(VARIETY)).stream()
                        .map(one -> Suggestion.of(one.name(), ""))
                        .toList()
                : List.of();
    }

    private Change change(Day day, Optional<Id<Variety>> variety) {
        return switch (what) {
            case POTTED -> new Plant(pots.fit(), place, day);
            case FIRST_FLOWER -> new Flower(pots.fit(), BloomPoint.FIRST_FLOWER, variety, day);
            case PAST_BLOOM -> new Flower(pots.fit(), BloomPoint.PAST_BLOOM, variety, day);
            case FED -> care(Care.FED, day);
            case OUTDOORS -> care(Care.OUTDOORS, day);
            case BROUGHT_IN -> care(Care.BROUGHT_IN, day);
            case RESTED -> care(Care.RESTED, day);
            case WOKEN -> care(Care.WOKEN, day);
            case REPOTTED -> care(Care.REPOTTED, day);
        };
    }

    private Change care(Care care, Day day) {
        return new CareFor(pots.fit(), care, day);
    }

    @Override
    public Aside aside(State state, Answers answers, Blank blank) {
        String hint = blank.equals(VARIETY)
                ? "Which of those in the pot; left empty, the pot as a whole."
                : "The day it was: today, fri, 14 nov, about 5 jan.";
        return Aside.of("", hint, what == What.REPOTTED ? care(state) : "");
    }

    /** Sap and dust, where the pot is emptied. */
    private String care(State state) {
        CautionWords cautions =
                new CautionWords(state.kit().handbook(), state.journal().settings());
        return cautions.beforePotting().map(caution -> "▴ " + caution).orElse("");
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
