// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.act;

import java.util.List;
import java.util.Optional;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.season.PlaceNow;
import sillbook.ui.screen.State;
import sillbook.ui.screen.form.Choices;
import sillbook.ui.screen.form.Remark;
import sillbook.ui.screen.form.Suggestion;
import sillbook.words.Complaint;
import sillbook.words.DayReader;
import sillbook.words.Days;
import sillbook.words.Heard;

/** The blanks that several slips have: a place, a day that was. */
final class Blanks {
    private Blanks() {}

    /** A day that has been; blank means today. */
    static Heard<Day> dayThatWas(State state, String text) {
        DayReader reader = DayReader.back(state.shown().today());
        return text.isEmpty() ? Heard.as(Day.on(state.shown().today())) : reader.parse(text);
    }

    /** The day read back, or what is wrong with it. */
    static Remark remark(Heard<Day> day) {
        return day.fold(read -> Remark.understood(Days.full(read)), Blanks::wrong);
    }

    static Remark wrong(Complaint complaint) {
        return Remark.wrong(complaint.brief(), complaint.sentence());
    }

    static Heard<Place> place(State state, String text) {
        return Choices.places(state.journal()).parse(text);
    }

    static List<Suggestion> places(State state, String text) {
        return Choices.places(state.journal()).beginning(text).stream()
                .map(place -> Suggestion.of(place.name(), standThere(state, place)))
                .toList();
    }

    /** How many stand there, and whether these are too many. */
    static Remark remark(State state, Place place, List<Id<Pot>> coming) {
        int over = now(state, place)
                .flatMap(there -> there.left().map(left -> newcomers(there, coming) - left))
                .orElse(0);
        String tooMany = over > 0 ? ": ▴ " + (over == 1 ? "one" : over) + " too many" : "";
        return Remark.understood(standThere(state, place) + tooMany);
    }

    private static int newcomers(PlaceNow there, List<Id<Pot>> coming) {
        return (int) coming.stream().filter(pot -> !there.pots().contains(pot)).count();
    }

    private static Optional<PlaceNow> now(State state, Place place) {
        return state.almanac().places().stream()
                .filter(there -> there.place().id().equals(place.id()))
                .findFirst();
    }

    /** {@code 2 of 4 stand there}. */
    private static String standThere(State state, Place place) {
        int pots = now(state, place).map(there -> there.pots().size()).orElse(0);
        String of = place.room().map(room -> pots + " of " + room).orElse(Integer.toString(pots));
        return of + (pots == 1 && place.room().isEmpty() ? " stands there" : " stand there");
    }
}
