// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.go;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.model.Day;
import sillbook.model.Id;
import sillbook.model.Journal;
import sillbook.model.Labels;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Season;
import sillbook.model.Variety;
import sillbook.text.Fold;
import sillbook.ui.screen.Layer;
import sillbook.ui.screen.PageName;
import sillbook.ui.screen.State;
import sillbook.ui.screen.Thing;
import sillbook.ui.screen.bulbs.VarietyCard;
import sillbook.ui.screen.card.PotCard;
import sillbook.ui.screen.diary.DiaryPage;
import sillbook.ui.screen.form.Choices;
import sillbook.ui.screen.places.PlaceCard;
import sillbook.words.DayReader;
import sillbook.words.Days;
import sillbook.words.PotNames;
import sillbook.words.Terms;

/** What there is to go to, by any beginning of its name: pots by their labels, varieties, places, days of the diary. */
record Goals(State state) {

    /** What was named whole first; then pots, those of the season under the ruler before others, varieties and places. */
    List<Goal> beginning(String text) {
        String sought = Fold.of(text).strip();
        if (sought.isEmpty()) {
            return List.of();
        }
        return Stream.of(pots(sought), varieties(sought), places(sought), days(text))
                .flatMap(goals -> goals)
                .sorted(Comparator.comparing(goal -> !Fold.of(goal.name()).equals(sought)))
                .toList();
    }

    private Journal journal() {
        return state.journal();
    }

    private Stream<Goal> pots(String sought) {
        Season shown = state.timescale().season();
        return journal().pots().all().stream()
                .filter(pot -> Fold.of(pot.label()).startsWith(sought))
                .sorted(Comparator.comparing((Pot pot) -> !pot.season().equals(shown))
                        .thenComparing(Comparator.comparing(Pot::season).reversed())
                        .thenComparing(pot -> Labels.letters(pot.label()))
                        .thenComparingInt(pot -> Labels.number(pot.label())))
                .collect(Collectors.groupingBy(pot -> row(pot, sought), LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(this::goal);
    }

    /** What a pot is named with: the pots of its batch that are not done, unless it is named itself. */
    private List<Id<Pot>> row(Pot pot, String sought) {
        boolean isItself = Fold.of(pot.label()).equals(sought);
        return isItself ? List.of(pot.id()) : state.almanac().outlook().rowOf(pot.id());
    }

    private Goal goal(List<Pot> some) {
        Pot pot = some.get(0);
        PotNames names = new PotNames(journal());
        Season in = state.almanac().outlook().livingOn().seasonOf(pot);
        boolean isOther = !in.equals(state.timescale().season());
        String season = isOther ? "  season " + journal().nameOf(in) : "";
        return new Goal(
                names.labels(some.stream().map(Pot::id).toList()),
                names.nameAndCount(List.of(pot.id())) + season,
                from -> openPot(inSeason(from, pot), pot));
    }

    private static State inSeason(State from, Pot pot) {
        Season in = from.almanac().outlook().livingOn().seasonOf(pot);
        boolean isShown = in.equals(from.timescale().season());
        return isShown ? from : from.with(from.timescale().at(in));
    }

    private static State openPot(State from, Pot pot) {
        return open(from, PageName.POTS, Thing.of(pot.id()), PotCard.of(from, pot.id()));
    }

    private Stream<Goal> varieties(String sought) {
        return Choices.varieties(journal()).beginning(sought).stream().map(Goals::goal);
    }

    private static Goal goal(Variety variety) {
        return new Goal(
                variety.name(),
                variety.kind().toString(),
                from -> open(from, PageName.BULBS, new Thing.OfVariety(variety.id()), VarietyCard.of(variety.id())));
    }

    private Stream<Goal> places(String sought) {
        return Choices.places(journal()).beginning(sought).stream().map(Goals::goal);
    }

    private static Goal goal(Place place) {
        return new Goal(
                place.name(),
                Terms.STAGES.say(place.serves()),
                from -> open(from, PageName.PLACES, new Thing.OfPlace(place.id()), PlaceCard.of(place.id())));
    }

    private Stream<Goal> days(String text) {
        return DayReader.back(state.shown().today()).tryParse(text).flatMap(heard -> heard.value()).stream()
                .map(Goals::goal);
    }

    private static Goal goal(Day day) {
        return new Goal(Days.full(day), "the diary of that day", from -> {
            State diary = from.opening(PageName.DIARY);
            return diary.withTop(DiaryPage.on(diary, day.likely()));
        });
    }

    private static State open(State from, PageName page, Thing thing, Layer card) {
        State opened = from.opening(page);
        return opened.withTop(opened.top().at(opened, thing)).laid(card);
    }
}
