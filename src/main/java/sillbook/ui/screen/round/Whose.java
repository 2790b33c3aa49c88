// SPDX-License-Identifier: Apache-2.0
package sillbook.ui.screen.round;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sillbook.change.Check;
import sillbook.model.Day;
import sillbook.model.Findings;
import sillbook.model.Id;
import sillbook.model.Place;
import sillbook.model.Pot;
import sillbook.model.Pot.Way;
import sillbook.model.Purchase;
import sillbook.model.Settings.LengthUnit;
import sillbook.season.PlaceNow;
import sillbook.season.WaitingBulbs;
import sillbook.ui.screen.State;
import sillbook.words.Days;
import sillbook.words.PotNames;
import sillbook.words.RoundWords;

/**
 * Which pots are looked at: all that stand at a place, or only some.
 *
 * @param place whose round it is; empty for a look at some pots
 * @param name of the place, or the labels of the pots
 * @param some the pots; empty for a round, which asks the place
 * @param made the day they were looked at; empty for today
 */
record Whose(Optional<Id<Place>> place, String name, List<Id<Pot>> some, Optional<LocalDate> made) {

    Whose {
        some = List.copyOf(some);
    }

    static Whose of(Place place) {
        return new Whose(Optional.of(place.id()), place.name(), List.of(), Optional.empty());
    }

    static Whose of(State state, List<Id<Pot>> pots) {
        return new Whose(Optional.empty(), new PotNames(state.journal()).labels(pots), pots, Optional.empty());
    }

    /** Looked at on that day. */
    Whose on(LocalDate day) {
        return new Whose(place, name, some, Optional.of(day));
    }

    /** The day they were looked at. */
    LocalDate day(State state) {
        return made.orElse(state.shown().today());
    }

    /** {@code round of cellar}, {@code check of T4}: under this name it waits half done. */
    String draftName() {
        return (place.isPresent() ? "round of " : "check of ") + name;
    }

    /** Those that stand there, or are still growing, now. */
    List<Id<Pot>> pots(State state) {
        return place.map(state.almanac().outlook()::standingAt)
                .orElseGet(() -> some.stream()
                        .filter(state.journal().pots()::contains)
                        .filter(pot -> state.almanac().pot(pot).life().isGrowing())
                        .toList());
    }

    /** The bulbs that wait there dry. */
    List<WaitingBulbs> bulbs(State state) {
        return place.map(state.almanac().outlook()::dryAt).orElse(List.of());
    }

    /** All that can be marked. */
    List<Id<?>> all(State state) {
        Stream<Id<?>> pots = pots(state).stream().map(pot -> pot);
        return Stream.concat(
                        pots,
                        bulbs(state).stream().map(bulbs -> bulbs.purchase().id()))
                .toList();
    }

    /** Those of one batch together, where the first of them stands. */
    List<List<Id<Pot>>> batches(State state) {
        return new RoundWords(state.journal()).rows(pots(state));
    }

    Optional<PlaceNow> now(State state) {
        return state.almanac().places().stream()
                .filter(there -> place.equals(Optional.of(there.place().id())))
                .findFirst();
    }

    /** The change that writes it down: all are well but for what is marked. */
    Check change(State state, Marks marks) {
        Map<Id<Pot>, Findings> found = new LinkedHashMap<>();
        pots(state).forEach(pot -> found.put(pot, marks.of(pot).findings(Findings.ALL_WELL, unit(state))));
        Map<Id<Purchase>, Findings> felt = new LinkedHashMap<>();
        bulbs(state).stream()
                .map(bulbs -> bulbs.purchase().id())
                .forEach(bulbs -> felt.put(bulbs, marks.of(bulbs).findings(Findings.DRY_WELL, unit(state))));
        return new Check(found, felt, place, Day.on(day(state)));
    }

    /** The same as a line. */
    String line(State state, Marks marks) {
        List<String> said = new ArrayList<>();
        PotNames names = new PotNames(state.journal());
        List<Id<Pot>> pots = pots(state);
        place.ifPresent(round -> said.add(RoundWords.quoted(name) + " all well"));
        for (List<Id<Pot>> alike : byWay(pots, state)) {
            Way way = way(alike.get(0), state);
            List<Id<Pot>> well =
                    alike.stream().filter(pot -> marks.of(pot).isNothing()).toList();
            if (place.isEmpty() && !well.isEmpty()) {
                said.add(names.labels(well) + " " + Found.NOTHING.line(way, true, unit(state)));
            }
        }
        for (List<Id<Pot>> alike : byWay(pots, state)) {
            Way way = way(alike.get(0), state);
            marks.alike(alike)
                    .forEach((found, marked) ->
                            said.add(names.labels(marked) + " " + found.line(way, place.isEmpty(), unit(state))));
        }
        bulbs(state).stream()
                .map(WaitingBulbs::purchase)
                .filter(bulbs -> !marks.of(bulbs.id()).isNothing())
                .forEach(bulbs -> said.add(RoundWords.bulbs(
                                state.journal().varieties().get(bulbs.variety()).name())
                        + " " + marks.of(bulbs.id()).line(Way.DRAINED, false, unit(state))));
        made.ifPresent(day -> said.add(Days.date(day)));
        return String.join(", ", said);
    }

    /** Those with potting mix, then those over water: the line has other words for them. */
    private static List<List<Id<Pot>>> byWay(List<Id<Pot>> pots, State state) {
        Map<Boolean, List<Id<Pot>>> parted = pots.stream()
                .collect(Collectors.partitioningBy(pot -> way(pot, state).isOverWater()));
        return Stream.of(parted.getOrDefault(false, List.of()), parted.getOrDefault(true, List.of()))
                .filter(some -> !some.isEmpty())
                .toList();
    }

    private static Way way(Id<Pot> pot, State state) {
        return state.journal().pots().get(pot).way();
    }

    static LengthUnit unit(State state) {
        return state.journal().settings().lengths();
    }
}
